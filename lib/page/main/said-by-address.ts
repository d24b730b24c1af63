import type { Cluster } from "../clusters.ts";
import { nameOf, parentOf } from "../dom/ancestors.ts";
import { pathOf } from "../dom/page-heading.ts";
import { plainKey } from "../dom/plain-text.ts";
import { PRICE_NAME } from "../money/price-name.ts";

/** The address of a shop's first page, whoever sent the visitor; scripts keep other pages behind "#/". */
export const FIRST_PAGE = /^https?:\/\/[^/]+\/(index\.\w+)?(\?(utm|fbclid|gclid|ref)[^#]*)?(#(?!!?\/\w)|$)/;

/** An address that tells one of several in a folder by its number. */
export const IN_FOLDER = /\/[^/]+\/\d+\/?([?#]|$)/;

/** Letters of a name from which on an address that ends in it is no accident. */
const LONG_NAME = 8;

/** What the address of a page ends in, for comparing. */
function addressKey(doc: Document): string {
  const [end = ""] = pathOf(doc.URL).split("/").filter(Boolean).slice(-1);
  return plainKey(end.replace(/\.\w+$/, ""));
}

/** Whether a name begins with what the address of a page ends in. */
export function isAddress(name: string, doc: Document): boolean {
  const address = addressKey(doc);
  return address.length >= LONG_NAME && plainKey(name).startsWith(address);
}

/** Whether a text is just what the address of a page ends in. */
export function isSpelledBy(text: string, doc: Document): boolean {
  const address = addressKey(doc);
  return address.length >= LONG_NAME && plainKey(text) === address;
}

/** Tells whether a heading in a block says what the page's title begins with and its address ends in, and markup calls its price one. */
export function addressedOn(doc: Document): (block: Cluster) => boolean {
  const address = addressKey(doc);
  const title = plainKey(doc.title);
  const isPrice = (element: Element | null) => element !== null && PRICE_NAME.test(nameOf(element));
  return ({ root, prices }) =>
    address.length >= LONG_NAME &&
    prices.some(({ element }) => isPrice(element) || isPrice(parentOf(element))) &&
    [...root.querySelectorAll("h1,h2,h3,h4")]
      .map((heading) => plainKey(heading.textContent))
      .some((said) => said.endsWith(address) && title.startsWith(said));
}
