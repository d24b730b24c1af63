import { type Cluster, type Clustered, clustersOf, MOST_PRICES } from "../clusters.ts";
import { addTo, countUp, nearest, parentOf, WHOLE } from "../dom/ancestors.ts";
import { TAB } from "../dom/furniture.ts";

/** Clusters looked at between two yields. */
const STRIDE = 20;

function counted(elements: readonly Element[]): ReadonlyMap<Element, number> {
  const counts = new Map<Element, number>();
  for (const element of elements) countUp(counts, element);
  return counts;
}

/** Clusters that show and hold others only hidden, each with those. */
function* tilesWithCards({
  survey,
  clusters,
  context: { furniture },
}: Clustered): Generator<undefined, ReadonlyMap<Cluster, readonly Cluster[]>, undefined> {
  const shown = new Map<Element, Cluster>();
  const hidden: Cluster[] = [];
  for (const [i, cluster] of clusters.entries()) {
    if (i % STRIDE === 0) yield;
    const { root, prices } = cluster;
    if (furniture.isHidden(root)) hidden.push(cluster);
    else if (prices.length <= MOST_PRICES && !WHOLE.test(root.tagName)) shown.set(root, cluster);
  }
  const cards = new Map<Cluster, Cluster[]>();
  for (const card of hidden) {
    const around = nearest(parentOf(card.root), (up) => shown.has(up));
    const tile = around && shown.get(around);
    // An amount above a panel of tabs is no tile with the panel's wares in it.
    if (tile && (tile.pictures.length > 0 || !card.root.closest(TAB))) addTo(cards, tile, card);
  }
  for (const [tile, inside] of cards) {
    const priced = inside.reduce((sum, { prices }) => sum + prices.length, tile.prices.length);
    if (survey.pricesIn.get(tile.root) !== priced) cards.delete(tile);
  }
  return cards;
}

/**
 * The places without cards that a tile hides in itself: single pieces of an outfit in pop-overs, a quick view. The tile
 * that shows is the product.
 */
export function* withoutHiddenCards(places: Clustered): Generator<undefined, Clustered, undefined> {
  const tiles = yield* tilesWithCards(places);
  if (tiles.size === 0) return places;
  const cards = new Set([...tiles.values()].flat());
  const roots = new Set([...cards].map(({ root }) => root));
  const stays = (element: Element) => nearest(element, (up) => roots.has(up)) === null;
  const pictures = places.survey.pictures.filter(stays);
  yield;
  const prices = places.survey.prices.filter(({ element }) => stays(element));
  yield;
  const survey = {
    pictures,
    prices,
    picturesIn: counted(pictures),
    pricesIn: counted(prices.map(({ element }) => element)),
  };
  return { ...places, survey, clusters: yield* clustersOf(survey) };
}
