import { linearFromOklab } from "./convert.ts";
import type { Oklab } from "./oklab.ts";

/** A colour in CIELAB under D65 (CIE 15): L* 0–100, a* and b* about −110…110. */
export type Lab = readonly [L: number, a: number, b: number];

/** XYZ of the D65 white (x 0.3127, y 0.3290), Y = 1. */
const WHITE_X = 0.3127 / 0.329;
const WHITE_Z = (1 - 0.3127 - 0.329) / 0.329;

/** CIE 15: where the cube root gives way to the straight line, and the slope of that line. */
const EPSILON = 6 ** 3 / 29 ** 3;
const KAPPA = 29 ** 3 / 3 ** 3;

function compressed(part: number): number {
  return part > EPSILON ? Math.cbrt(part) : (KAPPA * part + 16) / 116;
}

/** CIELAB (D65) of an OKLab colour, by way of linear sRGB and XYZ (IEC 61966-2-1). */
export function labFromOklab(c: Oklab): Lab {
  const [r, g, b] = linearFromOklab(c);
  const x = compressed((0.4123907992659593 * r + 0.357584339383878 * g + 0.1804807884018343 * b) / WHITE_X);
  const y = compressed(0.2126390058715102 * r + 0.715168678767756 * g + 0.0721923153607337 * b);
  const z = compressed((0.0193308187155918 * r + 0.119194779794626 * g + 0.9505321522496607 * b) / WHITE_Z);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}
