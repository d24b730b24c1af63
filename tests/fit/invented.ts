import { parseColor } from "../../lib/color/parse-color.ts";
import type { OwnedPiece } from "../../lib/fit/prepared-piece.ts";
import type { Candidate } from "../../lib/fit/verdict.ts";
import type { Evidence, Swatch } from "../../lib/sample/palette.ts";
import type { Slot } from "../../lib/words/slot.ts";

/** Swatches of these colours, the first the largest; shares fall in equal steps. */
export function swatchesOf(colors: readonly string[]): readonly Swatch[] {
  const weights = colors.map((_, at) => colors.length - at);
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return colors.map((color, at) => ({ oklab: parseColor(color), share: (weights[at] ?? 0) / sum }));
}

/** An owned piece; its name is its id. */
export function owned(name: string, slot: Slot, ...colors: readonly string[]): OwnedPiece {
  return { id: name, name, slot, swatches: swatchesOf(colors) };
}

/** A product as a good picture shows it. */
export function product(slot: Slot | null, ...colors: readonly string[]): Candidate {
  return withConfidence(0.95, slot, ...colors);
}

export function withConfidence(
  confidence: number,
  slot: Slot | null,
  ...colors: readonly string[]
): Candidate {
  const evidence: readonly Evidence[] = ["pixels"];
  return {
    key: "k",
    title: "Product",
    slot,
    palette: { swatches: swatchesOf(colors), confidence, evidence },
  };
}
