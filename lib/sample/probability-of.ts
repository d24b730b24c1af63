import { at } from "./plane.ts";

/** Log odds beyond which a pixel is cloth, or is not, without further reckoning: 1 in 3,000. */
const CERTAIN = 8;
/** Entries per unit of log odds: an error of at most 0.004. */
const FINE = 32;
const TABLE = Float32Array.from(
  { length: 2 * CERTAIN * FINE + 1 },
  (_, entry) => 1 / (1 + Math.exp(CERTAIN - entry / FINE)),
);

/** Probability of log odds, by table: an exponential per pixel is what a pass costs most. */
export function probabilityOf(odds: number): number {
  if (odds <= -CERTAIN) return 0;
  return odds >= CERTAIN ? 1 : at(TABLE, ((odds + CERTAIN) * FINE + 0.5) | 0);
}
