import { nearest } from "./ancestors.ts";
import type { PriceLeaf } from "./price-leaf.ts";
import { SMALLEST_PICTURE, type Survey } from "./survey.ts";

/** Prices in one tile: the price, the struck one, both again for screen readers. More is a list of products. */
const MOST_PRICES = 6;
/** How far above picture and price the title or link may hang. */
const STEPS_UP = 4;
/** Elements that hold everything, so that meeting in them means nothing. */
const WHOLE = /^(HTML|BODY|MAIN)$/;
/** Elements looked at for a background picture in one tile, and tiles looked at so. */
const MOST_BACKGROUNDS = 60;
const MOST_BARE = 400;

/** The smallest element with a price and a picture, and what meets there. */
export interface Cluster {
  readonly root: Element;
  readonly pictures: readonly Element[];
  readonly prices: readonly PriceLeaf[];
  /** True where it holds other products too: then it is no tile. */
  readonly holdsMore: boolean;
}

function backgroundIn(element: Element): Element | undefined {
  const view = element.ownerDocument.defaultView;
  return [element, ...[...element.querySelectorAll("*")].slice(0, MOST_BACKGROUNDS)].find((part) => {
    const picture = view?.getComputedStyle(part).backgroundImage ?? "";
    return /url\((?!.*svg)/.test(picture) && part.getBoundingClientRect().width >= SMALLEST_PICTURE;
  });
}

function groupPrices(
  prices: readonly PriceLeaf[],
  rootOf: (price: PriceLeaf) => Element | null,
): Map<Element, PriceLeaf[]> {
  const groups = new Map<Element, PriceLeaf[]>();
  for (const price of prices) {
    const root = rootOf(price);
    if (root) groups.set(root, [...(groups.get(root) ?? []), price]);
  }
  return groups;
}

/** Every price with the picture nearest to it. */
export function clustersOf(survey: Survey): readonly Cluster[] {
  const { picturesIn, pricesIn } = survey;
  const groups = groupPrices(survey.prices, (price) =>
    nearest(price.element, (up) => picturesIn.has(up) || !up.parentElement),
  );
  const pictures = new Map<Element, Element[]>();
  for (const picture of survey.pictures) {
    const root = nearest(picture, (up) => groups.has(up));
    if (root) pictures.set(root, [...(pictures.get(root) ?? []), picture]);
  }
  return [...groups].flatMap(([root, prices]) => {
    const own = pictures.get(root) ?? [];
    const wholePage = WHOLE.test(root.tagName);
    const holdsMore =
      wholePage || pricesIn.get(root) !== prices.length || prices.length > MOST_PRICES || own.length === 0;
    const cluster = { root, pictures: own, prices, holdsMore };
    return holdsMore ? [cluster, ...bareClusters(prices, pricesIn)] : cluster;
  });
}

/** Prices without an image element may stand under a picture that only a style sheet knows. */
function bareClusters(prices: readonly PriceLeaf[], pricesIn: Survey["pricesIn"]): readonly Cluster[] {
  const pictures = new Map<Element, Element>();
  const groups = groupPrices(prices.slice(0, MOST_BARE), ({ element }) => {
    const root = nearest(element, (up) => {
      if ((pricesIn.get(up) ?? 0) > MOST_PRICES || WHOLE.test(up.tagName)) return true;
      const picture = backgroundIn(up);
      if (picture) pictures.set(up, picture);
      return Boolean(picture);
    });
    return root && pictures.has(root) ? root : null;
  });
  return [...groups].map(([root, own]) => ({
    root,
    pictures: [pictures.get(root) ?? root],
    prices: own,
    holdsMore: false,
  }));
}

const letters = (text: string): number => text.replace(/[^\p{L}]/gu, "").length;

/** The whole tile around a cluster: grown until it has a title and a link, never into a neighbour. */
export function tileRoot({ root: smallest, pictures, prices }: Cluster, survey: Survey): Element {
  const priced = prices.reduce((sum, price) => sum + letters(price.text), 0);
  let root = smallest;
  for (let step = 0; step < STEPS_UP; step++) {
    const named = letters(root.textContent?.slice(0, 2000) ?? "") > priced + 2;
    const up = root.parentElement;
    const linked = root.closest("a[href]") ?? root.querySelector("a[href]");
    if (!up || (named && linked) || WHOLE.test(up.tagName)) break;
    if (survey.pricesIn.get(up) !== survey.pricesIn.get(smallest)) break;
    if ((survey.picturesIn.get(up) ?? 0) > pictures.length) break;
    root = up;
  }
  return root;
}
