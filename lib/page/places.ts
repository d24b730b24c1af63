import { isPlain, nearest, within } from "./dom/ancestors.ts";
import { buttonsIn, buys } from "./dom/buttons.ts";
import { leadsToCollection, leadsToProduct } from "./dom/link.ts";
import { readTag } from "./money/price.ts";
import type { WrittenPrice } from "./money/price-leaf.ts";
import { scopesAround } from "./scopes-around.ts";
import { type Survey, surveyOf } from "./survey.ts";

/** Where products may be on a page, before any is put together. */
export interface Places {
  readonly doc: Document;
  /** What was looked over: the document, or what it added. */
  readonly scopes: readonly (Document | Element)[];
  readonly survey: Survey<WrittenPrice>;
  /** True where the whole page was looked over: then it may be about one product. */
  readonly whole: boolean;
  /** What a short text says of money; brought along, so that the second half needs no second copy. */
  readonly readTag: typeof readTag;
}

/** Links by which a tile without a price may be known; looser than `leadsToProduct`. */
const PRODUCT_LINKS = ["prod", "p/", "item/", "dp/"].map((part) => `a[href*="/${part}" i]`).join();

/** Classes by which tiles without a price may be known on a page that is a collection by its address. */
const PRODUCT_NAMES = '[class*="product" i] a[href]';

/** Pictures from which on they may be of products in a list that shows no amount with a sign, and what such a page has. */
const SHELF = 4;
const SHELVES = '[class*="product" i],[class*="goods" i],[class*="cart" i],a[href*="/cart" i]';

/** Markup and data that describe products. */
const DESCRIBED =
  '[itemtype*="schema.org/Product" i],[typeof*="Product"],meta[property="og:type"][content*="product" i],meta[property*="price:amount"]';
const DESCRIBES = /Product(Group|Model)?"/;

const isDescribed = (scope: Document | Element): boolean =>
  within(scope, DESCRIBED).length > 0 ||
  within(scope, 'script[type*="ld+json" i]').some(({ textContent }) => DESCRIBES.test(textContent));

/** The places, or null where nothing can come of them. */
function worthwhile(places: Places): Places | null {
  const { doc, whole, survey } = places;
  if (survey.prices.length > 0) return places;
  const lists = () => leadsToCollection(doc.URL) && doc.querySelector(PRODUCT_NAMES) !== null;
  const sells = () => leadsToProduct(doc.URL) || buttonsIn(doc).some(buys) || lists();
  const shows = () => survey.pictures.length >= SHELF && doc.querySelector(SHELVES) !== null;
  const told = () =>
    doc.querySelector(PRODUCT_LINKS) !== null || (whole && (sells() || shows())) || isDescribed(doc);
  return survey.pictures.length > 0 && told() ? places : null;
}

/**
 * Looks where a document may show products: by its data, its prices and its pictures. Yields often, so that the caller
 * can spread the work; nothing on the page is changed. Null where there is no such place.
 */
export function* findPlaces(doc: Document): Generator<undefined, Places | null, undefined> {
  if (!doc.defaultView || !doc.body) return null;
  const survey = yield* surveyOf([doc.body]);
  yield;
  return worthwhile({ doc, scopes: [doc], survey, whole: true, readTag });
}

/** The same in nodes that a page added later, without reading the rest of it again. */
export function* findAddedPlaces(
  doc: Document,
  added: readonly Element[],
): Generator<undefined, Places | null, undefined> {
  if (!doc.defaultView) return null;
  const plain = added.flatMap((element) => nearest(element, isPlain) ?? []);
  const scopes = yield* scopesAround(doc, plain);
  // Data that comes before its tiles is read for them.
  const described = plain.some(isDescribed);
  if (scopes.length === 0 && !described) return null;
  const places = { doc, scopes: plain, survey: yield* surveyOf(scopes), whole: false, readTag };
  return described ? places : worthwhile(places);
}
