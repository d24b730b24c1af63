import {
  BLACK_WHATEVER_BELOW,
  HUE_CHROMA,
  NEAR_BLACK_LIGHTNESS,
  NEAR_WHITE_LIGHTNESS,
  NEUTRAL_CHROMA,
  NEUTRAL_CHROMA_AT_ENDS,
} from "./thresholds.ts";

/** OKLCH chroma below which a colour of this OKLab lightness is achromatic. */
export function neutralChromaAt(lightness: number): number {
  if (lightness < BLACK_WHATEVER_BELOW) return Number.POSITIVE_INFINITY;
  return lightness < NEAR_BLACK_LIGHTNESS || lightness > NEAR_WHITE_LIGHTNESS
    ? NEUTRAL_CHROMA_AT_ENDS
    : NEUTRAL_CHROMA;
}

/** Whether a colour is black, grey or white. `lightness`: OKLab L; `chroma`: OKLCH. */
export function isNeutral(lightness: number, chroma: number): boolean {
  return chroma < neutralChromaAt(lightness);
}

/** Whether a colour is not quite neutral, yet too faint for its hue to be named: a tinted grey, white or black. */
export function isTinted(lightness: number, chroma: number): boolean {
  return !isNeutral(lightness, chroma) && chroma < HUE_CHROMA;
}
