import { rgb8FromOklab } from "../../color/convert.ts";
import type { Oklab } from "../../color/oklab.ts";
import { hueFromWheel } from "../../color/wheel.ts";

/**
 * OKLab lightness at which each 60 degrees of the wheel is drawn: yellow is a light colour and violet a dark one, as on a
 * painter's wheel (own judgement, near the strongest sRGB colour of each hue).
 */
const LIGHTNESS = [0.6, 0.71, 0.87, 0.62, 0.52, 0.46];
const EVERY = 360 / LIGHTNESS.length;

/** More chroma than any screen has; the conversion to sRGB brings it back to what can be shown. */
const STRONGEST = 0.33;

/** A strong colour at an angle of the artist's wheel, as CSS. For drawing the wheel, not for judging by. */
export function pureHue(angle: number): string {
  const turned = ((angle % 360) + 360) % 360;
  const step = Math.floor(turned / EVERY);
  const part = turned / EVERY - step;
  const low = LIGHTNESS[step] ?? 0.6;
  const high = LIGHTNESS[(step + 1) % LIGHTNESS.length] ?? 0.6;
  const [r, g, b] = rgb8FromOklab(oklabAt(low + (high - low) * part, STRONGEST, angle));
  return `rgb(${r} ${g} ${b})`;
}

/** OKLab of a lightness (0–1), a chroma and an angle of the artist's wheel in degrees. */
export function oklabAt(lightness: number, chroma: number, angle: number): Oklab {
  const hue = (hueFromWheel(angle) * Math.PI) / 180;
  return [lightness, chroma * Math.cos(hue), chroma * Math.sin(hue)];
}
