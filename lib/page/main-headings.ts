import { nearest, parentOf, WHOLE } from "./ancestors.ts";
import { buttonsIn, buys } from "./buttons.ts";
import type { Context } from "./context.ts";
import { letters } from "./letters.ts";
import { nameKey } from "./plain-text.ts";
import type { Survey } from "./survey.ts";

/** Headings looked at. */
const MOST_HEADINGS = 12;
/** Texts looked at for the one that the page's head names, and those between two yields. */
const MOST_TEXTS = 3000;
const STRIDE = 50;
/** Texts looked at around a button. */
const MOST_NEAR = 120;

/** Whether a link stands in a heading, or behind it in a strip without a choice to make, as in the head of a page. */
const belongsTo = (link: Element, heading: Element): boolean =>
  heading.contains(link) ||
  ((heading.compareDocumentPosition(link) & 4) > 0 &&
    !parentOf(heading)?.querySelector("button,select,form,img"));

/** Whether a heading names the shop: it says nothing, or has the link to the shop's first page. */
const namesTheShop = (heading: Element): boolean =>
  !/[\p{L}\p{N}]/u.test(heading.textContent) ||
  [...(parentOf(heading) ?? heading).querySelectorAll("a")].some(
    (link) => link.pathname === "/" && link.origin !== "null" && belongsTo(link, heading),
  );

/** The text on the page that says what its head calls it, where no heading does. */
function* namedByHead(doc: Document): Generator<undefined, Element | null, undefined> {
  const told = doc.querySelector('meta[property="og:title"]')?.getAttribute("content") ?? "";
  const key = nameKey(told);
  const walker = doc.createTreeWalker(doc.body, 4);
  for (let seen = 0; key.length > 3 && seen < MOST_TEXTS && walker.nextNode(); seen++) {
    if (seen % STRIDE === 0) yield;
    if (nameKey(walker.currentNode.nodeValue ?? "") === key) return parentOf(walker.currentNode);
  }
  return null;
}

/** The largest text that stands with a picture and a price around a button that buys: the name, where nothing is a heading. */
function largestBy(button: Element, survey: Survey): Element | null {
  const block = nearest(button, (up) => survey.picturesIn.has(up) && survey.pricesIn.has(up));
  if (!block || WHOLE.test(block.tagName)) return null;
  const priced = new Set(survey.prices.map(({ element }) => element));
  const walker = block.ownerDocument.createTreeWalker(block, 4);
  let best: { element: Element | null; size: number } = { element: null, size: 0 };
  for (let seen = 0; seen < MOST_NEAR && walker.nextNode(); seen++) {
    const element = parentOf(walker.currentNode);
    if (!element || letters(walker.currentNode.nodeValue ?? "") < 3 || priced.has(element)) continue;
    const { fontSize = "" } = block.ownerDocument.defaultView?.getComputedStyle(element) ?? {};
    const size = Number.parseFloat(fontSize);
    if (size > best.size) best = { element, size };
  }
  return best.element;
}

/**
 * Headings that may name the product a page is about: those of the first rank, apart from the shop's name; else what the
 * page's head names; else all others; else the largest text beside the one button that buys.
 */
export function* mainHeadings(
  survey: Survey,
  { doc, furniture }: Context,
): Generator<undefined, readonly Element[], undefined> {
  const shown = (selector: string) =>
    [...doc.querySelectorAll(selector)]
      .slice(0, MOST_HEADINGS)
      .filter((heading) => !furniture.isApart(heading) && !furniture.isHidden(heading));
  const first = shown("h1").filter((heading) => !namesTheShop(heading));
  if (first.length > 0) return first;
  yield;
  const named = yield* namedByHead(doc);
  const others = named ? [named] : shown("h2,h3,[itemprop=name]");
  if (others.length > 0) return others;
  const [button, ...more] = buttonsIn(doc).filter((one) => buys(one) && !furniture.isApart(one));
  const large = button && more.length === 0 ? largestBy(button, survey) : null;
  return large ? [large] : [];
}
