import type { Swatch } from "../sample/palette.ts";

/** How far a sum of shares may be from 1 and still be left as it is; keeps repeated reading exact. */
const SUM_SLACK = 1e-6;

/** The same swatches in their order, the statement swatch first; shares sum to 1, and are equal where all are 0. */
export function normaliseShares(swatches: readonly Swatch[]): Swatch[] {
  const sum = swatches.reduce((total, swatch) => total + swatch.share, 0);
  if (Math.abs(sum - 1) <= SUM_SLACK) return [...swatches];
  return swatches.map((swatch) => ({ ...swatch, share: sum > 0 ? swatch.share / sum : 1 / swatches.length }));
}
