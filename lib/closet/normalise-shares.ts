import type { Swatch } from "../sample/palette.ts";

/** How far a sum of shares may be from 1 and still be left as it is; keeps repeated reading exact. */
const SUM_SLACK = 1e-6;

/** The same swatches, largest share first, shares summing to 1; equal shares where all are 0. */
export function normaliseShares(swatches: readonly Swatch[]): Swatch[] {
  const sum = swatches.reduce((total, swatch) => total + swatch.share, 0);
  const shared =
    Math.abs(sum - 1) <= SUM_SLACK
      ? swatches
      : swatches.map((swatch) => ({ ...swatch, share: sum > 0 ? swatch.share / sum : 1 / swatches.length }));
  return shared.toSorted((one, other) => other.share - one.share);
}
