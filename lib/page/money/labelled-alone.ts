import { readTag } from "./price.ts";
import { LABELLED_PRICE } from "./price-label.ts";
import { FIGURE } from "./scan-money.ts";
import { LONGEST_TAG } from "./tag-size.ts";
import { saidBefore } from "./text-run.ts";
import type { WrittenPrice } from "./written-price.ts";

const NUMBER = /^[\d.,' ]+$/;

/** What shows no price: what is no text of the page, and choices, of which labels without a field are none. */
export const NO_TAG = "script,style,noscript,template,option,label[for],label:has(input,select),textarea";

/** Whether a label says that a text is a price: at the start of its own line, in the element before it or on the line before. */
export const isLabelled = (node: Node, text: string): boolean =>
  [text, saidBefore(node).slice(0, LONGEST_TAG) + text].some((said) =>
    LABELLED_PRICE.test(said.toLowerCase()),
  );

/** Whether a label right before an amount denies that it is a price: "<b>You save:</b> 600 kr". */
export function isDeniedBefore(node: Node, text: string): boolean {
  const before = saidBefore(node);
  const isLabel = before.length < LONGEST_TAG && /[:：]$/.test(before) && !FIGURE.test(before);
  return isLabel && readTag(`${before} ${text}`).denied;
}

/** The number without a sign behind a label that says it is a price: "Price: 240", in one text or behind its element; or null. */
export function labelledAlone(node: Node, element: Element, text: string): WrittenPrice | null {
  const number = text.toLowerCase().replace(LABELLED_PRICE, "").trim();
  if (!NUMBER.test(number) || element.closest(NO_TAG) || !isLabelled(node, text)) return null;
  const { amounts } = readTag(`${number},-`);
  return amounts.length > 0 ? { element, text, tag: text, words: "", amounts } : null;
}
