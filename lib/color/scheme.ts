import type { ColorPoint } from "./color-point.ts";
import { deltaE2000 } from "./difference.ts";
import { hueRelation } from "./hue-relation.ts";
import type { Level } from "./level.ts";
import type { Relation } from "./relation-name.ts";
import { bestFit, type Fit, SCHEME_ARMS } from "./scheme-fit.ts";
import {
  ANALOGOUS_UP_TO,
  SAME_HUE_UP_TO,
  SAME_SHADE,
  SATURATION_AGREES_WITHIN,
  SCHEME_OFF_AT_MOST,
  SPLIT_UP_TO,
  TRIADIC_UP_TO,
  UNNAMED_UP_TO,
} from "./thresholds.ts";
import { angleBetween, turnOf } from "./wheel.ts";
import { arcOf, splitInTwo } from "./wheel-arc.ts";

/** A stretch of the artist's wheel in degrees, clockwise from `from` to `to`. */
export interface WheelRange {
  readonly from: number;
  readonly to: number;
}

/** The scheme that a set of colours follows. */
export interface Scheme {
  /** "triadic" with an empty `missing` has all three hues; with a range in it, it is two of a triad. */
  readonly scheme: Relation;
  /** Degrees on the artist's wheel: the middle of one hue or of neighbours, else the base arm; null without a scheme of hues. */
  readonly center: number | null;
  /** Degrees from each swatch to its arm, in the order given; 0 for a neutral and where there is no scheme. */
  readonly off: readonly number[];
  /** Where the hue that would complete the scheme may lie; empty where nothing is missing. */
  readonly missing: readonly WheelRange[];
  /** Whether all chromatic swatches are about as saturated as each other. */
  readonly saturationAgree: boolean;
  /** Level of each swatch, in the order given. */
  readonly levels: readonly Level[];
}

/** A scheme laid on the wheel: its arms in degrees, the base first. */
interface Shape {
  readonly scheme: Relation;
  readonly arms: readonly number[];
  readonly missing: readonly WheelRange[];
}

/**
 * The tightest scheme that explains every chromatic colour of a set. Neutrals and tinted neutrals never break one.
 * The order of the colours does not matter.
 */
export function schemeOf(points: readonly ColorPoint[]): Scheme {
  const hueful = points.filter(hasHue);
  const { scheme, arms, missing } = shapeOf(points, hueful.map(wheelOf));
  return {
    scheme,
    center: arms[0] ?? null,
    off: points.map((point) => (hasHue(point) ? fromArms(wheelOf(point), arms) : 0)),
    missing,
    saturationAgree: spread(hueful.map(({ saturation }) => saturation)) <= SATURATION_AGREES_WITHIN,
    levels: points.map(({ level }) => level),
  };
}

function hasHue(point: ColorPoint): boolean {
  return point.wheel !== null && !point.tinted;
}

function wheelOf(point: ColorPoint): number {
  return point.wheel ?? 0;
}

function fromArms(hue: number, arms: readonly number[]): number {
  return arms.length === 0 ? 0 : Math.min(...arms.map((arm) => angleBetween(hue, arm)));
}

function spread(values: readonly number[]): number {
  return values.length === 0 ? 0 : Math.max(...values) - Math.min(...values);
}

function shapeOf(points: readonly ColorPoint[], hues: readonly number[]): Shape {
  const arc = arcOf(hues);
  const oneArm = (scheme: Relation): Shape => ({
    scheme,
    arms: arc === null ? [] : [arc.middle],
    missing: [],
  });
  if (points.length === 0) return oneArm("none");
  if (allOneShade(points)) return oneArm("matching");
  if (arc === null || hues.length === 1) return oneArm("with-neutral");
  if (arc.span <= SAME_HUE_UP_TO) return oneArm("monochromatic");
  if (arc.span <= ANALOGOUS_UP_TO) return oneArm("analogous");
  return twoHues(hues) ?? threeHues(hues) ?? { scheme: "none", arms: [], missing: [] };
}

function allOneShade(points: readonly ColorPoint[]): boolean {
  return points.every((one, index) =>
    points.slice(index + 1).every((other) => deltaE2000(one, other) <= SAME_SHADE),
  );
}

/** The scheme of colours that fall into two narrow groups: named as a pair is. */
function twoHues(hues: readonly number[]): Shape | null {
  const groups = splitInTwo(hues);
  if (groups === null || groups.some(({ span }) => span > SAME_HUE_UP_TO)) return null;
  const [first, second] = clockwise(groups[0].middle, groups[1].middle);
  const angle = turnOf(second - first);
  const on = (scheme: Relation, apart: number, missing: readonly WheelRange[]): Shape | null => {
    const fit = bestFit(hues, [0, apart]);
    return fit === null ? null : { scheme, arms: fit.arms, missing };
  };
  switch (hueRelation(angle)) {
    case "triadic":
      return on("triadic", 120, [thirdOfTriad(first, angle)]);
    case "split-complementary":
      return on("split-complementary", 150, thirdOfSplit(first, second));
    case "complementary":
      return on("complementary", 180, []);
    default:
      return null;
  }
}

/** Two hues so that the second lies at most half a round after the first. */
function clockwise(a: number, b: number): readonly [number, number] {
  return turnOf(b - a) <= 180 ? [a, b] : [b, a];
}

/** Where a third hue is triadic to both of two that are. */
function thirdOfTriad(first: number, angle: number): WheelRange {
  return {
    from: turnOf(first + Math.max(angle + UNNAMED_UP_TO, 360 - TRIADIC_UP_TO)),
    to: turnOf(first + Math.min(angle + TRIADIC_UP_TO, 360 - UNNAMED_UP_TO)),
  };
}

/** Either hue may be the base: the missing arm then mirrors the one that is there. */
function thirdOfSplit(first: number, second: number): readonly WheelRange[] {
  return [
    { from: turnOf(first - SPLIT_UP_TO), to: turnOf(first - TRIADIC_UP_TO) },
    { from: turnOf(second + TRIADIC_UP_TO), to: turnOf(second + SPLIT_UP_TO) },
  ];
}

/** The scheme of three or more hues: the one whose arms they all touch most closely. */
function threeHues(hues: readonly number[]): Shape | null {
  let best: { readonly scheme: Relation; readonly fit: Fit } | null = null;
  for (const [scheme, arms] of SCHEME_ARMS) {
    const fit = bestFit(hues, arms);
    if (fit !== null && fit.off <= SCHEME_OFF_AT_MOST && (best === null || fit.off < best.fit.off)) {
      best = { scheme, fit };
    }
  }
  return best === null ? null : { scheme: best.scheme, arms: best.fit.arms, missing: [] };
}
