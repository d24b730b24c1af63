import { findAddedPlaces, findPlaces, type Places } from "../page/places.ts";
import type { FoundPage } from "../page/product.ts";
import { bringPart, type Parts } from "./parts.ts";
import { type VisitDeps, visit } from "./visit.ts";
import { whenCalm } from "./when-calm.ts";

/** Visits this page once it has come to rest, until `deps.signal` aborts. */
export async function startVisit(deps: VisitDeps): Promise<void> {
  await whenCalm(document);
  if (deps.signal.aborted) return;
  let show: Parts["show"] | undefined;
  /** Where there is no place for a product, the part that reads it stays away. */
  function* read(
    finding: Generator<undefined, Places | null, undefined>,
  ): Generator<Promise<void> | undefined, FoundPage, undefined> {
    const places = yield* finding;
    if (places && !show)
      yield bringPart(deps.ask, "show").then((part) => {
        show = part;
      });
    return places && show ? yield* show.readPlaces(places) : { kind: "none", products: [] };
  }
  await visit(deps, {
    readPage: (document) => read(findPlaces(document)),
    *readAdded(document, elements) {
      return (yield* read(findAddedPlaces(document, elements))).products;
    },
    follow: async (follow) => (await bringPart(deps.ask, "show")).follow(follow),
  });
}
