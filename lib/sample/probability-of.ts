/** Log odds are counted in steps of this part of one, so that a sum of them is an entry of a table. */
export const ODDS_STEPS = 64;
/** Log odds beyond which a pixel is cloth, or is not, without further reckoning: 1 in 3,000. */
const CERTAIN = 8;
/** Log odds that no evidence together reaches: colour, words, barrier, place and backdrop give −22 to 28. */
const BEYOND = 32;
const TABLE = Float64Array.from({ length: 2 * BEYOND * ODDS_STEPS + 1 }, (_, entry) => {
  const odds = entry / ODDS_STEPS - BEYOND;
  if (Math.abs(odds) >= CERTAIN) return odds < 0 ? 0 : 1;
  return 1 / (1 + Math.exp(-odds));
});

/** Probability of log odds in steps, by table: an exponential per pixel is what a pass costs most. */
export function probabilityOf(steps: number): number {
  return TABLE[steps + BEYOND * ODDS_STEPS] as number;
}
