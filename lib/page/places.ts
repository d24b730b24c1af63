import { isPlain, nearest, within } from "./dom/ancestors.ts";
import { isCalledProduct, leadsToCollection, leadsToProduct } from "./dom/link.ts";
import { BASKET_LINKS } from "./doubt/basket-names.ts";
import { LEAST_MEMBERS } from "./members.ts";
import { mentionsPrices } from "./money/mentions-prices.ts";
import { PICTURES } from "./picture/pictures.ts";
import { scopesAround } from "./scopes-around.ts";

/** Where products may be on a page, before anything of it is read. */
export interface Places {
  readonly doc: Document;
  /** Whose data is to be read: the document, or what it added. */
  readonly scopes: readonly (Document | Element)[];
  /** What is to be looked over for pictures and prices; none of these lies in another. */
  readonly roots: readonly Element[];
  /** True where that is the whole page: then it may be about one product. */
  readonly whole: boolean;
  /** Whether something besides prices says that there are products, where so many pictures are shown: data, markup, addresses. */
  readonly mayShow: (pictures: number) => boolean;
}

/** Links by which a tile without a price may be known; looser than `leadsToProduct`. */
const PRODUCT_LINKS = [
  ...["prod", "p/", "item/", "dp/"].map((part) => `a[href*="/${part}" i]`),
  'a[href^="prod" i]',
  ...["goods", "item", "product"].map((part) => `a[href*="${part}id=" i]`),
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
const PRESSED = `button,[type=submit],[type=image],[class*="btn"],[class*="cart" i],${BASKET_LINKS}`;

/** The places, or null where nothing can come of them; `described`: data that was added says that there are products. */
function* placesOf(
  doc: Document,
  scopes: Places["scopes"],
  roots: Places["roots"],
  described = false,
): Generator<undefined, Places | null, undefined> {
  const whole = scopes[0] === doc;
  const lists = () => leadsToCollection(doc.URL) && doc.querySelector(PRODUCT_NAMES) !== null;
  const shows = (pictures: number) => pictures >= LEAST_MEMBERS && doc.querySelector(SHELVES) !== null;
  const tells = (pictures: number) =>
    doc.querySelector(PRODUCT_LINKS) !== null ||
    (whole && (leadsToProduct(doc.URL) || isCalledProduct(doc.URL) || lists() || shows(pictures))) ||
    isDescribed(doc);
  const mayShow = (pictures: number) => described || (pictures > 0 && tells(pictures));
  const places = { doc, scopes, roots, whole, mayShow };
  if (described) return places;
  const { prices, shadows } = yield* mentionsPrices(roots);
  if (prices) return places;
  const pictures = [...roots, ...shadows].flatMap((root) => within(root, PICTURES)).length;
  const isPressed = pictures > 0 && whole && doc.querySelector(PRESSED) !== null;
  return isPressed || mayShow(pictures) ? places : null;
}

/**
 * Looks whether a document may show products: by its data, its prices and its pictures. Yields often, so that the caller
 * can spread the work; nothing on the page is changed. Null where there is no such place.
 */
export function* findPlaces(doc: Document): Generator<undefined, Places | null, undefined> {
  if (!doc.defaultView || !doc.body) return null;
  return yield* placesOf(doc, [doc], [doc.body]);
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
  return yield* placesOf(doc, plain, scopes, described);
}
