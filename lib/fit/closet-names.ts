import { type PackedColors, packColors } from "../color/packed-colors.ts";
import { relateToAll } from "../color/relate-to-all.ts";
import { codeOf, firstOf } from "../color/relation-code.ts";
import type { PreparedPiece, ShownSwatch } from "./prepared-piece.ts";

const MATCHING = codeOf("matching");

/** For each swatch of a candidate the names of its relations to every colour of the closet (`relation-code.ts`). */
export type ClosetNames = readonly Uint32Array[];

/** Names all pairs of a candidate's swatches and a closet's colours in one go. */
export function closetNames(
  shown: readonly ShownSwatch[],
  colors: PackedColors,
  confidence: number,
): ClosetNames {
  const packed = packColors(shown.map(({ point }) => point));
  return shown.map((_, own) => {
    const names = new Uint32Array(colors.count);
    relateToAll(packed, own, colors, confidence, names);
    return names;
  });
}

/** The names of one swatch of the candidate with one of an owned piece, by their places among those that count. */
export function namesAt(names: ClosetNames, own: number, owned: PreparedPiece, its: number): number {
  return names[own]?.[owned.first + its] ?? 0;
}

/** Whether names are those of two swatches of one shade. */
export function areOneShade(names: number): boolean {
  return firstOf(names) === MATCHING;
}
