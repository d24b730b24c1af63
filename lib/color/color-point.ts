import { ColorError } from "./color-error.ts";
import { chromaOf, finite, hueOf } from "./convert.ts";
import { type Lab, labFromOklab } from "./lab.ts";
import { type Level, levelOf, saturationOf } from "./level.ts";
import { isNeutral, isTinted } from "./neutral.ts";
import type { Oklab } from "./oklab.ts";
import { type ByConfidence, wheelError } from "./uncertainty.ts";
import { wheelFromHue } from "./wheel.ts";

/** A colour with every number the comparisons need, worked out once. */
export interface ColorPoint {
  readonly oklab: Oklab;
  /** CIELAB, D65. */
  readonly lab: Lab;
  /** OKLCH chroma, 0–0.4. */
  readonly chroma: number;
  /** OKLCH hue in degrees. */
  readonly hue: number;
  /** Degrees on the artist's wheel; null for a neutral. */
  readonly wheel: number | null;
  /** How far the angle on the wheel may be off, in degrees (90th percentile). */
  readonly wheelError: ByConfidence;
  /** Okhsl saturation 0–1: share of the strongest sRGB colour of this hue and lightness. */
  readonly saturation: number;
  readonly level: Level;
  /** Other levels too near to rule out, likelier first. */
  readonly levelAlternatives: readonly Level[];
  /** Black, grey or white. */
  readonly neutral: boolean;
  /** Not neutral, yet too faint for its hue to count in a relation. */
  readonly tinted: boolean;
}

/** How far outside 0–1 rounding may carry OKLab lightness. */
const LIGHTNESS_SLACK = 0.005;

/** @throws ColorError when a number is not finite or the lightness is outside 0–1. */
export function colorPoint(c: Oklab): ColorPoint {
  const lightness = finite(c)[0];
  if (lightness < -LIGHTNESS_SLACK || lightness > 1 + LIGHTNESS_SLACK) {
    throw new ColorError(`oklab ${c.join(" ")} is no colour: its lightness must be from 0 to 1.`);
  }
  const chroma = chromaOf(c);
  const hue = hueOf(c);
  const neutral = isNeutral(lightness, chroma);
  const { level, alternatives } = levelOf(c);
  return {
    oklab: c,
    lab: labFromOklab(c),
    chroma,
    hue,
    wheel: neutral ? null : wheelFromHue(hue),
    wheelError: wheelError(chroma, hue),
    saturation: saturationOf(c),
    level,
    levelAlternatives: alternatives,
    neutral,
    tinted: isTinted(lightness, chroma),
  };
}
