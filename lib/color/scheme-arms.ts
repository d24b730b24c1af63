import { bestFit, type Fit } from "./scheme-fit.ts";
import type { SchemeName } from "./scheme-name.ts";
import { SCHEME_OFF_AT_MOST } from "./thresholds.ts";
import { turnOf } from "./wheel.ts";

/** A stretch of the artist's wheel in degrees, clockwise from `from` to `to`. */
export interface WheelRange {
  readonly from: number;
  readonly to: number;
}

/**
 * Arms of the schemes of three or more colours, degrees from the base arm, fewest first (art-school terms, after J. Itten, "The
 * Art of Color", 1961; split arms half a twelfth beyond his, in the middle of our band). A tetrad is a rectangle or a square.
 */
const SCHEME_ARMS: readonly (readonly [SchemeName, readonly number[]])[] = [
  ["complementary", [0, 180]],
  ["split-complementary", [0, 150, 210]],
  ["triadic", [0, 120, 240]],
  ["tetradic", [0, 60, 180, 240]],
  ["tetradic", [0, 90, 180, 270]],
];

/** Three arms of a tetrad, and the fourth: all that differ by more than a turn. */
const TETRAD_LESS_ONE: readonly (readonly [arms: readonly number[], fourth: number])[] = [
  [[0, 60, 180], 240],
  [[0, 120, 180], 300],
  [[0, 90, 180], 270],
];

/** Degrees: two fits nearer than this are equally good. */
const TIE = 1e-9;

interface Laid {
  readonly scheme: SchemeName;
  readonly arms: readonly number[];
  readonly missing: readonly WheelRange[];
}

/** The scheme whose arms hues touch most closely, each arm by at least one hue; of equally close ones that of fewest arms. */
export function wholeScheme(hues: readonly number[]): Laid | null {
  const best = closest(hues, SCHEME_ARMS);
  return best === null ? null : { scheme: best.of, arms: best.fit.arms, missing: [] };
}

/** A tetrad that lacks one hue, and the range in which any hue makes it whole. */
export function allButOneArm(hues: readonly number[]): Laid | null {
  const best = closest(
    hues,
    TETRAD_LESS_ONE.map(([arms, fourth]) => [fourth, arms]),
  );
  if (best === null) return null;
  const { arms, off } = best.fit;
  const middle = (arms[0] ?? 0) + best.of;
  const slack = SCHEME_OFF_AT_MOST - off;
  return {
    scheme: "tetradic",
    arms,
    missing: [{ from: turnOf(middle - slack), to: turnOf(middle + slack) }],
  };
}

function closest<T>(hues: readonly number[], of: readonly (readonly [T, readonly number[]])[]) {
  let best: { readonly of: T; readonly fit: Fit } | null = null;
  for (const [one, arms] of of) {
    const fit = bestFit(hues, arms);
    if (fit === null || fit.off > SCHEME_OFF_AT_MOST) continue;
    if (best === null || fit.off < best.fit.off - TIE) best = { of: one, fit };
  }
  return best;
}
