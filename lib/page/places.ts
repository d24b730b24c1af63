import { isPlain, nearest, within } from "./dom/ancestors.ts";
import { isCalledProduct, leadsToCollection, leadsToProduct } from "./dom/link.ts";
import { LEAST_MEMBERS } from "./members.ts";
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
  /** Whether something besides prices says that there are products: data, markup, addresses. */
  readonly mayShow: () => boolean;
  /** What a short text says of money; brought along, so that the second half needs no second copy. */
  readonly readTag: typeof readTag;
}

/** Links by which a tile without a price may be known; looser than `leadsToProduct`. */
const PRODUCT_LINKS = [
  ...["prod", "p/", "item/", "dp/"].map((part) => `a[href*="/${part}" i]`),
  'a[href^="prod" i]',
].join();

/** Classes by which tiles without a price may be known on a page that is a collection by its address. */
const PRODUCT_NAMES = '[class*="product" i] a[href]';

/** What a page has where pictures may be of products in a list that shows no amount with a sign. */
const SHELVES =
  '[class*="product" i],[class*="goods" i],[class*="price" i],[class*="cart" i],a[href*="/cart" i]';

/** Markup and data that describe products. */
const DESCRIBED =
  '[itemtype*="schema.org/Product" i],[typeof*="Product"],meta[property="og:type"][content*="product" i],meta[property*="price:amount"]';
const DESCRIBES = /Product(Group|Model)?"/;

const isDescribed = (scope: Document | Element): boolean =>
  within(scope, DESCRIBED).length > 0 ||
  within(scope, 'script[type*="ld+json" i]').some(({ textContent }) => DESCRIBES.test(textContent));

/** What could be pressed to buy: without it, a page that shows no price sells nothing. */
const PRESSED = 'button,[type=submit],[type=image],[class*="btn"],[class*="cart" i]';

/** The places, or null where nothing can come of them; `described`: data that was added says that there are products. */
function placesOf(
  doc: Document,
  scopes: Places["scopes"],
  survey: Places["survey"],
  whole: boolean,
  described = false,
): Places | null {
  const lists = () => leadsToCollection(doc.URL) && doc.querySelector(PRODUCT_NAMES) !== null;
  const shows = () => survey.pictures.length >= LEAST_MEMBERS && doc.querySelector(SHELVES) !== null;
  const mayShow = () =>
    described ||
    doc.querySelector(PRODUCT_LINKS) !== null ||
    (whole && (leadsToProduct(doc.URL) || isCalledProduct(doc.URL) || lists() || shows())) ||
    isDescribed(doc);
  const maySell = () => mayShow() || (whole && doc.querySelector(PRESSED) !== null);
  const isWorthwhile = described || survey.prices.length > 0 || (survey.pictures.length > 0 && maySell());
  return isWorthwhile ? { doc, scopes, survey, whole, mayShow, readTag } : null;
}

/**
 * Looks where a document may show products: by its data, its prices and its pictures. Yields often, so that the caller
 * can spread the work; nothing on the page is changed. Null where there is no such place.
 */
export function* findPlaces(doc: Document): Generator<undefined, Places | null, undefined> {
  if (!doc.defaultView || !doc.body) return null;
  const survey = yield* surveyOf([doc.body]);
  yield;
  return placesOf(doc, [doc], survey, true);
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
  const survey = yield* surveyOf(scopes);
  return placesOf(doc, plain, survey, false, described);
}
