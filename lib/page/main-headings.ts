import type { Context } from "./context.ts";
import { nameKey } from "./plain-text.ts";

/** Headings looked at. */
const MOST_HEADINGS = 12;
/** Texts looked at for the one that the page's head names, and those between two yields. */
const MOST_TEXTS = 3000;
const STRIDE = 50;

/** Whether a heading names the shop: it says nothing, or leads to the shop's first page. */
const namesTheShop = (heading: Element): boolean =>
  !/[\p{L}\p{N}]/u.test(heading.textContent) ||
  [...heading.querySelectorAll("a")].some(({ pathname, origin }) => pathname === "/" && origin !== "null");

/** The text on the page that says what its head calls it, where no heading does. */
function* namedByHead(doc: Document): Generator<undefined, Element | null, undefined> {
  const told = doc.querySelector('meta[property="og:title"]')?.getAttribute("content") ?? "";
  const key = nameKey(told);
  const walker = doc.createTreeWalker(doc.body, 4);
  for (let seen = 0; key.length > 3 && seen < MOST_TEXTS && walker.nextNode(); seen++) {
    if (seen % STRIDE === 0) yield;
    const { nodeValue, parentElement } = walker.currentNode;
    if (nameKey(nodeValue ?? "") === key) return parentElement;
  }
  return null;
}

/**
 * Headings that may name the product a page is about: those of the first rank, apart from the shop's name; else what the
 * page's head names; else all others.
 */
export function* mainHeadings({
  doc,
  furniture,
}: Context): Generator<undefined, readonly Element[], undefined> {
  const shown = (selector: string) =>
    [...doc.querySelectorAll(selector)]
      .slice(0, MOST_HEADINGS)
      .filter((heading) => !furniture.isApart(heading) && !furniture.isHidden(heading));
  const first = shown("h1").filter((heading) => !namesTheShop(heading));
  if (first.length > 0) return first;
  yield;
  const named = yield* namedByHead(doc);
  return named ? [named] : shown("h2,h3,[itemprop=name]");
}
