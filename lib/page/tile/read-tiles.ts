import type { Cluster, Clustered } from "../clusters.ts";
import { nearest } from "../dom/ancestors.ts";
import { buttonsIn } from "../dom/buttons.ts";
import { leadsToProduct, linkAway } from "../dom/link.ts";
import { DOUBTS, type Doubted, isNoWare } from "../doubt/doubts.ts";
import { withoutNoWares } from "../doubt/without-no-wares.ts";
import { foundProduct } from "../found-product.ts";
import type { MainDraft } from "../main/main-draft.ts";
import { priceOn } from "../main/main-price.ts";
import { barePrices, numberedPrices } from "../money/bare-price.ts";
import type { FoundProduct } from "../product.ts";
import { learnNames } from "./brands.ts";
import { headBefore } from "./head-before.ts";
import type { Related } from "./related.ts";
import { shelfTiles } from "./shelf.ts";
import { tileRoot } from "./tile-root.ts";
import { unpricedTiles } from "./unpriced.ts";

/** Bounds on hostile pages. */
const MOST_PRODUCTS = 2000;

/** Doubts asked with a yield before each: the browser compiles what one looks for when it is first asked. */
const FIRST_ASKED = 4 * DOUBTS.length;

/** The clusters that may be tiles beside what the page is about. */
export const tileClusters = (clusters: readonly Cluster[], main: MainDraft | null): readonly Cluster[] =>
  clusters
    .filter(({ holdsMore, root, prices }) => {
      const isMain = main && (root.contains(main.heading) || main.prices.some((one) => prices.includes(one)));
      return !holdsMore && !isMain;
    })
    .slice(0, MOST_PRODUCTS);

/**
 * Makes products of the tiles and of pictures that the page says are products; `main` is what the page is about, `related`
 * what it announces beside that. `doubted` hears of each that is none after all.
 */
export function* readTiles(
  { survey, context }: Clustered,
  main: MainDraft | null,
  tiles: readonly Cluster[],
  related: Related,
  doubted?: Doubted,
): Generator<undefined, readonly FoundProduct[], undefined> {
  if (tiles.length > 0) yield* learnNames(context);
  const products: FoundProduct[] = [];
  const others: Element[] = [];
  const roots = new Set([...tiles.map(({ root }) => root), ...related.unpriced.keys()]);
  const leads = ({ parts }: Cluster) =>
    parts.some((part) => part.closest("a[href]") ?? part.querySelector("a[href]"));
  const leading = tiles.filter(leads).length;
  let asked = 0;
  function* consider(
    { root, parts, pictures, prices }: Omit<Cluster, "holdsMore">,
    alone: boolean,
    title = "",
  ): Generator<undefined, void, undefined> {
    let product: FoundProduct | null = null;
    const make = () => {
      product ??= foundProduct({ root, parts, role: "tile", title, pictures, prices }, context);
      return product;
    };
    const othersLead = leading > tiles.length / 2;
    const announced = nearest(root, (up) => related.all.has(up)) !== null;
    const suspect = {
      root,
      parts,
      pictures,
      prices,
      alone,
      othersLead,
      announced,
      survey,
      context,
      product: make,
    };
    yield;
    for (const doubt of DOUBTS) {
      if (asked++ < FIRST_ASKED) yield;
      if (!doubt(suspect)) continue;
      if (doubt === isNoWare) others.push(root);
      return doubted?.(root, doubt.name);
    }
    if (product) products.push(product);
  }
  for (const tile of tiles) {
    // What breaks one tile must not take the others with it.
    try {
      const root = tileRoot(tile, survey);
      const parts = tile.parts.length > 1 ? tile.parts : [root];
      yield* consider({ ...tile, root, parts }, tiles.length < 2, headBefore(root, survey, context));
    } catch (error) {
      reportError(error);
    }
  }
  const taken = (picture: Element) => {
    const around = nearest(picture, (up) => roots.has(up) || up === main?.root);
    return around !== null && (roots.has(around) || !leadsToProduct(linkAway(picture) ?? ""));
  };
  const unpriced = yield* unpricedTiles(survey, context, products, main, taken);
  const known = [...unpriced, ...related.unpriced];
  const shown = new Set([...roots, ...known.map(([root]) => root)]);
  const isFree = (picture: Element) => !nearest(picture, (up) => shown.has(up));
  const shelved = main
    ? []
    : yield* shelfTiles(survey.pictures.filter(isFree), context, products.length + known.length === 0);
  const unsigned = [...known, ...shelved];
  const numbered = numberedPrices(
    unsigned.map(([root]) => root),
    context,
  );
  for (const [root, pictures] of unsigned) {
    const alone = tiles.length < 2 && unpriced.has(root);
    const bare = [...barePrices(root, context), ...(numbered.get(root) ?? [])].slice(0, 1);
    const onButton = bare.length > 0 ? [] : buttonsIn(root).flatMap((button) => priceOn(button, context));
    const prices = [...bare, ...onButton.slice(0, 1)];
    yield* consider({ root, parts: [root], pictures, prices }, alone);
  }
  const wares = withoutNoWares(products, others);
  if (doubted) for (const one of products) if (!wares.includes(one)) doubted(one.root, "liesAmongNoWares");
  return wares;
}
