import type { Oklab } from "../../lib/color/oklab.ts";

/** Numbers 0–1 that are the same in every run ("minimal standard" generator, S. K. Park, K. W. Miller, 1988; multiplier from memory). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** A colour as clothes have them and beyond: any hue, faint or strong, from near black to near white. */
export function randomColor(random: () => number): Oklab {
  const hue = random() * 2 * Math.PI;
  const chroma = random() * 0.2;
  return [0.15 + random() * 0.8, chroma * Math.cos(hue), chroma * Math.sin(hue)];
}
