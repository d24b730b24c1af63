import type { Context } from "./context.ts";
import { addTo, nearest, parentOf, WHOLE, within } from "./dom/ancestors.ts";
import { letters } from "./dom/letters.ts";
import type { PriceLeaf } from "./money/written-price.ts";
import { partedIn } from "./parted.ts";
import { SMALLEST_PICTURE } from "./picture/picture-sizes.ts";
import type { Survey } from "./survey.ts";

/** Prices in one tile: the price, the struck one, both again for screen readers. More is a list of products. */
export const MOST_PRICES = 6;
/** Letters beside the prices that lie on a picture; with more it is a tile by itself. */
const MOST_BESIDE = 2;
/** Elements looked at for a background picture in one tile, and tiles looked at so. */
const MOST_BACKGROUNDS = 60;
const MOST_BARE = 400;
/** Prices or pictures joined between two yields. */
const STRIDE = 100;

/** The smallest element with a price and a picture, and what meets there. */
export interface Cluster {
  /** Of one whose parts stand among those of others, the part with the picture. */
  readonly root: Element;
  /** What it is made of: the root, as a rule. */
  readonly parts: readonly Element[];
  readonly pictures: readonly Element[];
  readonly prices: readonly PriceLeaf[];
  /** True where it holds other products too: then it is no tile. */
  readonly holdsMore: boolean;
}

/** What a page shows, and what meets in it. */
export interface Clustered {
  readonly context: Context;
  readonly survey: Survey;
  readonly clusters: readonly Cluster[];
}

/** What shows a background picture in an element, apart from what lies in `below`. */
function backgroundIn(element: Element, below: Element | null): Element | undefined {
  const view = element.ownerDocument.defaultView;
  const parts = within(element, "*").filter((part) => !below?.contains(part));
  return parts.slice(0, MOST_BACKGROUNDS).find((part) => {
    const picture = view?.getComputedStyle(part).backgroundImage ?? "";
    const { width, height } = part.getBoundingClientRect();
    return /url\((?!.*svg)/.test(picture) && Math.min(width, height) >= SMALLEST_PICTURE;
  });
}

/** Puts together what has the same root, a few at a time. */
function* grouped<T>(
  things: readonly T[],
  rootOf: (thing: T) => Element | null,
): Generator<undefined, Map<Element, T[]>, undefined> {
  const groups = new Map<Element, T[]>();
  for (const [i, thing] of things.entries()) {
    if (i % STRIDE === 0) yield;
    const root = rootOf(thing);
    if (root) addTo(groups, root, thing);
  }
  return groups;
}

/**
 * Of groups of prices those without a picture of their own that stand around a single one with a picture, each with that:
 * what lies on the picture says what it cost once, or what a script keeps.
 */
function pricesAround(
  groups: ReadonlyMap<Element, readonly PriceLeaf[]>,
  pictures: ReadonlyMap<Element, readonly Element[]>,
  { picturesIn, pricesIn }: Survey,
): ReadonlyMap<Element, Element> {
  const inner = new Map<Element, Element>();
  const mayHold = (root: Element) => groups.has(root) && !pictures.has(root) && !WHOLE.test(root.tagName);
  if (![...groups.keys()].some(mayHold)) return inner;
  for (const [root, { length }] of pictures) {
    const around = nearest(parentOf(root), (up) => groups.has(up));
    if (!around || !mayHold(around) || picturesIn.get(around) !== length) continue;
    const own = groups.get(root) ?? [];
    const written = own.reduce((sum, { text }) => sum + letters(text), MOST_BESIDE);
    if (letters(root.textContent) > written) continue;
    const count = own.length + (groups.get(around)?.length ?? 0);
    if (count <= MOST_PRICES && count === pricesIn.get(around)) inner.set(around, root);
  }
  return inner;
}

/** Puts what one group has before what another has, in that. */
function addAll<T>(groups: Map<Element, T[]>, from: Element, to: Element): void {
  groups.set(to, [...(groups.get(from) ?? []), ...(groups.get(to) ?? [])]);
  groups.delete(from);
}

/** Every price with the picture nearest to it. */
export function* clustersOf(survey: Survey): Generator<undefined, readonly Cluster[], undefined> {
  const { picturesIn, pricesIn } = survey;
  const groups = yield* grouped(survey.prices, (price) =>
    nearest(price.element, (up) => picturesIn.has(up) || !parentOf(up)),
  );
  const pictures = yield* grouped(survey.pictures, (picture) => nearest(picture, (up) => groups.has(up)));
  for (const [around, root] of pricesAround(groups, pictures, survey)) {
    addAll(groups, root, around);
    addAll(pictures, root, around);
  }
  const clusters: Cluster[] = [];
  for (const [root, prices] of groups) {
    const own = pictures.get(root) ?? [];
    const parted = partedIn(root, own, prices);
    clusters.push(...parted);
    if (parted.length > 0) continue;
    const holdsMore =
      WHOLE.test(root.tagName) ||
      pricesIn.get(root) !== prices.length ||
      prices.length > MOST_PRICES ||
      own.length === 0;
    clusters.push({ root, parts: [root], pictures: own, prices, holdsMore });
    if (holdsMore) clusters.push(...(yield* bareClusters(prices, pricesIn)));
  }
  return clusters;
}

/** Prices without an image element may stand under a picture that only a style sheet knows. */
function* bareClusters(
  prices: readonly PriceLeaf[],
  pricesIn: Survey["pricesIn"],
): Generator<undefined, readonly Cluster[], undefined> {
  const pictures = new Map<Element, Element>();
  const groups = new Map<Element, PriceLeaf[]>();
  for (const price of prices.slice(0, MOST_BARE)) {
    yield;
    let below: Element | null = null;
    const root = nearest(price.element, (up) => {
      if ((pricesIn.get(up) ?? 0) > MOST_PRICES || WHOLE.test(up.tagName)) return true;
      const picture = backgroundIn(up, below);
      below = up;
      if (picture) pictures.set(up, picture);
      return Boolean(picture);
    });
    if (root && pictures.has(root)) addTo(groups, root, price);
  }
  return [...groups].map(([root, own]) => ({
    root,
    parts: [root],
    pictures: [pictures.get(root) ?? root],
    prices: own,
    holdsMore: false,
  }));
}
