import { clustersOf } from "./clusters.ts";
import type { Doubted } from "./doubts.ts";
import { foundProduct } from "./found-product.ts";
import { mainProduct } from "./main-product.ts";
import type { Places } from "./places.ts";
import type { FoundPage } from "./product.ts";
import { readTiles } from "./read-tiles.ts";
import { withoutHiddenCards } from "./without-hidden-cards.ts";
import { withoutRepeats } from "./without-repeats.ts";

/**
 * Puts the products together that stand in places, and leaves out what is none. Yields often; nothing on the page is
 * changed. `doubted` hears what was taken for a product and is none.
 */
export function* readPlaces(found: Places, doubted?: Doubted): Generator<undefined, FoundPage, undefined> {
  const places = yield* withoutHiddenCards({ ...found, clusters: yield* clustersOf(found.survey) });
  const { context, survey, clusters, whole } = places;
  const draft = whole ? yield* mainProduct(survey, clusters, context) : null;
  const main = draft && foundProduct({ role: "main", ...draft }, context);
  yield;
  const tiles = yield* readTiles(places, main && draft, doubted);
  const products = withoutRepeats(main ? [main, ...tiles] : tiles, context);
  return { kind: main ? "product" : products.length > 0 ? "listing" : "none", products };
}
