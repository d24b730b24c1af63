import { nearest } from "./ancestors.ts";
import type { Context } from "./context.ts";
import { foundProduct } from "./found-product.ts";
import { isPutAway } from "./furniture.ts";
import { leadsToGroup } from "./link.ts";
import type { FoundProduct } from "./product.ts";
import type { Survey } from "./survey.ts";
import { type Cluster, tileRoot } from "./tiles.ts";
import { unpricedTiles } from "./unpriced.ts";

/** Tiles put together between two yields. */
const STRIDE = 4;
/** Bounds on hostile pages. */
const MOST_PRODUCTS = 2000;

const GIFT = /donate|donation|spenden|faire un don|donación|donazione|doação|doneren|pledge/i;

/** Makes products of clusters and of pictures that the page says are products; `main` is already found. */
export function* readTiles(
  survey: Survey,
  clusters: readonly Cluster[],
  context: Context,
  main: FoundProduct | null,
): Generator<undefined, readonly FoundProduct[], undefined> {
  const { furniture } = context;
  const products: FoundProduct[] = [];
  const tiles = clusters
    .filter(({ holdsMore, root }) => !holdsMore && root !== main?.root)
    .slice(0, MOST_PRODUCTS);
  const roots = new Set(tiles.map(({ root }) => root));
  const consider = (root: Element, { pictures, prices }: Pick<Cluster, "pictures" | "prices">) => {
    const apart = furniture.isApart(root) || isPutAway(root, furniture);
    if (apart || GIFT.test(root.textContent?.slice(0, 600) ?? "")) return;
    const product = foundProduct({ root, role: "tile", pictures, prices }, context);
    if (!product || (product.link && leadsToGroup(product.link))) return;
    // One picture and one price, and nothing that says product, is no product.
    if (product.link || tiles.length > 1 || product.evidence.length > 1) products.push(product);
  };
  for (const [i, tile] of tiles.entries()) {
    if (i % STRIDE === 0) yield;
    consider(tileRoot(tile, survey), tile);
  }
  yield;
  const taken = (picture: Element) => nearest(picture, (up) => roots.has(up) || up === main?.root) !== null;
  for (const [root, pictures] of unpricedTiles(survey, context, products, taken)) {
    yield;
    consider(root, { pictures, prices: [] });
  }
  return products;
}
