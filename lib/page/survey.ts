import { countUp, nameOf, within } from "./dom/ancestors.ts";
import { MOST_NODES, MOST_SHADOWS, NODES_STRIDE } from "./dom/bounds.ts";
import { pricesBelow } from "./money/price-column.ts";
import { FIELDS, priceInField } from "./money/price-in-field.ts";
import { priceLeafAt } from "./money/price-leaf.ts";
import type { PriceLeaf, WrittenPrice } from "./money/written-price.ts";
import { BROKEN, SMALLEST_PICTURE } from "./picture/picture-sizes.ts";
import { PICTURES } from "./picture/pictures.ts";
import { promisesPicture } from "./picture/promises-picture.ts";

/** A bound on hostile pages. */
const MOST_PICTURES = 4000;
/** Pictures looked at between two yields. */
const PICTURES_STRIDE = 20;

const ICON_NAME =
  /(?<![a-z])(icon|logo|flag|avatar|payment|badge|rating|stars?|swatch|wishlist|heart)(?![a-z])/i;
const LOGO_FILE = /\blogo|[-_]logo|(?<![a-z])swatch/i;
/** Pictures of buttons that say to buy. */
const BUTTON_FILE =
  /\/(btn[-_]|button[-_])?(add[-_]?to[-_]?(cart|bag|basket)|(in[-_]den[-_])?warenkorb|buy([-_]?now)?|ajouter([-_]au[-_]panier)?|kaufen|bestellen|comprar)([-_]?(btn|button))?\.(png|gif|jpe?g|svg|webp)/i;
/** Where shops keep the marks on their buttons, and what turns while something comes. */
const ICON_FILE =
  /\/icons?\/|\/(btn|ico)[-_]|[/_-]((pre)?load(er|ing)|spinner)[^/]*\.(gif|svg)|(?<![a-z])(zoom|search|eye|arrow|close|plus|minus|cart|basket|user|check|share|menu)(?![a-z])[^/]*\.svg/i;

/** What a stretch of page shows that products are made of; `P`: its prices as written, or with their currency. */
export interface Survey<P extends WrittenPrice = PriceLeaf> {
  /** Elements that may show a product's picture, in document order. */
  readonly pictures: readonly Element[];
  readonly prices: readonly P[];
  /** How many of the pictures and prices lie inside each ancestor. */
  readonly picturesIn: ReadonlyMap<Element, number>;
  readonly pricesIn: ReadonlyMap<Element, number>;
}

/** Whether an image was asked for and did not come. */
const failed = (element: Element): boolean =>
  "naturalWidth" in element &&
  element.naturalWidth === 0 &&
  "complete" in element &&
  element.complete === true;

/** Whether another picture is to take its place. */
const isLate = (element: Element): boolean =>
  element.getAttributeNames().some((name) => name === "srcset" || promisesPicture(name));

function isIcon(element: Element): boolean {
  const { width, height } = element.getBoundingClientRect();
  // A picture that has not come may have no size, or that of a mark or of its words, where its attribute promises more.
  const sized = Math.min(width, height) > 2 && (!failed(element) || (width === height && width !== BROKEN));
  const shown = sized
    ? Math.min(width, height)
    : Math.min(
        ...["width", "height"].map((side) => Number(element.getAttribute(side)) || Number.POSITIVE_INFINITY),
      );
  const file = element.getAttribute("src") ?? "";
  // What turns until a picture comes tells nothing of its size.
  if (shown < SMALLEST_PICTURE) return !(ICON_FILE.test(file) && isLate(element));
  if (BUTTON_FILE.test(file) || (ICON_FILE.test(file) && !isLate(element))) return true;
  if (LOGO_FILE.test(file) && shown < 2 * SMALLEST_PICTURE) return true;
  // What leads to the store's first page and is called a logo is one at any size.
  const home = element.closest("a[href]");
  if (
    home &&
    "pathname" in home &&
    home.pathname === "/" &&
    /logo|brand/i.test(`${nameOf(element)} ${nameOf(home)} ${file}`)
  )
    return true;
  const drawn = /\.svg(\?|$)/i.test(file);
  return (drawn || ICON_NAME.test(nameOf(element))) && shown < 2 * SMALLEST_PICTURE;
}

/** Looks over `scopes` (elements that do not overlap) and their open shadow roots for pictures and prices, yielding as it goes. */
export function* surveyOf(scopes: readonly Element[]): Generator<undefined, Survey<WrittenPrice>, undefined> {
  const pictures: Element[] = [];
  const prices = new Map<Element, WrittenPrice>();
  const picturesIn = new Map<Element, number>();
  const pricesIn = new Map<Element, number>();
  const roots: (Element | ShadowRoot)[] = [...scopes];
  let nodes = 0;
  let looked = 0;
  for (const root of roots) {
    for (const element of within(root, PICTURES)) {
      if (looked++ % PICTURES_STRIDE === 0) yield;
      if (looked > MOST_PICTURES) break;
      if (isIcon(element)) continue;
      pictures.push(element);
      countUp(picturesIn, element);
    }
    const fields = new Set<Node>(within(root, FIELDS));
    const walker = root.ownerDocument.createTreeWalker(root, 5);
    for (let node: Node | null = root; node && nodes < MOST_NODES; node = walker.nextNode()) {
      if (++nodes % NODES_STRIDE === 0) yield;
      const isField = fields.has(node);
      if (node.nodeType === 1) {
        const { shadowRoot } = node as Element;
        if (shadowRoot && roots.length < MOST_SHADOWS) roots.push(shadowRoot);
        if (!isField) continue;
      }
      const leaf = isField ? priceInField(node as Element) : priceLeafAt(node);
      const leaves = leaf ? [leaf] : pricesBelow(node);
      for (const one of leaves) {
        if (!prices.has(one.element)) countUp(pricesIn, one.element);
        const other = prices.get(one.element);
        // Of a span between two elements both ends stand in one: "€42<i>–</i>€48".
        prices.set(one.element, other ? { ...other, amounts: [...other.amounts, ...one.amounts] } : one);
      }
      if (leaves.length > 0) yield;
    }
  }
  return { pictures, prices: [...prices.values()], picturesIn, pricesIn };
}
