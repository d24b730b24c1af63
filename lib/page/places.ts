import { isPlain, nearest } from "./ancestors.ts";
import { buttonsIn, buys } from "./buttons.ts";
import { addedContext, type Ground, readContext } from "./context.ts";
import { leadsToCollection, leadsToProduct } from "./link.ts";
import { scopesAround } from "./scopes-around.ts";
import { type Survey, surveyOf } from "./survey.ts";

/** Where products may be on a page, before any is put together. */
export interface Places {
  readonly context: Ground;
  readonly survey: Survey;
  /** True where the whole page was looked over: then it may be about one product. */
  readonly whole: boolean;
}

/** Links by which a tile without a price may be known; looser than `leadsToProduct`. */
const PRODUCT_LINKS = ["prod", "p/", "item/", "dp/"].map((part) => `a[href*="/${part}" i]`).join();

/** Classes by which tiles without a price may be known on a page that is a collection by its address. */
const PRODUCT_NAMES = '[class*="product" i] a[href]';

/** The places, or null where nothing can come of them. */
function worthwhile(places: Places): Places | null {
  const { whole, survey, context } = places;
  const { doc, described } = context;
  if (survey.prices.length > 0) return places;
  const told = () => described.length > 0 || doc.querySelector(PRODUCT_LINKS) !== null;
  const lists = () => leadsToCollection(doc.URL) && doc.querySelector(PRODUCT_NAMES) !== null;
  const sells = () => leadsToProduct(doc.URL) || buttonsIn(doc).some(buys) || lists();
  return survey.pictures.length > 0 && (told() || (whole && sells())) ? places : null;
}

/**
 * Looks where a document may show products: by its data, its prices and its pictures. Yields often, so that the caller
 * can spread the work; nothing on the page is changed. Null where there is no such place.
 */
export function* findPlaces(doc: Document): Generator<undefined, Places | null, undefined> {
  if (!doc.defaultView || !doc.body) return null;
  const context = yield* readContext(doc);
  const survey = yield* surveyOf([doc.body], context.hint);
  return worthwhile({ context, survey, whole: true });
}

/** The same in nodes that a page added later, without reading the rest of it again. */
export function* findAddedPlaces(
  doc: Document,
  added: readonly Element[],
): Generator<undefined, Places | null, undefined> {
  if (!doc.defaultView) return null;
  const plain = added.flatMap((element) => nearest(element, isPlain) ?? []);
  const context = yield* addedContext(doc, plain);
  const scopes = yield* scopesAround(doc, plain);
  if (scopes.length === 0) return null;
  const survey = yield* surveyOf(scopes, context.hint);
  return worthwhile({ context, survey, whole: false });
}
