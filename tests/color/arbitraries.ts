import fc from "fast-check";
import { type ColorPoint, colorPoint } from "../../lib/color/color-point.ts";
import { intoSrgb, oklabFromRgb8 } from "../../lib/color/convert.ts";
import { parseColor } from "../../lib/color/parse-color.ts";
import { hueFromWheel } from "../../lib/color/wheel.ts";

const byte = fc.integer({ min: 0, max: 255 });

/** Any 8-bit sRGB colour. */
export const anyRgb = fc.tuple(byte, byte, byte);
export const anyOklab = anyRgb.map(([r, g, b]) => oklabFromRgb8(r, g, b));
export const anyPoint = anyOklab.map(colorPoint);

/** The point of a CSS colour. */
export function pointOf(css: string): ColorPoint {
  return colorPoint(parseColor(css));
}

/** A clearly coloured point at an angle of the artist's wheel. */
export function onWheel(wheel: number, lightness = 0.65, chroma = 0.11): ColorPoint {
  const hue = (hueFromWheel(wheel) * Math.PI) / 180;
  return colorPoint(intoSrgb([lightness, chroma * Math.cos(hue), chroma * Math.sin(hue)]));
}
