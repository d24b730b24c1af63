import type { ColorTerm } from "../words/color-term.ts";

/** A box in OKLCH: lightness 0–1, chroma 0–0.4, hue in degrees with half width (180 holds all hues). */
export type TermRegion = readonly [
  darkest: number,
  lightest: number,
  dullest: number,
  strongest: number,
  hue: number,
  around: number,
];

/**
 * Where each colour term lies when a shop's picture shows it. Our proposal: wide enough for the light of a photo,
 * checked in the tests against the ISCC-NBS centroids that carry the same word.
 */
export const TERM_REGIONS: Readonly<Record<ColorTerm, TermRegion>> = {
  black: [0, 0.38, 0, 0.035, 0, 180],
  white: [0.82, 1, 0, 0.035, 0, 180],
  grey: [0.3, 0.86, 0, 0.03, 0, 180],
  red: [0.3, 0.7, 0.1, 0.3, 24, 16],
  orange: [0.55, 0.82, 0.1, 0.25, 56, 18],
  yellow: [0.72, 0.98, 0.08, 0.22, 97, 18],
  green: [0.22, 0.9, 0.04, 0.3, 145, 32],
  blue: [0.22, 0.88, 0.03, 0.32, 254, 36],
  purple: [0.22, 0.7, 0.05, 0.3, 308, 24],
  pink: [0.5, 0.95, 0.03, 0.26, 2, 30],
  brown: [0.18, 0.6, 0.02, 0.15, 55, 30],
  beige: [0.66, 0.93, 0.012, 0.08, 78, 24],
  cream: [0.85, 1, 0.008, 0.07, 85, 26],
  camel: [0.52, 0.76, 0.05, 0.13, 68, 14],
  khaki: [0.42, 0.78, 0.03, 0.1, 98, 24],
  olive: [0.32, 0.62, 0.03, 0.13, 112, 18],
  mint: [0.78, 0.96, 0.03, 0.13, 165, 22],
  teal: [0.36, 0.65, 0.04, 0.13, 198, 22],
  turquoise: [0.62, 0.9, 0.06, 0.17, 196, 20],
  navy: [0.12, 0.4, 0.02, 0.19, 265, 26],
  lavender: [0.62, 0.9, 0.03, 0.14, 303, 20],
  fuchsia: [0.48, 0.73, 0.17, 0.33, 348, 18],
  coral: [0.62, 0.8, 0.1, 0.2, 29, 12],
  peach: [0.78, 0.93, 0.035, 0.12, 58, 18],
  burgundy: [0.18, 0.43, 0.05, 0.17, 13, 18],
  rust: [0.38, 0.6, 0.08, 0.17, 44, 12],
  mustard: [0.58, 0.83, 0.08, 0.18, 86, 12],
  gold: [0.58, 0.9, 0.04, 0.17, 85, 18],
  silver: [0.5, 0.92, 0, 0.03, 0, 180],
  copper: [0.42, 0.72, 0.05, 0.16, 52, 14],
};

/** Degrees around which skin, hair and metals lie, and how far. Our estimate. */
const BODIES = 70;
const AROUND_BODIES = 40;

/** Whether a term names a colour that neither bodies nor metals have, nor what is neutral. */
export const isUnlikeBodies = (term: ColorTerm): boolean =>
  TERM_REGIONS[term][2] > 0 && Math.abs(TERM_REGIONS[term][4] - BODIES) > AROUND_BODIES;

/** How fast the fit falls off outside a region: lightness, chroma, degrees at which it is down to 1/e. */
const SOFT_LIGHTNESS = 0.08;
const SOFT_CHROMA = 0.015;
const SOFT_HUE = 15;
/** Below this chroma a hue means less and less. */
const HUELESS = 0.04;

/** How well a colour (OKLab) fits a term, 0–1; 1 inside its region. */
export function termFit(term: ColorTerm, l: number, a: number, b: number): number {
  const [darkest, lightest, dullest, strongest, hue, around] = TERM_REGIONS[term];
  const chroma = Math.sqrt(a * a + b * b);
  const turn = Math.abs((((Math.atan2(b, a) * 180) / Math.PI - hue + 900) % 360) - 180);
  const dl = outside(l, darkest, lightest) / SOFT_LIGHTNESS;
  const dc = outside(chroma, dullest, strongest) / SOFT_CHROMA;
  const dh = (outside(turn, 0, around) / SOFT_HUE) * Math.min(1, chroma / HUELESS);
  return Math.exp(-(dl * dl + dc * dc + dh * dh));
}

/** The best fit of a colour with any of the terms, 0–1. */
export function bestFit(terms: readonly ColorTerm[], l: number, a: number, b: number): number {
  let best = 0;
  for (const term of terms) best = Math.max(best, termFit(term, l, a, b));
  return best;
}

function outside(value: number, low: number, high: number): number {
  return Math.max(0, low - value, value - high);
}
