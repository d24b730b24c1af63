import type { Cluster } from "../clusters.ts";
import type { Context } from "../context.ts";
import { leadsAway } from "../dom/link.ts";
import { unlikeOthers } from "../members.ts";
import { areaOf } from "../picture/picture-area.ts";
import { BROKEN, SMALLEST_BARE } from "../picture/picture-sizes.ts";
import { type OwnBlock, ownBlock } from "./own-block.ts";

/** Clusters looked at between two yields. */
const STRIDE = 50;

/** Whether a cluster is one of several or its pictures lead to another page, or all that it costs does; of several the largest, since small ones may lead to views of it. */
function isLinked({ parts, pictures, prices }: Cluster): boolean {
  if (parts.length > 1) return true;
  const linked = pictures.filter(leadsAway);
  if (linked.length === 0 && prices.length > 0 && prices.every(({ element }) => leadsAway(element)))
    return true;
  if (linked.length === 0 || linked.length === pictures.length) return linked.length > 0;
  const [largest] = pictures.toSorted((a, b) => areaOf(b) - areaOf(a));
  return largest !== undefined && linked.includes(largest);
}

/** Whether nothing shows of the pictures beside a price: a chart of sizes, a film that opens on demand; in many alike, a second copy. */
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
  readonly own: OwnBlock | null;
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
  const seen = loose.size > 0 ? single.filter(({ root }) => !context.furniture.isHidden(root)) : [];
  const own = yield* ownBlock([...loose], seen, buttons, context);
  const folded = single.filter((cluster) => loose.has(cluster) && isFoldedAway(cluster, context));
  const aside = new Set(unlikeOthers(folded));
  const holdsOwn = ({ root }: Cluster) => own !== null && root.contains(own.cluster.root);
  const beside = single.filter(
    (cluster) => !loose.has(cluster) || (!holdsOwn(cluster) && mayBeTile(cluster) && !aside.has(cluster)),
  );
  return { own, beside };
}
