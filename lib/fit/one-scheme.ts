import { type ColorPoint, colorPoint } from "../color/color-point.ts";
import { type Scheme, schemeOf } from "../color/scheme.ts";
import { hueFromWheel } from "../color/wheel.ts";

/**
 * Degrees of the artist's wheel. Hues of three or more swatches are compared in steps this fine, so that the answer
 * can be remembered; half of the least uncertainty of any hue (`WHEEL_UNCERTAINTY_FLOOR`).
 */
export const LOOK_HUE_STEP = 5;

/** Steps around the wheel. */
const STEPS = 360 / LOOK_HUE_STEP;

/** Stands for a colour without a hue of its own. */
export const NO_HUE = -1;

/** Lightness and chroma (OKLCH) of the colours that stand for the steps; other strong ones would do as well. */
const STEP_LIGHTNESS = 0.65;
const STEP_CHROMA = 0.15;

/** One colour per step, its angle free of rounding so that every rotation of a set gets the same answer. */
const STEP_POINTS: readonly ColorPoint[] = Array.from({ length: STEPS }, (_, step) => {
  const wheel = step * LOOK_HUE_STEP;
  const hue = (hueFromWheel(wheel) * Math.PI) / 180;
  return {
    ...colorPoint([STEP_LIGHTNESS, STEP_CHROMA * Math.cos(hue), STEP_CHROMA * Math.sin(hue)]),
    wheel,
  };
});

/** What is remembered of four hues, by how far the others lie from the first, nearest first: 0 nothing yet, 1 a scheme, 2 none. */
const remembered = new Uint8Array(STEPS ** 3);

/** The step of a colour's hue, or `NO_HUE` for a neutral or tinted one, which never breaks a scheme. */
export function hueStepOf({ wheel, tinted }: ColorPoint): number {
  return wheel === null || tinted ? NO_HUE : Math.round(wheel / LOOK_HUE_STEP) % STEPS;
}

/**
 * Whether a set of colours follows a scheme that a look may rest on. Opposites beside almost any third hue are all but one of a tetrad,
 * so that this says nothing before the fourth is there.
 */
export function isOneScheme({ scheme, missing }: Pick<Scheme, "scheme" | "missing">): boolean {
  return scheme !== "none" && (scheme !== "tetradic" || missing.length === 0);
}

/** Whether up to four hues, given in steps, follow one scheme (see `schemeOf`). Their order does not matter. */
export function followOneScheme(a: number, b: number, c: number, d: number): boolean {
  const first = a !== NO_HUE ? a : b !== NO_HUE ? b : c !== NO_HUE ? c : d;
  if (first === NO_HUE) return true;
  const key = keyOf(stepsFrom(first, b), stepsFrom(first, c), stepsFrom(first, d));
  if (!remembered[key]) findOut(first, b, c, d);
  return remembered[key] === 1;
}

/** Steps from the first hue to another; no hue adds nothing, as if it were the first again. */
function stepsFrom(first: number, step: number): number {
  if (step === NO_HUE) return 0;
  return step < first ? step - first + STEPS : step - first;
}

function keyOf(x: number, y: number, z: number): number {
  const low = Math.min(x, y, z);
  const high = Math.max(x, y, z);
  return (low * STEPS + (x + y + z - low - high)) * STEPS + high;
}

/** Asks once for the hues as seen from the first, and remembers the same answer for them seen from each and mirrored. */
function findOut(first: number, ...others: readonly number[]): void {
  const hues = [0, ...others.map((step) => stepsFrom(first, step))];
  const points = STEP_POINTS.filter((_, step) => hues.includes(step));
  const answer = isOneScheme(schemeOf(points)) ? 1 : 2;
  for (const [at, from] of hues.entries()) {
    const [x = 0, y = 0, z = 0] = hues.toSpliced(at, 1).map((step) => stepsFrom(from, step));
    remembered[keyOf(x, y, z)] = answer;
    remembered[keyOf((STEPS - x) % STEPS, (STEPS - y) % STEPS, (STEPS - z) % STEPS)] = answer;
  }
}
