import type { Piece } from "../../closet/piece.ts";
import { type ColorPoint, colorPoint } from "../../color/color-point.ts";
import type { Oklab } from "../../color/oklab.ts";
import type { NamedSwatch } from "../../link/messages.ts";
import type { Slot } from "../../words/slot.ts";
import { namedSwatches } from "../named-swatches.ts";

/** A piece with what the page draws of it: its colour names and where its statement swatch lies. */
export interface HungPiece {
  readonly piece: Piece;
  readonly named: readonly NamedSwatch[];
  readonly point: ColorPoint;
}

/** The wheel angle (degrees) it is compared by; null where it is neutral, or too faint for its hue to count. */
export function comparedHue({ point }: HungPiece): number | null {
  return point.tinted ? null : point.wheel;
}

export const SORTS = ["hue", "newest"] as const;
export type Sort = (typeof SORTS)[number];

const MID_GREY: Oklab = [0.6, 0, 0];

/** Works out what is drawn of each piece. */
export function hangPieces(pieces: readonly Piece[]): readonly HungPiece[] {
  return pieces.map((piece) => ({
    piece,
    named: namedSwatches(piece.swatches),
    point: colorPoint(piece.swatches[0]?.oklab ?? MID_GREY),
  }));
}

/**
 * The pieces of one slot (all where it is null) in order. By hue: round the wheel from red, lighter first within a
 * hue step, then the neutrals from dark to light.
 */
export function arrange(hung: readonly HungPiece[], slot: Slot | null, sort: Sort): readonly HungPiece[] {
  const chosen = slot === null ? hung : hung.filter(({ piece }) => piece.slot === slot);
  return chosen.toSorted(sort === "hue" ? byHue : byNewest);
}

/** Degrees within which two hues count as one step when sorting, so that a step runs from light to dark. */
const SORT_STEP = 15;

function byHue(one: HungPiece, other: HungPiece): number {
  const a = one.point.wheel;
  const b = other.point.wheel;
  if (a === null || b === null) {
    if (a !== null) return -1;
    return b !== null ? 1 : lightness(one) - lightness(other);
  }
  const steps = Math.floor(a / SORT_STEP) - Math.floor(b / SORT_STEP);
  return steps || lightness(other) - lightness(one);
}

function byNewest(one: HungPiece, other: HungPiece): number {
  return other.piece.addedAt - one.piece.addedAt;
}

function lightness({ point }: HungPiece): number {
  return point.oklab[0];
}
