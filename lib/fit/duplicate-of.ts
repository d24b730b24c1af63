import { deltaE2000 } from "../color/difference.ts";
import { SAME_SHADE } from "../color/thresholds.ts";
import type { PreparedPiece, ShownSwatch } from "./prepared-piece.ts";
import type { Candidate, Duplicate } from "./verdict.ts";

/**
 * Whether an owned piece repeats the candidate: recorded as the same product, which is certain, or the same slot in
 * the same shade. Of prints every colour must find a partner, both ways; the difference given is then the largest.
 */
export function duplicateOf(
  candidate: Candidate,
  shown: readonly ShownSwatch[],
  { piece, shown: owned }: PreparedPiece,
): Duplicate | null {
  const samePiece = piece.productKey === candidate.key;
  if (!samePiece && (candidate.slot === null || piece.slot !== candidate.slot)) return null;
  const difference = Math.max(farthest(shown, owned), farthest(owned, shown));
  if (!samePiece && difference > SAME_SHADE) return null;
  return { pieceId: piece.id, deltaE2000: difference, samePiece };
}

/** CIEDE2000 from the swatch that finds the worst partner. */
function farthest(from: readonly ShownSwatch[], to: readonly ShownSwatch[]): number {
  return Math.max(...from.map(({ point }) => Math.min(...to.map((other) => deltaE2000(point, other.point)))));
}

/** Certain ones first, then the nearest. */
export function compareDuplicates(one: Duplicate, other: Duplicate): number {
  return (
    Number(other.samePiece) - Number(one.samePiece) ||
    one.deltaE2000 - other.deltaE2000 ||
    (one.pieceId < other.pieceId ? -1 : 1)
  );
}
