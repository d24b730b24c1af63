import { nearest } from "./ancestors.ts";
import type { Context } from "./context.ts";
import { foundProduct } from "./found-product.ts";
import { isPutAway } from "./furniture.ts";
import { leadsToGroup } from "./link.ts";
import { plainText } from "./plain-text.ts";
import type { FoundPage, FoundProduct } from "./product.ts";
import type { Survey } from "./survey.ts";
import { type Cluster, tileRoot } from "./tiles.ts";
import { unpricedTiles } from "./unpriced.ts";

/** Tiles put together between two yields. */
const STRIDE = 4;
/** Bounds on hostile pages. */
const MOST_PRODUCTS = 2000;
const MOST_REJECTED = 200;

const GIFT = /donate|donation|spenden|faire un don|donación|donazione|doação|doneren|pledge/i;

/** The products on offer beside the main one, and what was turned down. */
export interface Tiles {
  readonly products: readonly FoundProduct[];
  readonly rejected: FoundPage["rejected"];
}

/** Makes products of clusters and of pictures that the page says are products; `main` is already found. */
export function* readTiles(
  survey: Survey,
  clusters: readonly Cluster[],
  context: Context,
  main: FoundProduct | null,
): Generator<undefined, Tiles, undefined> {
  const { furniture } = context;
  const products: FoundProduct[] = [];
  const rejected: { what: string; why: string }[] = [];
  const tiles = clusters
    .filter(({ holdsMore, root }) => !holdsMore && root !== main?.root)
    .slice(0, MOST_PRODUCTS);
  const roots = new Set(tiles.map(({ root }) => root));
  const consider = (root: Element, { pictures, prices }: Pick<Cluster, "pictures" | "prices">) => {
    const text = root.textContent?.slice(0, 600) ?? "";
    let why = furniture.whyNot(root);
    if (!why && isPutAway(root, furniture)) why = "not displayed";
    if (!why && GIFT.test(text)) why = "asks for a gift";
    const product = why ? null : foundProduct({ root, role: "tile", pictures, prices }, context);
    if (!product) why ??= "has no title or no picture";
    else if (product.link && leadsToGroup(product.link)) why = "leads to a category";
    else if (!product.link && tiles.length === 1 && product.evidence.length === 1)
      why = "one picture and one price, and nothing that says product";
    else products.push(product);
    if (why && rejected.length < MOST_REJECTED) rejected.push({ what: plainText(text).slice(0, 80), why });
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
  return { products, rejected };
}
