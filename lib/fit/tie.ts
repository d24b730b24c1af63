import { deltaE2000 } from "../color/difference.ts";
import { type Relating, relate } from "../color/relate.ts";
import { SAME_SHADE } from "../color/thresholds.ts";
import type { PreparedPiece, ShownSwatch } from "./prepared-piece.ts";

/** An owned piece, and the pair of swatches by which a candidate goes with it. */
export interface Tie {
  readonly owned: PreparedPiece;
  /** The candidate's swatch. */
  readonly own: ShownSwatch;
  /** The piece's swatch. */
  readonly its: ShownSwatch;
  readonly relating: Relating;
}

/**
 * The best pair of swatches. Of two solids there is one; with a print it is the shade that both have (a print goes with the
 * solids whose colours it contains: common practice, no source), else the largest swatches with a named relation of hues,
 * else a neutral. Null for a candidate without swatches.
 */
export function bestTie(
  candidate: readonly ShownSwatch[],
  owned: PreparedPiece,
  confidence: number,
): Tie | null {
  const tieOf = (own: ShownSwatch, its: ShownSwatch): Tie => ({
    owned,
    own,
    its,
    relating: relate(own.point, its.point, confidence),
  });
  const pairs = pairsBySize(candidate.length, owned.shown.length);
  if (pairs.length > 1) {
    const shared = sharedShade(candidate, owned.shown);
    if (shared) return tieOf(...shared);
  }
  let best: Tie | null = null;
  for (const [at, ownedAt] of pairs) {
    const own = candidate[at];
    const its = owned.shown[ownedAt];
    if (!own || !its) continue;
    const tie = tieOf(own, its);
    if (best === null || rankOf(tie.relating) < rankOf(best.relating)) best = tie;
    if (rankOf(best.relating) <= 1) return best;
  }
  return best;
}

/** 0: one shade; 1: two hues of a named relation; 2: with a neutral; 3: no name. */
export function rankOf({ relation }: Relating): number {
  if (relation === "matching") return 0;
  if (relation === "with-neutral") return 2;
  return relation === "none" ? 3 : 1;
}

/** The pair of least difference, where it is one shade. */
function sharedShade(
  candidate: readonly ShownSwatch[],
  owned: readonly ShownSwatch[],
): readonly [own: ShownSwatch, its: ShownSwatch] | null {
  let least = SAME_SHADE;
  let shared: readonly [ShownSwatch, ShownSwatch] | null = null;
  for (const own of candidate) {
    for (const its of owned) {
      const difference = deltaE2000(own.point, its.point);
      if (difference < least || (shared === null && difference === least)) {
        least = difference;
        shared = [own, its];
      }
    }
  }
  return shared;
}

/** More than the swatches that a piece can have. */
const KEY_BASE = 100;

const pairLists = new Map<number, readonly (readonly [number, number])[]>();

/** Places of the swatches of two pieces, the largest swatches first; made once per pair of counts. */
function pairsBySize(count: number, ownedCount: number): readonly (readonly [number, number])[] {
  const key = count * KEY_BASE + ownedCount;
  const known = pairLists.get(key);
  if (known) return known;
  const pairs = Array.from({ length: count * ownedCount }, (_, at): [number, number] => [
    Math.floor(at / ownedCount),
    at % ownedCount,
  ]).sort((one, other) => one[0] + one[1] - (other[0] + other[1]));
  pairLists.set(key, pairs);
  return pairs;
}
