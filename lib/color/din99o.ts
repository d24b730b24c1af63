import type { Lab } from "./lab.ts";

/** A colour in DIN99o: the straight distance of two approximates CIEDE2000. Lightness 0–100. */
export type Din99o = readonly [L: number, a: number, b: number];

/** DIN 6176:2018 and G. Cui, M. R. Luo, B. Rigg, G. Roesler, K. Witt, Color Research & Application 27(4), 2002: constants of DIN99o. */
const AXIS_TURN = (26 / 180) * Math.PI;
const COS = Math.cos(AXIS_TURN);
const SIN = Math.sin(AXIS_TURN);
const YELLOW_BLUE_SCALE = 0.83;
const LIGHTNESS_BEND = 0.0039;
const LIGHTNESS_SCALE = 100 / Math.log(1 + 100 * LIGHTNESS_BEND);
const CHROMA_BEND = 0.075;
const CHROMA_SCALE = 1 / 0.0435;

/** DIN99o of a CIELAB (D65) colour. Its axes stay turned by 26°, which no distance depends on. */
export function din99oFromLab([l, a, b]: Lab): Din99o {
  const e = a * COS + b * SIN;
  const f = YELLOW_BLUE_SCALE * (b * COS - a * SIN);
  const radius = Math.hypot(e, f);
  const shrink = radius === 0 ? 0 : (CHROMA_SCALE * Math.log(1 + CHROMA_BEND * radius)) / radius;
  return [LIGHTNESS_SCALE * Math.log(1 + LIGHTNESS_BEND * l), e * shrink, f * shrink];
}
