import { parentOf } from "../dom/ancestors.ts";

const isSpace = (char: string): boolean => char === " " || char === "\u00a0" || char === "\u3000";

/** Whether a text has white space at an end as it stands between words, seen inwards by `step`; more of it lays out the source. */
function isGap(text: string, at: number, step: 1 | -1): boolean {
  const [first, second, third] = [text.charAt(at), text.charAt(at + step), text.charAt(at + 2 * step)];
  return (
    isSpace(first) && (second.trim() !== "" || second === "" || (isSpace(second) && third.trim() !== ""))
  );
}

/** What breaks a line before and behind it, or is no part of one. */
const BLOCK = /^(P|DIV|H\d|[UO]L|LI|D[LTD]|BUTTON|PICTURE|FIGURE|SECTION|FORM)$/;

/** Whether a text is all by itself in a cell of a table or a member of a list: cents are not. */
const isInCell = (node: Node): boolean => /^(T[DH]|LI|DD)$/.test(parentOf(node)?.tagName ?? "");

/** Whether a block lies beside a text. */
const standsBeside = ({ previousSibling, nextSibling }: Node): boolean =>
  [previousSibling, nextSibling].some((side) => side !== null && BLOCK.test(side.nodeName));

/**
 * Text of an element cut into pieces: raised cents get their point back; words of one sentence stay apart by a space,
 * other pieces by a line break. `displayed`: without what is not.
 */
export function joinedText(element: Element, displayed = false): string {
  const walker = element.ownerDocument.createTreeWalker(element, 4);
  let text = "";
  let gap = "\n";
  let isBroken = false;
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const raw = node.nodeValue ?? "";
    const piece = raw.trim();
    if (piece && displayed && parentOf(node)?.checkVisibility() === false) continue;
    if (isGap(raw, 0, 1) && (piece || !standsBeside(node))) gap = " ";
    isBroken ||= node.previousSibling?.nodeName === "BR";
    if (!piece) continue;
    if (/\d$/.test(text) && /^\d\d$/.test(piece) && !isInCell(node)) text += ".";
    else if (text && !/^[.,]/.test(piece) && !/[.,]$/.test(text)) text += isBroken ? "\n" : gap;
    text += piece;
    isBroken = false;
    gap = isGap(raw, raw.length - 1, -1) ? " " : "\n";
  }
  return text;
}
