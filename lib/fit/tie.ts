import { deltaE2000 } from "../color/difference.ts";
import { LazyRelating } from "../color/lazy-relating.ts";
import type { Relating } from "../color/relate.ts";
import { relationIn } from "../color/relation-code.ts";
import type { Relation } from "../color/relation-name.ts";
import { areOneShade, type ClosetNames, namesAt } from "./closet-names.ts";
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

/** Places of two swatches among those that count: the candidate's and the piece's. */
type Pair = readonly [own: number, its: number];

/**
 * The best pair of swatches. Of two solids there is one; with a print it is the shade that both have (a print goes with the
 * solids whose colours it contains: common practice, no source), else the largest swatches with a named relation of hues,
 * else a neutral. Null where no pair has a named relation.
 * @param names of all pairs, found at the same confidence.
 */
export function bestTie(
  candidate: readonly ShownSwatch[],
  owned: PreparedPiece,
  names: ClosetNames,
  confidence: number,
): Tie | null {
  const pair = bestPair(candidate, owned, names);
  if (pair === null) return null;
  const own = candidate[pair[0]];
  const its = owned.shown[pair[1]];
  if (!own || !its) return null;
  const code = namesAt(names, pair[0], owned, pair[1]);
  return { owned, own, its, relating: new LazyRelating(code, own.point, its.point, confidence) };
}

function bestPair(candidate: readonly ShownSwatch[], owned: PreparedPiece, names: ClosetNames): Pair | null {
  const pairs = pairsBySize(candidate.length, owned.shown.length);
  const shared = pairs.length > 1 ? sharedShade(candidate, owned, names, pairs) : null;
  if (shared) return shared;
  let best: Pair | null = null;
  let least = UNNAMED;
  for (const pair of pairs) {
    const rank = rankOfRelation(relationIn(namesAt(names, pair[0], owned, pair[1])));
    if (rank >= least) continue;
    best = pair;
    least = rank;
    if (least <= OF_HUES) break;
  }
  return best;
}

/** Ranks of relations: two hues of a named relation, and no name. */
const OF_HUES = 1;
const UNNAMED = 3;

/** 0: one shade; 1: two hues of a named relation; 2: with a neutral; 3: no name. */
export function rankOf({ relation }: Relating): number {
  return rankOfRelation(relation);
}

function rankOfRelation(relation: Relation): number {
  if (relation === "matching") return 0;
  if (relation === "with-neutral") return 2;
  return relation === "none" ? UNNAMED : OF_HUES;
}

/** The pair of least difference, where it is one shade. */
function sharedShade(
  candidate: readonly ShownSwatch[],
  owned: PreparedPiece,
  names: ClosetNames,
  pairs: readonly Pair[],
): Pair | null {
  let least = Number.POSITIVE_INFINITY;
  let shared: Pair | null = null;
  for (const pair of pairs) {
    const own = candidate[pair[0]];
    const its = owned.shown[pair[1]];
    if (!own || !its || !areOneShade(namesAt(names, pair[0], owned, pair[1]))) continue;
    const difference = deltaE2000(own.point, its.point);
    if (difference < least) {
      least = difference;
      shared = pair;
    }
  }
  return shared;
}

/** More than the swatches that a piece can have. */
const KEY_BASE = 100;

const pairLists = new Map<number, readonly Pair[]>();

/** Places of the swatches of two pieces, the largest swatches first; made once per pair of counts. */
function pairsBySize(count: number, ownedCount: number): readonly Pair[] {
  const key = count * KEY_BASE + ownedCount;
  const known = pairLists.get(key);
  if (known) return known;
  const pairs = Array.from(
    { length: count * ownedCount },
    (_, at): Pair => [Math.floor(at / ownedCount), at % ownedCount],
  ).sort((one, other) => one[0] + one[1] - (other[0] + other[1]));
  pairLists.set(key, pairs);
  return pairs;
}
