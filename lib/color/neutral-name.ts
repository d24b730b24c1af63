import { BLACK_BELOW, DARK_GREY_BELOW, LIGHT_GREY_ABOVE, WHITE_ABOVE } from "./thresholds.ts";

/**
 * OKLab L, 0–1, of greys of the Munsell values 1.5, 3.25, 7.5 and 9: where a block of ISCC-NBS neutrals, up to two values wide, is
 * parted again, for its ends look different; its centroid keeps the plainer word. The words are common practice, no source.
 */
const SOFT_BLACK_FROM = 0.27;
const CHARCOAL_BELOW = 0.43;
const PALE_GREY_FROM = 0.8;
const PURE_WHITE_FROM = 0.92;

/** The everyday name of an achromatic colour, by its OKLab lightness alone: "black", "charcoal grey", "off white". */
export function neutralName(lightness: number): string {
  if (lightness < BLACK_BELOW) return lightness < SOFT_BLACK_FROM ? "black" : "soft black";
  if (lightness < DARK_GREY_BELOW) return lightness < CHARCOAL_BELOW ? "charcoal grey" : "dark grey";
  if (lightness <= LIGHT_GREY_ABOVE) return "grey";
  if (lightness <= WHITE_ABOVE) return lightness < PALE_GREY_FROM ? "light grey" : "pale grey";
  return lightness < PURE_WHITE_FROM ? "off white" : "white";
}
