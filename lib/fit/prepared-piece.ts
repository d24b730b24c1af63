import { type ColorPoint, colorPoint } from "../color/color-point.ts";
import type { Swatch } from "../sample/palette.ts";
import type { Slot } from "../words/slot.ts";

/** Share of the cloth, 0–1, from which a further swatch makes a piece a print. Proposal: smaller ones are trims and buttons. */
export const PRINT_SHARE = 0.15;

/** As much of an owned piece as the comparison needs; a closet's `Piece` is one. */
export interface OwnedPiece {
  readonly id: string;
  readonly name: string;
  readonly slot: Slot;
  /** Largest share first. */
  readonly swatches: readonly Swatch[];
  readonly productKey?: string;
}

/** A swatch that counts in a comparison: its place among the swatches of its piece, and its numbers. */
export interface ShownSwatch {
  readonly index: number;
  readonly swatch: Swatch;
  readonly point: ColorPoint;
}

/** An owned piece with its colours worked out once. */
export interface PreparedPiece {
  readonly piece: OwnedPiece;
  /** The statement swatch first; more than one makes a print. */
  readonly shown: readonly ShownSwatch[];
  /** The place of the first of them among the colours of the whole closet. */
  readonly first: number;
}

/** The statement swatch and every other that makes a print. */
export function shownSwatches(swatches: readonly Swatch[]): readonly ShownSwatch[] {
  return swatches
    .map((swatch, index) => ({ swatch, index }))
    .filter(({ swatch, index }) => index === 0 || swatch.share >= PRINT_SHARE)
    .map(({ swatch, index }) => ({ index, swatch, point: colorPoint(swatch.oklab) }));
}
