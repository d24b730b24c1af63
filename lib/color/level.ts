import { convertOklabToOkhsl, convertOklabToOkhsv } from "culori/fn";
import { chromaOf, hueOf, intoSrgb } from "./convert.ts";
import { isNeutral, isTinted, neutralChromaAt } from "./neutral.ts";
import type { Oklab } from "./oklab.ts";
import {
  FULL_SURFACE_BLACK,
  FULL_SURFACE_HUE,
  LEVEL_HEDGE,
  NEUTRAL_HEDGE,
  PURE_COLOR_PART,
  SHADE_WHITE_AT_MOST,
  TINT_BLACK_AT_MOST,
} from "./thresholds.ts";

/** Art-school terms: pure hue; with white (tint), with grey (tone), with black (shade); or no hue at all. */
export const LEVELS = ["pure", "tint", "tone", "shade", "neutral"] as const;
export type Level = (typeof LEVELS)[number];

/** How much white and black a colour holds beside its pure hue, 0–1 each; the rest is the hue. */
export interface Nuance {
  readonly white: number;
  readonly black: number;
}

/** OKLab L, 0–1. Far darker than the darkest 8-bit grey but black itself (0.067); the conversions below divide by it. */
const DARKEST = 1e-3;

/**
 * OKHWB: whiteness and blackness from Okhsv (B. Ottosson, 2021), the sRGB likeness of Ostwald's and the NCS's parts.
 * What sRGB cannot show counts as the nearest it can.
 */
export function nuanceOf(c: Oklab): Nuance {
  const [l, a, b] = intoSrgb(c);
  if (l < DARKEST) return { white: 0, black: 1 };
  const { s, v } = convertOklabToOkhsv({ l, a, b });
  const value = part(v);
  return { white: (1 - part(s)) * value, black: 1 - value };
}

/**
 * Nuance as it counts for a level: more black around orange and yellow. There surfaces come as full as sRGB; elsewhere they hold some black
 * at their fullest, so that a name which begins at some blackness elsewhere begins at that much less there. White is alike at every hue.
 * The two may add up to a little more than 1.
 */
export function surfaceNuanceOf(c: Oklab): Nuance {
  const { white, black } = nuanceOf(c);
  const nearYellow = Math.max(0, Math.cos(((hueOf(c) - FULL_SURFACE_HUE) * Math.PI) / 180));
  return { white, black: black + FULL_SURFACE_BLACK * nearYellow * (1 - white) };
}

/** Okhsl saturation (B. Ottosson, 2021), 0–1: chroma as a share of the most that sRGB has at this hue and lightness. */
export function saturationOf(c: Oklab): number {
  const [l, a, b] = intoSrgb(c);
  return l < DARKEST || l >= 1 ? 0 : part(convertOklabToOkhsl({ l, a, b }).s);
}

function part(value: number): number {
  return Math.min(1, Math.max(0, value));
}

function levelOfNuance(white: number, black: number): Exclude<Level, "neutral"> {
  if (1 - white - black >= PURE_COLOR_PART) return "pure";
  if (black <= TINT_BLACK_AT_MOST && white > black) return "tint";
  if (white <= SHADE_WHITE_AT_MOST && black > white) return "shade";
  return "tone";
}

/** What one step of the hedge in whiteness or blackness reaches. */
const NEIGHBOURS = [
  [LEVEL_HEDGE, 0],
  [-LEVEL_HEDGE, 0],
  [0, LEVEL_HEDGE],
  [0, -LEVEL_HEDGE],
] as const;

/** The level of a colour, and the others it is too near to rule out, likelier first. */
export function levelOf(c: Oklab): { readonly level: Level; readonly alternatives: readonly Level[] } {
  const chroma = chromaOf(c);
  const { white, black } = surfaceNuanceOf(c);
  const chromatic = levelOfNuance(white, black);
  if (isNeutral(c[0], chroma)) {
    const near = chroma > neutralChromaAt(c[0]) - NEUTRAL_HEDGE;
    return { level: "neutral", alternatives: near ? [chromatic] : [] };
  }
  const nearby = NEIGHBOURS.map(([dw, db]) => levelOfNuance(white + dw, black + db));
  const likelierFirst = (a: Level, b: Level) => count(nearby, b) - count(nearby, a);
  const others: Level[] = [...new Set(nearby)].filter((level) => level !== chromatic).sort(likelierFirst);
  return { level: chromatic, alternatives: isTinted(c[0], chroma) ? ["neutral", ...others] : others };
}

function count(levels: readonly Level[], level: Level): number {
  return levels.filter((one) => one === level).length;
}
