import { angleBetween, turnOf } from "./wheel.ts";

/** How a scheme lies best on a set of hues. */
export interface Fit {
  /** Degrees on the wheel of each arm, the base first. */
  readonly arms: readonly number[];
  /** Degrees between the worst hue and its arm. */
  readonly off: number;
}

/**
 * Turns the arms so that the farthest hue is as near to an arm as can be. Of the turns that are equally good the one with the smallest
 * base angle counts. Null when an arm stays without a hue.
 */
export function bestFit(hues: readonly number[], arms: readonly number[]): Fit | null {
  let best: Fit | null = null;
  for (const hue of hues) {
    for (const arm of arms) {
      const fit = centered(hues, arms, hue - arm);
      if (fit !== null && (best === null || isBetter(fit, best))) best = fit;
    }
  }
  return best;
}

/** Degrees: two fits nearer than this are equally good. */
const TIE = 1e-9;

function isBetter(fit: Fit, than: Fit): boolean {
  if (Math.abs(fit.off - than.off) > TIE) return fit.off < than.off;
  return (fit.arms[0] ?? 0) < (than.arms[0] ?? 0);
}

/** Gives each hue its nearest arm, then shifts all arms into the middle of what they miss by. */
function centered(hues: readonly number[], arms: readonly number[], base: number): Fit | null {
  const used = new Set<number>();
  const misses = hues.map((hue) => {
    const arm = nearestArm(hue - base, arms);
    used.add(arm);
    return signed(hue - base - arm);
  });
  if (used.size < arms.length) return null;
  const low = Math.min(...misses);
  const high = Math.max(...misses);
  return { arms: arms.map((arm) => turnOf(base + arm + (low + high) / 2)), off: (high - low) / 2 };
}

function nearestArm(angle: number, arms: readonly number[]): number {
  return arms.reduce((best, arm) => (angleBetween(angle, arm) < angleBetween(angle, best) ? arm : best));
}

/** An angle as −180 ≤ a < 180. */
function signed(angle: number): number {
  return turnOf(angle + 180) - 180;
}
