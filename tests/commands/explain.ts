import { type ColorPoint, colorPoint } from "../../lib/color/color-point.ts";
import { hexOf } from "../../lib/color/hex-of.ts";
import { nameColor, tellApart } from "../../lib/color/name-color.ts";
import { parseColor } from "../../lib/color/parse-color.ts";
import { relate } from "../../lib/color/relate.ts";
import { whyRelation } from "../../lib/color/why.ts";

/** `npm run --silent explain -- '#e42833' ['#1f9d55']`: what one colour is, or how two stand to each other, as one JSON object. */

/** Rounds to `places` decimals, without a negative zero. */
function rounded(value: number, places: number): number {
  return Number(value.toFixed(places)) + 0;
}

/** OKLCH chroma below which a hue is nothing but rounding. */
const HUELESS = 1e-4;

function describe({ oklab, chroma, hue, level, neutral, wheel }: ColorPoint) {
  return {
    hex: hexOf(oklab),
    oklch: [rounded(oklab[0], 4), rounded(chroma, 4), chroma < HUELESS ? 0 : rounded(hue, 2)],
    name: nameColor(oklab).everyday,
    level,
    neutral,
    wheel: wheel === null ? null : rounded(wheel, 2),
  };
}

function compare(a: ColorPoint, b: ColorPoint) {
  const relating = relate(a, b);
  return {
    relation: relating.relation,
    alternatives: relating.alternatives,
    wheelAngle: relating.wheelAngle === null ? null : rounded(relating.wheelAngle, 2),
    deltaE2000: rounded(relating.deltaE2000, 4),
    why: whyRelation(a, b, relating, tellApart(nameColor(a.oklab), nameColor(b.oklab))),
  };
}

function explain(colors: readonly string[]) {
  const points = colors.map((css) => colorPoint(parseColor(css)));
  const [first, second, ...more] = points;
  if (first === undefined || more.length > 0) {
    throw new Error("Give one or two colours: npm run --silent explain -- '#e42833' ['#1f9d55']");
  }
  return { colors: points.map(describe), ...(second === undefined ? {} : compare(first, second)) };
}

try {
  process.stdout.write(`${JSON.stringify(explain(process.argv.slice(2)))}\n`);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
