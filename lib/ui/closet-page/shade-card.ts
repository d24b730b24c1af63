import { inSrgb } from "../../color/convert.ts";
import type { Oklab } from "../../color/oklab.ts";
import { oklabAt } from "./pure-hue.ts";

/** OKLab lightness of the rows, light to dark; about even steps to the eye, dark enough for navy and burgundy. */
const ROWS = [0.92, 0.82, 0.71, 0.6, 0.49, 0.38, 0.28] as const;

/** Columns, faint to strong, as parts of the strongest chroma that a screen shows at that lightness. */
const COLUMNS = [0.16, 0.34, 0.55, 0.78, 1] as const;

/** Columns of the shade card. */
export const SHADE_COLUMNS: number = COLUMNS.length;

/** OKLab lightness of the greys, black to white. */
const GREYS = [0.18, 0.26, 0.34, 0.43, 0.52, 0.61, 0.7, 0.79, 0.87, 0.93, 0.98] as const;

/** Steps of hue offered, degrees on the artist's wheel. */
const HUE_STEP = 15;

/** Angles on the artist's wheel to choose a hue from. */
export const HUE_CHOICES: readonly number[] = Array.from(
  { length: 360 / HUE_STEP },
  (_, at) => at * HUE_STEP,
);

/** One hue as a dyer's shade card: tints to shades, faint to strong, row by row; black to white where there is no hue. */
export function shadeCard(angle: number | null): readonly Oklab[] {
  if (angle === null) return GREYS.map((lightness) => [lightness, 0, 0]);
  return ROWS.flatMap((lightness) => {
    const most = strongestAt(lightness, angle);
    return COLUMNS.map((part) => oklabAt(lightness, most * part, angle));
  });
}

/** More OKLCH chroma than any sRGB colour has (blue reaches 0.32). */
const BEYOND = 0.4;

/** Halvings of the search: leaves less than 0.0001 of chroma, below one 8-bit step. */
const HALVINGS = 12;

/** The most OKLCH chroma a screen shows at a lightness (0–1) and wheel angle. */
export function strongestAt(lightness: number, angle: number): number {
  let inside = 0;
  let outside = BEYOND;
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (inside + outside) / 2;
    if (inSrgb(oklabAt(lightness, middle, angle))) inside = middle;
    else outside = middle;
  }
  return inside;
}

/** The choice of hue nearest to an angle. */
export function nearestHue(angle: number): number {
  return (Math.round(angle / HUE_STEP) * HUE_STEP) % 360;
}
