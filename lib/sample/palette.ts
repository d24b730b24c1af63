import type { Oklab } from "../color/oklab.ts";

/** A metal is never read from pixels: only a person or the words on the page say so. */
export const FINISHES = ["gold", "silver", "copper"] as const;
export type Finish = (typeof FINISHES)[number];

/** One colour of a piece. `share`: of the visible cloth, 0–1. */
export interface Swatch {
  readonly oklab: Oklab;
  readonly share: number;
  readonly finish?: Finish;
}

/** What an answer rests on; several may agree. "photos": other photos of the same product; "screen": how a screen showed it. */
export const EVIDENCE = ["pixels", "words", "slot", "photos", "screen", "person"] as const;
export type Evidence = (typeof EVIDENCE)[number];

/**
 * Confidence from which an answer counts as sure: 49 of 50 such are right (see `confidenceOf`), so that reading up
 * to three further photos of each would cost much and mend little.
 */
export const SURE = 0.8;

/**
 * The colours of one piece: up to six swatches, shares summing to 1. The first is the statement swatch, as a rule
 * the one with the largest share.
 * No swatch at all means that nothing could be read, and `reason` says why in a short sentence.
 */
export interface Palette {
  readonly swatches: readonly Swatch[];
  /** Probability-like, 0–1: how sure the sampler is that the first swatch is the cloth. */
  readonly confidence: number;
  readonly evidence: readonly Evidence[];
  readonly reason?: string;
}
