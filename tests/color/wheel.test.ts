import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { relate } from "../../lib/color/relate.ts";
import { angleBetween, hueFromWheel, turnOf, WHEEL_KNOTS, wheelFromHue } from "../../lib/color/wheel.ts";
import { pointOf } from "./arbitraries.ts";
import { UW_NAMES } from "./facts/uw-names.ts";
import { WHEEL_NAMES } from "./facts/wheel-names.ts";

const angle = fc.double({ min: -720, max: 1080, noNaN: true });

describe("the artist's wheel", () => {
  test("comes back within 1e-9 degrees, both ways", () => {
    fc.assert(
      fc.property(angle, (degrees) => {
        expect(angleBetween(hueFromWheel(wheelFromHue(degrees)), degrees)).toBeLessThan(1e-9);
        expect(angleBetween(wheelFromHue(hueFromWheel(degrees)), degrees)).toBeLessThan(1e-9);
      }),
      { numRuns: 2000 },
    );
  });

  test("turns one way only and closes", () => {
    for (const follow of [wheelFromHue, hueFromWheel]) {
      let round = 0;
      for (let tenth = 0; tenth < 3600; tenth++) {
        const step = turnOf(follow((tenth + 1) / 10) - follow(tenth / 10));
        expect(step).toBeGreaterThan(0);
        expect(step).toBeLessThan(1);
        round += step;
      }
      expect(round).toBeCloseTo(360, 6);
    }
  });

  test("has every knot where it is said to be, and repeats each round", () => {
    for (const [hue, wheel] of WHEEL_KNOTS) {
      expect(angleBetween(wheelFromHue(hue), wheel)).toBeLessThan(1e-9);
      expect(wheelFromHue(hue - 360)).toBeCloseTo(wheelFromHue(hue + 360), 9);
    }
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses %f", (broken) => {
    for (const use of [wheelFromHue, hueFromWheel, turnOf]) {
      expect(() => use(broken)).toThrow(`${broken}`);
    }
  });
});

const SOURCES = ["css", "xkcd", "iscc", "caus"] as const;

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

/**
 * ISCC-NBS "strong violet" is bluer than what the trade calls violet or purple (88° from "strong green"); in a triad its "strong purple" takes
 * the step.
 */
const ISCC_STRONG_PURPLE = "#875692";

function hexInTriad(name: string, source: (typeof SOURCES)[number]): string {
  return source === "iscc" && name === "violet" ? ISCC_STRONG_PURPLE : hexOfName(name, source);
}

function hexOfName(name: string, source: (typeof SOURCES)[number]): string {
  const hex = WHEEL_NAMES.find((step) => step.name === name)?.[source];
  if (hex === undefined || hex === null) throw new Error(`${source} has no ${name}.`);
  return hex;
}

describe.each(SOURCES)("names of %s", (source) => {
  test.each(COMPLEMENTS)("%s and %s are complements", (one, other) => {
    const { relation, alternatives } = relate(
      pointOf(hexOfName(one, source)),
      pointOf(hexOfName(other, source)),
    );
    expect([relation, ...alternatives]).toContain("complementary");
  });

  test.each(TRIADS)("%s and %s are two of a triad", (one, other) => {
    const { relation, alternatives } = relate(
      pointOf(hexInTriad(one, source)),
      pointOf(hexInTriad(other, source)),
    );
    expect([relation, ...alternatives]).toContain("triadic");
  });

  test("each step is within a step of its place", () => {
    for (const step of WHEEL_NAMES) {
      const hex = step[source];
      if (hex !== null) expect(angleBetween(pointOf(hex).wheel ?? Number.NaN, step.wheel)).toBeLessThan(30);
    }
  });
});

test("a survey that placed no knot falls within 14° of every step (UW, Kim et al. 2019)", () => {
  const steps = { red: 0, orange: 60, yellow: 120, green: 180, blue: 240, purple: 300 };
  for (const [name, wheel] of Object.entries(steps)) {
    const hex = UW_NAMES.find(([uw]) => uw === name)?.[1] ?? "";
    expect(angleBetween(pointOf(hex).wheel ?? Number.NaN, wheel)).toBeLessThan(14);
  }
});
