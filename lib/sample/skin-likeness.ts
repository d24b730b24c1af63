/**
 * Where skin of all tones lies in OKLCH: lightness, chroma and hue (degrees) of the ten tones of the Monk Skin Tone
 * Scale (E. Monk, Google, 2022), with room for the light of a photo; how fast likeness falls off outside, down to 1/e. The room is
 * a proposal.
 */
const DARKEST = 0.2;
const LIGHTEST = 0.96;
const SOFT_LIGHTNESS = 0.05;
const DULLEST = 0.01;
const STRONGEST = 0.115;
const SOFT_CHROMA = 0.02;
const HUE = 64;
const AROUND = 27;
const SOFT_HUE = 10;

/**
 * How much a colour (OKLab) could be somebody's skin by itself, 0–1. Beige, camel, peach and brown cloth is as like it as
 * skin is, so this alone never decides anything.
 */
export function skinLikeness(l: number, a: number, b: number): number {
  const chroma = Math.hypot(a, b);
  const turn = Math.abs((Math.atan2(b, a) * 180) / Math.PI - HUE);
  const dl = outside(l, DARKEST, LIGHTEST) / SOFT_LIGHTNESS;
  const dc = outside(chroma, DULLEST, STRONGEST) / SOFT_CHROMA;
  const dh = outside(turn, 0, AROUND) / SOFT_HUE;
  return Math.exp(-(dl * dl + dc * dc + dh * dh));
}

function outside(value: number, low: number, high: number): number {
  return Math.max(0, low - value, value - high);
}
