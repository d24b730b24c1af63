import { colorPoint } from "../../lib/color/color-point.ts";
import { hexOf } from "../../lib/color/hex-of.ts";
import { nameColor } from "../../lib/color/name-color.ts";
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
export function swatchLine({ oklab, share }: Swatch): SwatchLine {
  return { hex: hexOf(oklab), oklab, share, name: nameColor(oklab).everyday, level: colorPoint(oklab).level };
}
