import type { Vision } from "../../../lib/color/color-vision.ts";

/**
 * The Farnsworth D-15 panel, by which colour vision is told apart: A. J. Vingrys, P. E. King-Smith, "A quantitative scoring technique
 * for panel tests of color vision", Investigative Ophthalmology & Visual Science 29(1):50–63, 1988: CIE 1976 u*, v* of the
 * reference cap and caps 1–15 under illuminant C, as carried alike by several open transcriptions. All are Munsell value 5.
 */
export const D15_CAPS: readonly (readonly [u: number, v: number])[] = [
  [-21.54, -38.39],
  [-23.26, -25.56],
  [-22.41, -15.53],
  [-23.11, -7.45],
  [-22.45, 1.1],
  [-21.67, 7.35],
  [-14.08, 18.74],
  [-2.72, 28.13],
  [14.84, 31.13],
  [23.87, 26.35],
  [31.82, 14.76],
  [31.42, 6.99],
  [29.79, 0.1],
  [26.64, -9.38],
  [22.92, -18.65],
  [11.2, -24.61],
];

/** CIE 1976 L* of Munsell value 5 (ASTM D1535; from memory). */
export const D15_LIGHTNESS = 51.57;

/**
 * CIE 1931 x, y of the points in which the lines of confused colours meet: V. C. Smith, J. Pokorny, "Spectral sensitivity of the foveal
 * cone photopigments between 400 and 500 nm", Vision Research 15, 1975 (reference from memory; the numbers as carried by open transcriptions).
 */
export const COPUNCTAL_POINTS: Readonly<Record<Vision, readonly [x: number, y: number]>> = {
  protan: [0.7465, 0.2535],
  deutan: [1.4, -0.4],
  tritan: [0.1748, 0],
};
