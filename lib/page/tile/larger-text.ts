import { parentOf } from "../dom/ancestors.ts";
import { nameKey, plainText } from "../dom/plain-text.ts";
import type { PriceLeaf } from "../money/written-price.ts";
import { isAction } from "./score-wording.ts";
import { textsIn } from "./texts-in.ts";
import { wholeLine } from "./whole-line.ts";

/** Texts looked at. */
const MOST_TEXTS = 60;
/** A text names where it is so many times as large as a heading that others have, too. Layout choice. */
const LARGER = 1.2;

/** In CSS pixels. */
const sizeOf = (element: Element): number =>
  Number.parseFloat(element.ownerDocument.defaultView?.getComputedStyle(element).fontSize ?? "") || 0;

/** The largest text of a product that is larger than a heading which others have, too, and no price: that names its group. */
export function largerThan(
  heading: Element,
  parts: readonly Element[],
  prices: readonly PriceLeaf[],
): string {
  let best = { text: "", size: LARGER * sizeOf(heading) };
  let seen = 0;
  for (const node of textsIn(parts)) {
    const holder = parentOf(node);
    if (seen++ > MOST_TEXTS || !holder || heading.contains(holder)) continue;
    const text = plainText(wholeLine(node.nodeValue ?? "", holder));
    if (nameKey(text).length < 3 || !/\p{L}/u.test(text) || isAction(text)) continue;
    const size = prices.some(({ element }) => element.contains(holder)) ? 0 : sizeOf(holder);
    if (size > best.size) best = { text, size };
  }
  return best.text;
}
