import type { Doubted } from "../../lib/page/doubt/doubts.ts";
import { findAddedPlaces, findPlaces } from "../../lib/page/places.ts";
import type { FoundPage, FoundProduct } from "../../lib/page/product.ts";
import { readPlaces } from "../../lib/page/read-places.ts";

/** Reads the products of a document in one go: where the page script brings its second half in between, nothing waits here. */
export function* readPage(doc: Document, doubted?: Doubted): Generator<undefined, FoundPage, undefined> {
  const places = yield* findPlaces(doc);
  return places ? yield* readPlaces(places, doubted) : { kind: "none", products: [] };
}

/**
 * Reads the products in nodes that a page added later, without reading the rest of it again. Products the caller knows
 * already may come again, with the same key.
 */
export function* readAdded(
  doc: Document,
  added: readonly Element[],
): Generator<undefined, readonly FoundProduct[], undefined> {
  const places = yield* findAddedPlaces(doc, added);
  return places ? (yield* readPlaces(places)).products : [];
}
