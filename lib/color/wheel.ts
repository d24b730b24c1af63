import { ColorError } from "./color-error.ts";

/**
 * OKLCH hue → angle on the artist's red-yellow-blue wheel, in degrees; straight lines between. Proposal: per step of
 * J. Itten's twelve-part circle ("The Art of Color", 1961) about the mean hue that CSS Color 4, the XKCD survey (2010), the ISCC-NBS
 * "strong" centroids (Kelly & Judd 1976) and measured fabrics (P. Centore, JAIC 25, 2020) give its name, shifted by at
 * most 3°. Blue-violet stands on its mean: the painted chips of R. Ridgway, "Color Standards and Color Nomenclature" (1912), and the
 * other ISCC-NBS purplish blues, which placed no knot, have it there; names chosen on screens lie 4° further on. There is
 * no standard wheel of this kind.
 */
export const WHEEL_KNOTS: readonly (readonly [hue: number, wheel: number])[] = [
  [26, 0],
  [37, 30],
  [54, 60],
  [77, 90],
  [100, 120],
  [124, 150],
  [148, 180],
  [194, 210],
  [256, 240],
  [280, 270],
  [311, 300],
  [346, 330],
  [386, 360],
];

type Knots = readonly (readonly [from: number, to: number])[];

const BACK: Knots = WHEEL_KNOTS.map(([hue, wheel]) => [wheel, hue]);

/** An angle as 0 ≤ angle < 360. @throws ColorError when it is not finite. */
export function turnOf(angle: number): number {
  if (!Number.isFinite(angle)) throw new ColorError(`${angle} is no angle: give a finite number of degrees.`);
  const turn = angle % 360;
  const positive = turn < 0 ? turn + 360 : turn;
  return positive >= 360 ? 0 : positive;
}

function follow(knots: Knots, angle: number): number {
  const start = knots[0]?.[0] ?? 0;
  const at = start + turnOf(angle - start);
  const next = knots.findIndex(([from]) => from > at);
  const low = knots[next - 1];
  const high = knots[next];
  if (low === undefined || high === undefined) throw new ColorError(`${angle} is no angle on the wheel.`);
  return turnOf(low[1] + ((at - low[0]) * (high[1] - low[1])) / (high[0] - low[0]));
}

/** Angle on the artist's wheel (red 0, yellow 120, blue 240; 0 ≤ w < 360) of an OKLCH hue in degrees. */
export function wheelFromHue(hue: number): number {
  return follow(WHEEL_KNOTS, hue);
}

/** OKLCH hue (0 ≤ h < 360) of an angle on the artist's wheel. */
export function hueFromWheel(wheel: number): number {
  return follow(BACK, wheel);
}

/** The shorter way between two angles, 0–180 degrees. */
export function angleBetween(a: number, b: number): number {
  return turnBetween(turnOf(a), turnOf(b));
}

/** The same for angles that are 0 ≤ angle < 360 already; NaN where one is NaN. */
export function turnBetween(a: number, b: number): number {
  const apart = Math.abs(a - b);
  return apart > 180 ? 360 - apart : apart;
}
