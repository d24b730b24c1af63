import { AXIS_NOISE_SURE, AXIS_NOISE_UNSURE, WHEEL_UNCERTAINTY_FLOOR, Z_OF_90 } from "./thresholds.ts";
import { turnOf, wheelFromHue } from "./wheel.ts";

/** A figure for a colour read with full confidence, and one for a colour read with none; between them it runs straight. */
export interface ByConfidence {
  readonly sure: number;
  readonly unsure: number;
}

/** The figure at a confidence 0–1; outside it is clipped, and what is no number counts as 0. */
export function atConfidence({ sure, unsure }: ByConfidence, confidence: number): number {
  return between(sure, unsure, confidence);
}

/** The same for the two figures by themselves. */
export function between(sure: number, unsure: number, confidence: number): number {
  const part = confidence > 0 ? Math.min(1, confidence) : 0;
  return unsure + (sure - unsure) * part;
}

/** Standard deviation of each OKLab axis of a colour read from a picture. */
export const AXIS_NOISE: ByConfidence = { sure: AXIS_NOISE_SURE, unsure: AXIS_NOISE_UNSURE };

/**
 * How far a colour's angle on the artist's wheel may be off, in degrees 0–180 (90th percentile): the noise as seen from the grey axis,
 * stretched as the wheel stretches those hues. `chroma` and `hue` (degrees): OKLCH.
 */
export function wheelError(chroma: number, hue: number): ByConfidence {
  return { sure: errorAt(chroma, hue, AXIS_NOISE_SURE), unsure: errorAt(chroma, hue, AXIS_NOISE_UNSURE) };
}

function errorAt(chroma: number, hue: number, noise: number): number {
  const off = (Math.atan2(Z_OF_90 * noise, chroma) * 180) / Math.PI;
  return turnOf(wheelFromHue(hue + off) - wheelFromHue(hue - off)) / 2;
}

/** The same for the angle between two colours. */
export function pairError(
  a: { readonly wheelError: ByConfidence },
  b: { readonly wheelError: ByConfidence },
  confidence: number,
): number {
  return jointError(atConfidence(a.wheelError, confidence), atConfidence(b.wheelError, confidence));
}

/** The error of the angle between two hues, from the error of each; degrees, as `wheelError`. */
export function jointError(one: number, other: number): number {
  return Math.min(180, Math.max(WHEEL_UNCERTAINTY_FLOOR, Math.sqrt(one * one + other * other)));
}
