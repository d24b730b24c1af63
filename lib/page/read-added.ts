import { readContext } from "./context.ts";
import type { FoundProduct } from "./product.ts";
import { readTiles } from "./read-tiles.ts";
import { surveyOf } from "./survey.ts";
import { clustersOf } from "./tiles.ts";
import { withoutRepeats } from "./without-repeats.ts";

/** Levels above an added node within which its tile is looked for: a price that comes late has its picture nearby. */
const LEVELS = 6;

/**
 * Reads the products in nodes that a page added later, without reading the rest of it again. Products the caller knows
 * already may come again, with the same key.
 */
export function* readAdded(
  doc: Document,
  added: readonly Element[],
): Generator<undefined, readonly FoundProduct[], undefined> {
  if (!doc.defaultView) return [];
  const scopes = new Set<Element>();
  for (const element of added) {
    let scope: Element | null = element.isConnected ? element : null;
    for (let level = 0; scope && level < LEVELS && !scope.querySelector("img"); level++)
      scope = scope.parentElement;
    if (scope && scope !== doc.body && scope !== doc.documentElement) scopes.add(scope);
  }
  const apart = [...scopes].filter(
    (scope) => ![...scopes].some((other) => other !== scope && other.contains(scope)),
  );
  const context = readContext(doc);
  yield;
  const survey = yield* surveyOf(apart, context.hint);
  const clusters = clustersOf(survey);
  const products = yield* readTiles(survey, clusters, context, null);
  return withoutRepeats(products, context);
}
