import type { Context } from "../context.ts";
import { nearest, parentOf, WHOLE } from "../dom/ancestors.ts";
import { letters } from "../dom/letters.ts";
import { nameKey, plainText, TITLE_BREAK } from "../dom/plain-text.ts";
import type { Survey } from "../survey.ts";
import { isSticker } from "../tile/stickers.ts";
import { isAboutAny, saysAny } from "./says-any.ts";

/** Texts looked at for the one that the page's head names, and those between two yields. */
const MOST_TEXTS = 3000;
const STRIDE = 50;
/** Characters of a text that are compared with the head's. */
const LONGEST_NAME = 300;
/** Texts looked at around a button. */
const MOST_NEAR = 120;

/** A sentence is no name, which is longer than this, in characters. */
const SENTENCE = /^.{60,}[.!?。]$/;

/** In CSS pixels. */
const sizeOf = (element: Element): number =>
  Number.parseFloat(element.ownerDocument.defaultView?.getComputedStyle(element).fontSize ?? "") || 0;

/** A text in bold letters counts so many times its size. Layout choice. */
const BOLD = 1.05;

/** The largest of the texts on the page that say what its head calls it, where no heading does. */
export function* namedByHead({ doc, furniture }: Context): Generator<undefined, Element | null, undefined> {
  const told = doc.querySelector('meta[property="og:title"]')?.getAttribute("content") ?? "";
  const parts = doc.title.split(TITLE_BREAK);
  // A title of one part may be the shop's name alone.
  const keys = new Set([told, ...(parts.length > 1 ? parts : [])].map(nameKey));
  const walker = doc.createTreeWalker(doc.body, 4);
  let best: { element: Element | null; size: number } = { element: null, size: 0 };
  for (let seen = 0; seen < MOST_TEXTS && walker.nextNode(); seen++) {
    if (seen % STRIDE === 0) yield;
    const key = nameKey(walker.currentNode.nodeValue?.slice(0, LONGEST_NAME) ?? "");
    const element = key.length > 3 && keys.has(key) ? parentOf(walker.currentNode) : null;
    if (!element || element.closest("a[href]") || isAboutAny(element)) continue;
    if (furniture.isApart(element) || furniture.isHidden(element)) continue;
    const size = sizeOf(element);
    if (size > best.size) best = { element, size };
  }
  return best.element;
}

/** The largest text that stands with a picture, and a price if the page shows any, around the buttons that buy: the name, where nothing is a heading. */
export function largestBy(buttons: readonly Element[], survey: Survey): Element | null {
  const [button = null] = buttons;
  const isPriced = (up: Element) => survey.prices.length === 0 || survey.pricesIn.has(up);
  const block = nearest(button, (up) => survey.picturesIn.has(up) && isPriced(up));
  if (!block || /^(HTML|BODY)$/.test(block.tagName) || !buttons.every((one) => block.contains(one)))
    return null;
  const around = parentOf(block);
  const isAlone = around !== null && survey.picturesIn.get(around) === survey.picturesIn.get(block);
  return (
    largestIn(block, survey) ?? (isAlone && !WHOLE.test(around.tagName) ? largestIn(around, survey) : null)
  );
}

/** The largest text in a block that may be a name; of several the first. */
function largestIn(block: Element, survey: Survey): Element | null {
  const priced = new Set(survey.prices.map(({ element }) => element));
  const walker = block.ownerDocument.createTreeWalker(block, 4);
  let best: { element: Element | null; size: number } = { element: null, size: 0 };
  for (let seen = 0; seen < MOST_NEAR && walker.nextNode(); seen++) {
    const element = parentOf(walker.currentNode);
    const text = plainText(walker.currentNode.nodeValue);
    if (!element || letters(text) < 3 || priced.has(element) || saysAny(text) || SENTENCE.test(text))
      continue;
    if (isSticker(text)) continue;
    const size = sizeOf(element) * (element.closest("b,strong") ? BOLD : 1);
    if (size > best.size) best = { element, size };
  }
  return best.element;
}
