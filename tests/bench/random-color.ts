import type { Oklab } from "../../lib/color/oklab.ts";

/** A colour as clothes have them and beyond, of whatever hue, faint or strong, from near black to near white. `random` gives numbers 0–1. */
export function randomColor(random: () => number): Oklab {
  const hue = random() * 2 * Math.PI;
  const chroma = random() * 0.2;
  return [0.15 + random() * 0.8, chroma * Math.cos(hue), chroma * Math.sin(hue)];
}
