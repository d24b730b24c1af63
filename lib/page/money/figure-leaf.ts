import { nameOf, parentOf } from "../dom/ancestors.ts";
import { letters } from "../dom/letters.ts";
import { iconSign } from "./icon-sign.ts";
import { joinedText } from "./joined-text.ts";
import { LONGEST_SIGN } from "./money-signs.ts";
import { readTag } from "./price.ts";
import { PRICE_NAME } from "./price-name.ts";
import { sameWhole } from "./same-whole.ts";
import { FIGURE } from "./scan-money.ts";
import { LONGEST_TAG, lengthOf, MOST_LETTERS, STEPS_UP } from "./tag-size.ts";
import { saidBy, saidIn } from "./text-run.ts";
import { PART_NAME } from "./what-for.ts";
import type { WrittenPrice } from "./written-price.ts";

const NUMBER = /^[\d.,' ]+$/;
/** What says behind a number that it is the lowest of some. */
const UPWARDS = /[~〜～]$/;

/** How often a number begins in a text: the end of another and cents behind a point do not count. */
function timesIn(text: string, number: string): number {
  let times = 0;
  for (let at = text.indexOf(number); at >= 0; at = text.indexOf(number, at + number.length))
    if (!/\d[.,]?$/.test(text.slice(0, at))) times++;
  return times;
}

/** The sign that an icon right before a text shows, which says nothing; "" where there is none. */
function signBefore({ previousSibling: before }: Node): string {
  const isIcon = before?.nodeType === 1 && saidIn(before) === "";
  return isIcon ? iconSign(before as Element) : "";
}

/** What is said right behind an element: in a text, or in the next element where it holds none itself, as raised cents are. */
function saidRightBehind({ nextSibling: next, childElementCount }: Element): string {
  const text = saidBy(next);
  if (text || childElementCount > 0) return text;
  return saidIn(next?.nodeType === 3 ? next.nextSibling : next);
}

/** The price of which a text is the figures alone: its sign stands in another element, or markup calls it a price; or null. */
export function figureLeaf(node: Node, element: Element, text: string): WrittenPrice | null {
  // "<b>24</b> euro": the sign is the next text, and no word stands before.
  const behind = saidBy(element.previousSibling) ? "" : saidRightBehind(element);
  const icon = signBefore(node);
  const signed = icon
    ? `${icon} ${text}`
    : behind && behind.length <= LONGEST_SIGN
      ? `${text} ${behind}`
      : "";
  const { amounts, words } = readTag(signed);
  if (amounts.length > 0) return { element, text, tag: signed, words, amounts };
  let plain: WrittenPrice | null = null;
  const number = text.replace(UPWARDS, "");
  const figure = readTag(`${number},-`).amounts;
  for (let up: Element | null = element, step = 0; up && step < STEPS_UP; up = parentOf(up), step++) {
    if (lengthOf(up) > LONGEST_TAG) break;
    const tag = joinedText(up);
    const names = `${nameOf(up)} ${up.getAttribute("itemprop")}`;
    const bare = PRICE_NAME.test(names) && !PART_NAME.test(names) && NUMBER.test(number);
    const { amounts, words } = readTag(letters(tag) > MOST_LETTERS ? "" : tag);
    // The amount begins with this figure, which is there but once, or it is another's: sizes stand beside a price.
    const own = amounts.some((one) => sameWhole([one], figure) || one.written === figure[0]?.written);
    if (own && timesIn(tag, text) < 2) return { element: up, text: tag, tag, words, amounts };
    if (amounts.length > 0) break;
    // Beside another number it is not told whose sign an icon is.
    const iconed = FIGURE.test(tag.replace(text, "")) ? "" : `${iconSign(up)} ${text}`;
    if (iconed.length > text.length + 1)
      return { element: up, text, tag: iconed, words, amounts: readTag(iconed).amounts };
    if (!bare || plain) continue;
    // Cents that are raised stand in an element of their own.
    const all = NUMBER.test(tag) ? readTag(`${tag},-`).amounts : figure;
    plain = { element: up, text, tag, words, amounts: all };
  }
  return plain;
}
