import { describe, expect, test } from "vitest";
import { ISCC_NAMES } from "../../lib/color/data/iscc-names.ts";
import { relate } from "../../lib/color/relate.ts";
import { angleBetween, turnOf } from "../../lib/color/wheel.ts";
import { pointOf } from "./arbitraries.ts";
import { CAUS_FABRICS } from "./facts/caus-fabrics.ts";
import { RIDGWAY_BLUE_VIOLETS } from "./facts/ridgway-blue-violets.ts";
import { UW_NAMES } from "./facts/uw-names.ts";
import { OTHER_WORDS, PAINT_CUBE, SCREEN_SURVEY } from "./facts/wheel-holdouts.ts";
import { WHEEL_NAMES } from "./facts/wheel-names.ts";

type Step = "red" | "orange" | "yellow" | "green" | "blue" | "violet";
type Six = Readonly<Record<Step, string>>;

/** Art-school facts: each secondary is opposite a primary; primaries make one triad, secondaries the other. Common practice. */
const COMPLEMENTS = [
  ["red", "green"],
  ["yellow", "violet"],
  ["blue", "orange"],
] as const;
const TRIADS = [
  ["red", "yellow"],
  ["yellow", "blue"],
  ["blue", "red"],
  ["orange", "green"],
  ["green", "violet"],
  ["violet", "orange"],
] as const;
const PAIRS = [
  ...COMPLEMENTS.map((pair) => ({ pair, relation: "complementary", place: 180 }) as const),
  ...TRIADS.map((pair) => ({ pair, relation: "triadic", place: 120 }) as const),
];

const SOURCES = ["css", "xkcd", "iscc", "caus"] as const;

function sixOf(source: (typeof SOURCES)[number]): Six {
  const hexOf = (name: Step) => {
    const hex = WHEEL_NAMES.find((step) => step.name === name)?.[source];
    if (hex === undefined || hex === null) throw new Error(`${source} has no ${name}.`);
    return hex;
  };
  return {
    red: hexOf("red"),
    orange: hexOf("orange"),
    yellow: hexOf("yellow"),
    green: hexOf("green"),
    blue: hexOf("blue"),
    violet: hexOf("violet"),
  };
}

function relatingOf(six: Six, [one, other]: readonly [Step, Step]) {
  return relate(pointOf(six[one]), pointOf(six[other]));
}

/**
 * Degrees that each pair reaches, in the order of `PAIRS`, and the pairs that only the hedge calls by their name. The first four sources placed
 * the wheel; the others did not.
 */
const REACHED: readonly (readonly [
  source: string,
  six: Six,
  degrees: readonly number[],
  hedged: readonly string[],
])[] = [
  ["CSS Color 4", sixOf("css"), [164, 177, 176, 123, 118, 119, 108, 142, 111], ["green violet"]],
  ["XKCD", sixOf("xkcd"), [165, 172, 161, 123, 117, 120, 123, 131, 106], []],
  [
    "ISCC-NBS strong",
    sixOf("iscc"),
    [163, 174, 171, 113, 127, 120, 129, 90, 141],
    ["green violet", "violet orange"],
  ],
  ["fabrics", sixOf("caus"), [173, 168, 176, 113, 125, 122, 133, 118, 109], []],
  ["a survey on screens", SCREEN_SURVEY, [174, 173, 180, 128, 114, 118, 113, 127, 120], []],
  ["the paint cube", PAINT_CUBE, [168, 177, 180, 123, 106, 130, 119, 138, 103], []],
  [
    "CSS Color 4, its other words",
    { ...sixOf("css"), ...OTHER_WORDS.css },
    [164, 178, 168, 123, 118, 119, 91, 141, 128],
    ["orange green", "green violet"],
  ],
  [
    "XKCD, its other word",
    { ...sixOf("xkcd"), ...OTHER_WORDS.xkcd },
    [165, 163, 161, 123, 117, 120, 123, 122, 115],
    [],
  ],
  [
    "ISCC-NBS strong, its other word",
    { ...sixOf("iscc"), ...OTHER_WORDS.iscc },
    [163, 161, 171, 113, 127, 120, 129, 116, 116],
    [],
  ],
  [
    "fabrics, their other word",
    { ...sixOf("caus"), ...OTHER_WORDS.caus },
    [173, 159, 176, 113, 125, 122, 133, 126, 101],
    ["yellow violet"],
  ],
];

describe.each(REACHED)("complements and triads of %s", (_, six, degrees, hedged) => {
  test.each(PAIRS.map(({ pair, relation }, index) => ({ pair, relation, reached: degrees[index] })))(
    "$pair.0 and $pair.1 are $relation at $reached°",
    ({ pair, relation, reached }) => {
      const relating = relatingOf(six, pair);
      expect(Math.round(relating.wheelAngle ?? Number.NaN)).toBe(reached);
      if (!hedged.includes(pair.join(" "))) expect(relating.relation).toBe(relation);
      else expect(relating.alternatives).toContain(relation);
    },
  );
});

/** How far each pair of a source is from its place, in degrees, nearest first. */
function misses(sources: readonly Six[]): readonly number[] {
  return sources
    .flatMap((six) =>
      PAIRS.map(({ pair, place }) => Math.abs((relatingOf(six, pair).wheelAngle ?? Number.NaN) - place)),
    )
    .sort((a, b) => a - b);
}

test("names agree on the wheel about as closely as the least uncertainty says", () => {
  const placing = misses(SOURCES.map(sixOf));
  expect(placing.filter((off) => off <= 10)).toHaveLength(23);
  expect(placing[Math.floor(placing.length * 0.9)]).toBeLessThan(19);
  expect(misses([SCREEN_SURVEY]).at(-1)).toBeLessThan(10);
});

test("no source comes closer to its places than the fabrics do", () => {
  const mean = (six: Six) => misses([six]).reduce((sum, off) => sum + off, 0) / PAIRS.length;
  const [css, xkcd, iscc, caus] = SOURCES.map((source) => mean(sixOf(source)));
  for (const other of [css, xkcd, iscc]) expect(caus).toBeLessThan(other ?? 0);
  expect(caus).toBeLessThan(7.5);
});

describe("steps of the wheel", () => {
  test.each(SOURCES)("each name of %s is within 19° of its step", (source) => {
    for (const step of WHEEL_NAMES) {
      const hex = step[source];
      if (hex !== null) expect(angleBetween(pointOf(hex).wheel ?? Number.NaN, step.wheel)).toBeLessThan(19);
    }
  });

  test("a survey that placed no knot falls within 14° of every step (UW, Kim et al. 2019)", () => {
    const steps = { red: 0, orange: 60, yellow: 120, green: 180, blue: 240, purple: 300 };
    for (const [name, wheel] of Object.entries(steps)) {
      const hex = UW_NAMES.find(([uw]) => uw === name)?.[1] ?? "";
      expect(angleBetween(pointOf(hex).wheel ?? Number.NaN, wheel)).toBeLessThan(14);
    }
  });

  /** The step that each fabric name means, as trade and art school use the words: common practice, no source. None placed a knot. */
  test.each([
    ["coral", 15],
    ["peach", 60],
    ["beige", 75],
    ["sand", 75],
    ["tan", 75],
    ["aqua", 210],
    ["turquoise", 210],
    ["lavender", 300],
    ["violet", 300],
    ["lilac", 310],
    ["mauve", 320],
    ["fuchsia", 330],
    ["rose", 350],
    ["wine", 0],
  ] as const)("the fabric called %s is within 12° of %i° (Centore 2020)", (name, wheel) => {
    const hex = CAUS_FABRICS.find((fabric) => fabric.name === name)?.hex ?? "";
    expect(angleBetween(pointOf(hex).wheel ?? Number.NaN, wheel)).toBeLessThan(12);
  });

  describe("blue-violet, by surfaces that placed no knot", () => {
    const BLUE_VIOLET = 270;
    const ISCC_STRONG = "#545aa7";

    function off(hexes: readonly string[]): readonly number[] {
      return hexes
        .map(pointOf)
        .filter((point) => !point.neutral && !point.tinted)
        .map((point) => turnOf((point.wheel ?? Number.NaN) - BLUE_VIOLET + 180) - 180);
    }
    const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

    test("the painted chips of Ridgway 1912 lie about its place, 5° off on average", () => {
      const chips = off(RIDGWAY_BLUE_VIOLETS.map(([, hex]) => hex));
      expect(chips).toHaveLength(19);
      expect(Math.abs(mean(chips))).toBeLessThan(1);
      expect(mean(chips.map(Math.abs))).toBeLessThan(5.5);
    });

    test("the other ISCC-NBS purplish blues are within 5° of it on average", () => {
      const rows = ISCC_NAMES.split("|").filter((row) => row.endsWith("purplish blue"));
      const others = off(rows.map((row) => `#${row.slice(0, 6)}`).filter((hex) => hex !== ISCC_STRONG));
      expect(others.length).toBeGreaterThan(8);
      expect(mean(others.map(Math.abs))).toBeLessThan(5);
    });
  });
});
