import { readContext } from "./context.ts";
import { foundProduct } from "./found-product.ts";
import { mainProduct } from "./main-product.ts";
import type { FoundPage } from "./product.ts";
import { readTiles } from "./read-tiles.ts";
import { surveyOf } from "./survey.ts";
import { clustersOf } from "./tiles.ts";
import { withoutRepeats } from "./without-repeats.ts";

/**
 * Reads the products of a document: structured data, then markup, then layout. Yields often, so that the caller can
 * spread the work; nothing on the page is changed.
 */
export function* readPage(doc: Document): Generator<undefined, FoundPage, undefined> {
  if (!doc.defaultView || !doc.body) return { kind: "none", products: [] };
  const context = readContext(doc);
  yield;
  const survey = yield* surveyOf([doc.body], context.hint);
  const clusters = clustersOf(survey);
  yield;
  const draft = mainProduct(survey, clusters, context);
  const main = draft && foundProduct(draft, context);
  yield;
  const products = yield* readTiles(survey, clusters, context, main);
  const all = withoutRepeats(main ? [main, ...products] : products, context);
  return { kind: main ? "product" : all.length > 0 ? "listing" : "none", products: all };
}
