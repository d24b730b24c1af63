import type { ColorPoint } from "./color-point.ts";
import { deltaE2000 } from "./difference.ts";
import { hueRelation } from "./hue-relation.ts";
import { allButOneArm, type WheelRange, wholeScheme } from "./scheme-arms.ts";
import { bestFit } from "./scheme-fit.ts";
import type { SchemeName } from "./scheme-name.ts";
import {
  ANALOGOUS_UP_TO,
  SAME_HUE_UP_TO,
  SAME_SHADE,
  SPLIT_UP_TO,
  TRIADIC_UP_TO,
  UNNAMED_UP_TO,
} from "./thresholds.ts";
import { turnOf } from "./wheel.ts";
import { arcOf, splitInTwo } from "./wheel-arc.ts";

/** A scheme laid on the wheel: its arms in degrees, the base first, and where the hue that it lacks may lie. */
export interface Shape {
  readonly scheme: SchemeName;
  readonly arms: readonly number[];
  readonly missing: readonly WheelRange[];
}

/** The scheme of a set of colours, whose hues that count are given in degrees on the artist's wheel. */
export function shapeOf(points: readonly ColorPoint[], hues: readonly number[]): Shape {
  const arc = arcOf(hues);
  const oneArm = (scheme: SchemeName): Shape => ({
    scheme,
    arms: arc === null ? [] : [arc.middle],
    missing: [],
  });
  if (points.length === 0) return oneArm("none");
  if (allOneShade(points)) return oneArm("matching");
  if (arc === null || hues.length === 1) return oneArm("with-neutral");
  if (arc.span <= SAME_HUE_UP_TO) return oneArm("monochromatic");
  if (arc.span <= ANALOGOUS_UP_TO) return oneArm("analogous");
  return (
    twoHues(hues) ?? wholeScheme(hues) ?? allButOneArm(hues) ?? { scheme: "none", arms: [], missing: [] }
  );
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
  const on = (scheme: SchemeName, apart: number, missing: readonly WheelRange[]): Shape | null => {
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
