import type { ColorPoint } from "./color-point.ts";
import type { Level } from "./level.ts";
import type { WheelRange } from "./scheme-arms.ts";
import type { SchemeName } from "./scheme-name.ts";
import { shapeOf } from "./scheme-shape.ts";
import { SATURATION_AGREES_WITHIN } from "./thresholds.ts";
import { angleBetween } from "./wheel.ts";

/** The scheme that a set of colours follows. */
export interface Scheme {
  /** A triad, a split complement or a tetrad is whole where `missing` is empty; else it is all but one of its hues. */
  readonly scheme: SchemeName;
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
