import { countUp, nameOf } from "./ancestors.ts";
import type { MoneyHint } from "./currency.ts";
import { type PriceLeaf, priceLeafAt } from "./price-leaf.ts";

/** Bounds on hostile pages. */
const MOST_PICTURES = 4000;
const MOST_TEXTS = 60_000;
/** Work between two yields, in elements or text nodes. */
const STRIDE = 60;

/** A picture narrower or lower than this is an icon, in CSS pixels; a tile's picture on a phone is about 150. */
export const SMALLEST_PICTURE = 48;

const ICON_NAME = /\b(icon|logo|flag|avatar|payment|badge|rating|stars?|swatch|wishlist|heart)\b/i;
const PICTURES = 'img,[style*="url("],[data-bg],[data-background],[data-bgset],[data-background-image]';

/** What a stretch of page shows that products are made of. */
export interface Survey {
  /** Elements that may show a product's picture, in document order. */
  readonly pictures: readonly Element[];
  readonly prices: readonly PriceLeaf[];
  /** How many of the pictures and prices lie inside each ancestor. */
  readonly picturesIn: ReadonlyMap<Element, number>;
  readonly pricesIn: ReadonlyMap<Element, number>;
}

function isIcon(element: Element): boolean {
  const given = Number(element.getAttribute("width")) || Number.POSITIVE_INFINITY;
  const { width, height } = element.getBoundingClientRect();
  // A picture that has not come yet may be one pixel wide where its attribute promises more.
  const shown = Math.min(width, height) < 3 ? given : Math.min(width, height);
  if (shown < SMALLEST_PICTURE) return true;
  if (ICON_NAME.test(nameOf(element))) return width < 2 * SMALLEST_PICTURE;
  const waits = element.getAttributeNames().some((name) => /^data-.*(src|bg)/.test(name));
  return !waits && /\.svg(\?|$)/i.test(element.getAttribute("src") ?? "");
}

/** Looks over `scopes` (elements that do not overlap) for pictures and prices, yielding as it goes. */
export function* surveyOf(
  scopes: readonly Element[],
  hint: MoneyHint,
): Generator<undefined, Survey, undefined> {
  const pictures: Element[] = [];
  const prices = new Map<Element, PriceLeaf>();
  let work = 0;
  for (const scope of scopes) {
    const inside = [...scope.querySelectorAll(PICTURES)].slice(0, MOST_PICTURES);
    for (const element of scope.matches(PICTURES) ? [scope, ...inside] : inside) {
      if (++work % STRIDE === 0) yield;
      if (!isIcon(element)) pictures.push(element);
    }
    const walker = scope.ownerDocument.createTreeWalker(scope, 4);
    for (let node = walker.nextNode(), n = 0; node && n < MOST_TEXTS; node = walker.nextNode(), n++) {
      if (++work % STRIDE === 0) yield;
      const leaf = priceLeafAt(node, hint);
      if (leaf) prices.set(leaf.element, leaf);
    }
  }
  return {
    pictures,
    prices: [...prices.values()],
    picturesIn: countUp(pictures),
    pricesIn: countUp(prices.keys()),
  };
}
