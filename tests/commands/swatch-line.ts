import { colorPoint } from "../../lib/color/color-point.ts";
import { hexOf } from "../../lib/color/hex-of.ts";
import { swatchName } from "../../lib/color/swatch-name.ts";
import type { Swatch } from "../../lib/sample/palette.ts";

/** A swatch as the commands print it. */
export interface SwatchLine {
  readonly hex: string;
  readonly oklab: readonly number[];
  readonly share: number;
  readonly name: string;
  readonly level: string;
}

/** Turns a swatch into the line that `sample` and `scan` print of it. */
export function swatchLine(swatch: Swatch): SwatchLine {
  const { oklab, share } = swatch;
  return { hex: hexOf(oklab), oklab, share, name: swatchName(swatch), level: colorPoint(oklab).level };
}
