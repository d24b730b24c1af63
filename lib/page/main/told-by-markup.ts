import { nameOf, nearest, WHOLE } from "../dom/ancestors.ts";
import { headingText, nameKey } from "../dom/plain-text.ts";

/** Blocks around a heading that may be called a product or its page, and what those are called. */
const NAMED_LEVELS = 5;
const PRODUCT = /product(?!s)|produkt|produit|producto(?!s)|produto(?!s)|prodotto|urun|goods|item-?detail/i;
const DETAILS =
  /(product|produkt|produit|producto|produto|prodotto|urun|goods)[-_]*(details?|single|page|main|view|summary|essential|show)(?!s?[-_]?(list|grid|card))/i;

/** Whether markup calls one of the few blocks around a heading by such a name. */
function isCalled(heading: Element, name: RegExp): boolean {
  let level = 0;
  const block = nearest(
    heading,
    (up) => level++ >= NAMED_LEVELS || WHOLE.test(up.tagName) || name.test(nameOf(up)),
  );
  return block !== null && !WHOLE.test(block.tagName) && name.test(nameOf(block));
}

/** Whether markup calls a block the page of one product. */
export const isCalledDetails = (block: Element): boolean => DETAILS.test(nameOf(block));

/**
 * Whether markup says that a page is about the product that a heading names: it calls a block around it a product's page;
 * or a product, and the page's title knows the name.
 */
export function isToldByMarkup(heading: Element): boolean {
  if (isCalled(heading, DETAILS)) return true;
  const title = nameKey(heading.ownerDocument.title);
  return title.includes(nameKey(headingText(heading))) && isCalled(heading, PRODUCT);
}
