import { deltaE2000 } from "../color/difference.ts";
import { areOneShade, type ClosetNames, namesAt } from "./closet-names.ts";
import type { PreparedPiece, ShownSwatch } from "./prepared-piece.ts";
import type { Candidate, Duplicate } from "./verdict.ts";

/**
 * Whether an owned piece repeats the candidate: recorded as the same product, which is certain, or the same slot in
 * the same shade. Of prints every colour must find a partner, both ways; the difference given is then the largest.
 */
export function duplicateOf(
  candidate: Candidate,
  shown: readonly ShownSwatch[],
  owned: PreparedPiece,
  names: ClosetNames,
): Duplicate | null {
  const { piece, shown: its } = owned;
  const samePiece = piece.productKey === candidate.key;
  if (!samePiece && (candidate.slot === null || piece.slot !== candidate.slot)) return null;
  if (!samePiece && !repeats(shown, owned, names)) return null;
  const difference = Math.max(farthest(shown, its), farthest(its, shown));
  return { pieceId: piece.id, deltaE2000: difference, samePiece };
}

/** Whether every swatch has a partner of one shade, both ways. */
function repeats(shown: readonly ShownSwatch[], owned: PreparedPiece, names: ClosetNames): boolean {
  const its = owned.shown;
  const oneShade = (own: number, at: number) => areOneShade(namesAt(names, own, owned, at));
  return (
    shown.every((_, own) => its.some((_, at) => oneShade(own, at))) &&
    its.every((_, at) => shown.some((_, own) => oneShade(own, at)))
  );
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
