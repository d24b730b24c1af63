import type { ColorPoint } from "./color-point.ts";
import { deltaCmc21, deltaHyab } from "./difference.ts";
import { deltaE76, greyGradeOf } from "./grey-scale.ts";
import type { Relating } from "./relate.ts";
import type { Relation } from "./relation-name.ts";
import { LARGE_DIFFERENCE } from "./thresholds.ts";

/** Goes with every figure of the textile trade: those are for cloth under an instrument. */
export const NO_TEXTILE_MATCH = "no photo can certify a textile match";

/**
 * One or two plain sentences on why two colours stand as they do, with the numbers behind them and no more certainty
 * than the pictures have.
 * @param names what to call the two, such as "deep teal"; first `a`, then `b`.
 */
export function whyRelation(
  a: ColorPoint,
  b: ColorPoint,
  relating: Relating,
  names: readonly [a: string, b: string],
): string {
  const sentence = `${subject(names)} ${predicate(a, b, relating, names)}.`;
  const doubt = doubtOf(relating);
  return doubt === null ? sentence : `${sentence} ${doubt}`;
}

function subject([first, second]: readonly [string, string]): string {
  const words = first === second ? `both are ${first} and` : `${first} and ${second}`;
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function predicate(
  a: ColorPoint,
  b: ColorPoint,
  relating: Relating,
  names: readonly [a: string, b: string],
): string {
  const apart = `${Math.round(relating.wheelAngle ?? 0)}° apart on the artist's wheel`;
  switch (relating.relation) {
    case "matching":
      return `look like one shade in the photo (${shadeFigures(a, b, relating)}), though ${NO_TEXTILE_MATCH}`;
    case "monochromatic":
      return `share one hue, ${apart}, ${levelsOf(a, b)} (${differenceFigure(a, b, relating)})`;
    case "analogous":
      return `are neighbours, ${apart}`;
    case "triadic":
      return `are ${apart}: two of a triad`;
    case "split-complementary":
      return `are ${apart}: two of a split-complementary scheme`;
    case "complementary":
      return `are opposites, ${apart}`;
    case "with-neutral":
      return `go together because ${neutralReason(a, b, names)} (${differenceFigure(a, b, relating)})`;
    case "none":
      return `are ${apart}, which no classical scheme names`;
  }
}

function shadeFigures(a: ColorPoint, b: ColorPoint, { deltaE2000 }: Relating): string {
  const [standard, sample] = a.lab[0] >= b.lab[0] ? [a, b] : [b, a];
  return `ΔE00 ${deltaE2000.toFixed(1)}, CMC(2:1) ${deltaCmc21(standard, sample).toFixed(1)}, grey scale ${greyGradeOf(deltaE76(a, b))}`;
}

function differenceFigure(a: ColorPoint, b: ColorPoint, { deltaE2000 }: Relating): string {
  return deltaE2000 > LARGE_DIFFERENCE
    ? `HyAB ${deltaHyab(a, b).toFixed(0)}`
    : `ΔE00 ${deltaE2000.toFixed(1)}`;
}

function levelsOf(a: ColorPoint, b: ColorPoint): string {
  return a.level === b.level
    ? `both at the level "${a.level}"`
    : `at the levels "${a.level}" and "${b.level}"`;
}

function neutralReason(a: ColorPoint, b: ColorPoint, [first, second]: readonly [string, string]): string {
  const quiet = (point: ColorPoint) => point.neutral || point.tinted;
  if (quiet(a) && quiet(b))
    return a.neutral && b.neutral ? "both are neutral" : "neither has much hue of its own";
  const [point, name] = quiet(a) ? [a, first] : [b, second];
  return point.neutral ? `${name} is a neutral` : `${name} has hardly any hue of its own`;
}

/** How each name reads after "it may also be". */
const READINGS: Readonly<Record<Relation, string>> = {
  matching: "one shade",
  monochromatic: "one hue at two levels",
  analogous: "neighbouring hues",
  triadic: "two of a triad",
  "split-complementary": "split-complementary",
  complementary: "complementary",
  "with-neutral": "a colour with a neutral",
  none: "between the named schemes",
};

function doubtOf({ alternatives, uncertainty }: Relating): string | null {
  if (alternatives.length === 0) return null;
  const others = alternatives.map((relation) => READINGS[relation]).join(" or ");
  const open = uncertainty === null ? "" : `, whose hues are sure to about ${Math.round(uncertainty)}°`;
  return `Going by a photo${open}, it may also be ${others}.`;
}
