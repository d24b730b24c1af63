import { type ColorPoint, colorPoint } from "../../lib/color/color-point.ts";
import { confusedWith } from "../../lib/color/color-vision.ts";
import { deltaCmc21, deltaHyab } from "../../lib/color/difference.ts";
import { deltaE76, greyGradeOf } from "../../lib/color/grey-scale.ts";
import { hexOf } from "../../lib/color/hex-of.ts";
import { nameColor, tellApart } from "../../lib/color/name-color.ts";
import { oftenWornAsNeutral } from "../../lib/color/often-worn-as-neutral.ts";
import { parseColor } from "../../lib/color/parse-color.ts";
import { relate } from "../../lib/color/relate.ts";
import { schemeOf } from "../../lib/color/scheme.ts";
import { NO_TEXTILE_MATCH, whyRelation } from "../../lib/color/why.ts";

/**
 * `npm run --silent explain -- '#e42833' ['#1f9d55' …]`: what a colour is, how two stand to each other, which scheme a set
 * follows, as one JSON object. Angles are degrees on the artist's wheel: red 0, yellow 120, blue 240.
 */

/** Rounds to `places` decimals, without a negative zero. */
function rounded(value: number, places = 2): number {
  return Number(value.toFixed(places)) + 0;
}

/** OKLCH chroma below which a hue is nothing but rounding. */
const HUELESS = 1e-4;

function describe(point: ColorPoint) {
  const { oklab, chroma, hue, level, neutral, wheel } = point;
  const { everyday, iscc } = nameColor(oklab);
  return {
    hex: hexOf(oklab),
    oklch: [rounded(oklab[0], 4), rounded(chroma, 4), chroma < HUELESS ? 0 : rounded(hue)],
    name: everyday,
    level,
    neutral,
    wheel: wheel === null ? null : rounded(wheel),
    iscc,
    levelAlternatives: point.levelAlternatives,
    tinted: point.tinted,
    oftenWornAsNeutral: oftenWornAsNeutral(oklab),
    saturation: rounded(point.saturation, 4),
    wheelUncertainty: wheel === null ? null : rounded(point.wheelError.sure),
  };
}

function compare(a: ColorPoint, b: ColorPoint) {
  const relating = relate(a, b);
  const { relation, alternatives, wheelAngle, deltaE2000, uncertainty } = relating;
  const names = tellApart(nameColor(a.oklab), nameColor(b.oklab));
  return {
    relation,
    alternatives,
    wheelAngle: wheelAngle === null ? null : rounded(wheelAngle),
    deltaE2000: rounded(deltaE2000, 4),
    why: whyRelation(a, b, relating, names),
    uncertainty: uncertainty === null ? null : rounded(uncertainty),
    hyab: rounded(deltaHyab(a, b)),
    cmc21: rounded(deltaCmc21(a, b)),
    greyScale: greyGradeOf(deltaE76(a, b)),
    mayLookAlikeTo: confusedWith(a.oklab, b.oklab),
    caution: `Figures of the textile trade are for cloth under an instrument: ${NO_TEXTILE_MATCH}.`,
  };
}

function schemeOfSet(points: readonly ColorPoint[]) {
  const { scheme, center, off, missing, saturationAgree, levels } = schemeOf(points);
  return {
    name: scheme,
    whole: missing.length === 0,
    center: center === null ? null : rounded(center),
    off: off.map((degrees) => rounded(degrees)),
    missing: missing.map(({ from, to }) => ({ from: rounded(from), to: rounded(to) })),
    saturationAgree,
    levels,
  };
}

function explain(colors: readonly string[]) {
  const points = colors.map((css) => colorPoint(parseColor(css)));
  const [first, second, ...more] = points;
  if (first === undefined) {
    throw new Error("Give one colour, two or more: npm run --silent explain -- '#e42833' ['#1f9d55' …]");
  }
  return {
    colors: points.map(describe),
    ...(second !== undefined && more.length === 0 && compare(first, second)),
    ...(second !== undefined && { scheme: schemeOfSet(points) }),
  };
}

try {
  process.stdout.write(`${JSON.stringify(explain(process.argv.slice(2)))}\n`);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
