import { parentOf } from "../dom/ancestors.ts";
import { LONGEST_SOURCE, STEPS_UP } from "./tag-size.ts";

/** What an element beside a text says, if anything. */
export function saidIn(beside: Node | null): string {
  // A form answers with its field of that name.
  const said: unknown = beside?.nodeType === 1 ? beside.textContent : "";
  return typeof said === "string" ? said.trim() : "";
}

/** What a text node says; "" for anything else. */
export const saidBy = (node: Node | null): string =>
  node?.nodeType === 3 ? (node.nodeValue ?? "").trim() : "";

/** A text with those that nothing or comments part it from, as frameworks write one line in pieces ("Rs", "1500"). */
export interface Run {
  readonly written: string;
  readonly last: Node;
}

/** What of a line goes on in this text; elements end it. */
export const isPiece = (node: Node | null): node is Node => node?.nodeType === 3 || node?.nodeType === 8;

/** The run that begins with a text; null where the text goes on with one before it. */
export function runFrom(node: Node): Run | null {
  for (let before = node.previousSibling; isPiece(before); before = before.previousSibling)
    if (before.nodeType === 3) return null;
  let written = node.nodeValue ?? "";
  let last = node;
  for (
    let next = node.nextSibling;
    isPiece(next) && written.length < LONGEST_SOURCE;
    next = next.nextSibling
  ) {
    if (next.nodeType !== 3) continue;
    written += next.nodeValue;
    last = next;
  }
  return { written, last };
}

/** The node before, white space apart. */
function nodeBefore({ previousSibling }: Node): Node | null {
  const isBlank = previousSibling?.nodeType === 3 && saidBy(previousSibling) === "";
  return isBlank ? previousSibling.previousSibling : previousSibling;
}

/** What stands right before a text, or before the elements around it that it begins: on its own line or the one before. */
export function saidBefore(node: Node): string {
  let before = nodeBefore(node);
  for (let up = parentOf(node), step = 0; !before && up && step < STEPS_UP; up = parentOf(up), step++)
    before = nodeBefore(up);
  const said = before?.nodeName === "BR" ? before.previousSibling : before;
  return saidBy(said) || saidIn(said);
}
