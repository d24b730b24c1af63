import { nearest } from "./ancestors.ts";
import { buys } from "./buttons.ts";
import type { Cluster } from "./clusters.ts";
import type { Context } from "./context.ts";
import { isCalledProduct, leadsAway, leadsToProduct } from "./link.ts";
import { firstRank, isAboutAny } from "./main-headings.ts";
import { BROKEN, SMALLEST_BARE } from "./picture-sizes.ts";
import { nameKey } from "./plain-text.ts";
import { isCalledDetails } from "./told-by-markup.ts";

/** Of several blocks that may be sold under one heading, the one it names shows a picture that covers so many times as much. */
const LARGER = 1.5;

/** Buttons or clusters looked at between two yields. */
const STRIDE = 50;

const areaOf = (picture: Element): number => {
  const { width, height } = picture.getBoundingClientRect();
  return width * height;
};

/** Whether a cluster's pictures lead to another page; of several the largest, since small ones may lead to views of it. */
function isLinked({ pictures }: Cluster): boolean {
  const linked = pictures.filter(leadsAway);
  if (linked.length === 0 || linked.length === pictures.length) return linked.length > 0;
  const [largest] = pictures.toSorted((a, b) => areaOf(b) - areaOf(a));
  return largest !== undefined && linked.includes(largest);
}

/** Whether a heading that can be seen stands before the first price and says something else than those in `known`. */
const hasOwnName = ({ root, prices }: Cluster, known: readonly Element[], { furniture }: Context): boolean =>
  [...root.querySelectorAll("h1,h2,h3,h4,h5,h6")].some(
    (heading) =>
      !furniture.isHidden(heading) &&
      !isAboutAny(heading) &&
      !/:\s*$/.test(heading.textContent) &&
      !known.some((other) => nameKey(other.textContent) === nameKey(heading.textContent)) &&
      prices
        .slice(0, 1)
        .some(
          ({ element }) =>
            !heading.contains(element) &&
            !element.contains(heading) &&
            (heading.compareDocumentPosition(element) & 4) > 0,
        ),
  );

/** The clusters with a button that buys or called a product's page; all where such a button stands beside them and none has one, or the page's address is a product's. */
function* sold(
  loose: readonly Cluster[],
  single: readonly Cluster[],
  buttons: readonly Element[],
  { doc, furniture }: Context,
): Generator<undefined, readonly Cluster[], undefined> {
  const roots = new Set(single.map(({ root }) => root));
  const within = new Set<Element | null>();
  for (const [i, button] of buttons.entries()) {
    if (i % STRIDE === 0) yield;
    if (buys(button) && !furniture.isApart(button)) within.add(nearest(button, (up) => roots.has(up)));
  }
  const own = loose.filter(({ root }) => within.has(root) || isCalledDetails(root));
  const byAddress = leadsToProduct(doc.URL) || isCalledProduct(doc.URL);
  return own.length === 0 && (byAddress || (within.size === 1 && within.has(null))) ? loose : own;
}

/**
 * The block with the picture and the price of what a heading above it names, or null: it is sold there, it has no name
 * of its own where a heading stands above, and there is no second like it. `loose`: clusters whose largest picture leads nowhere.
 */
function* ownBlock(
  loose: readonly Cluster[],
  single: readonly Cluster[],
  buttons: readonly Element[],
  context: Context,
): Generator<undefined, Cluster | null, undefined> {
  const free = (yield* sold(loose, single, buttons, context)).filter(
    ({ root }) => !context.furniture.isApart(root),
  );
  // Under a heading of the first rank what has a name of its own is one of a list.
  const ranked = firstRank(context);
  const isHeaded = (root: Element) =>
    ranked.some((heading) => !root.contains(heading) && (heading.compareDocumentPosition(root) & 4) > 0);
  const [first, second] = free
    .filter((cluster) => !isHeaded(cluster.root) || !hasOwnName(cluster, ranked, context))
    .map((cluster) => ({ cluster, area: Math.max(0, ...cluster.pictures.map(areaOf)) }))
    .sort((a, b) => b.area - a.area);
  return first && (!second || first.area > LARGER * second.area) ? first.cluster : null;
}

/** Whether nothing shows of the pictures beside a price: a chart of sizes, a film that opens on demand. */
const isFoldedAway = ({ pictures, prices }: Cluster, { furniture }: Context): boolean =>
  pictures.every((picture) => areaOf(picture) === 0 && furniture.isHidden(picture)) &&
  prices.some(({ element }) => !furniture.isHidden(element));

/** Whether a price with pictures that lead nowhere may be a product for all that; marks of payment are none. */
const mayBeTile = ({ root, pictures }: Cluster): boolean =>
  root.querySelector("a[href]") !== null ||
  root.closest("a[href]") !== null ||
  pictures.some((picture) => {
    const { width } = picture.getBoundingClientRect();
    return width <= BROKEN || width >= SMALLEST_BARE;
  });

/** What a page may be about, and what may be products beside it. */
export interface Beside {
  /** The block of the page's own product, where one is told without its name. */
  readonly own: Cluster | null;
  readonly beside: readonly Cluster[];
}

/** The clusters that may be products beside the one that a page is about; `buttons`: what may buy. */
export function* tilesBeside(
  clusters: readonly Cluster[],
  buttons: readonly Element[],
  context: Context,
): Generator<undefined, Beside, undefined> {
  const single = clusters.filter(({ holdsMore }) => !holdsMore);
  const loose = new Set<Cluster>();
  for (const [i, cluster] of single.entries()) {
    if (i % STRIDE === 0) yield;
    if (!isLinked(cluster)) loose.add(cluster);
  }
  const own = yield* ownBlock([...loose], single, buttons, context);
  const beside = single.filter(
    (cluster) =>
      !loose.has(cluster) || (cluster !== own && mayBeTile(cluster) && !isFoldedAway(cluster, context)),
  );
  return { own, beside };
}
