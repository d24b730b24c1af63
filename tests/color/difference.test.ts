import { differenceCiede2000, differenceCmc, differenceHyab } from "culori";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ciede2000, deltaCmc21, deltaE2000, deltaHyab } from "../../lib/color/difference.ts";
import { deltaE76, GREY_SCALE, greyGradeOf } from "../../lib/color/grey-scale.ts";
import type { Lab } from "../../lib/color/lab.ts";
import { anyPoint } from "./arbitraries.ts";
import { CIEDE2000_PAIRS } from "./facts/ciede2000-pairs.ts";
import { CMC_SPOTS, CMC21 } from "./facts/cmc-pairs.ts";

/** Half of the last digit that the paper prints, with room for binary rounding. */
const PRINTED = 0.00006;

/** Pair 14 lies on the turn of the hue: the last bit of the arc tangent decides which of two values comes out. */
const ON_THE_TURN = new Map([[14, [4.8045, 4.7461]]]);

const of = (lab: Lab) => ({ lab });
const lab65 = ([l, a, b]: Lab) => ({ mode: "lab65" as const, l, a, b });

describe("CIEDE2000", () => {
  test.each(CIEDE2000_PAIRS.map((pair, index) => [index + 1, ...pair] as const))(
    "pair %i of Sharma, Wu & Dalal 2005",
    (number, one, other, published) => {
      const allowed = ON_THE_TURN.get(number) ?? [published];
      const reached = ciede2000(...one, ...other);
      expect(Math.min(...allowed.map((value) => Math.abs(value - reached)))).toBeLessThan(PRINTED);
    },
  );

  test("agrees with culori", () => {
    const reference = differenceCiede2000();
    fc.assert(
      fc.property(anyPoint, anyPoint, (a, b) => {
        expect(deltaE2000(a, b)).toBeCloseTo(reference(lab65(a.lab), lab65(b.lab)), 9);
      }),
      { numRuns: 1000 },
    );
  });

  test("is symmetric to the last bit, zero only for one colour, and never less", () => {
    fc.assert(
      fc.property(anyPoint, anyPoint, (a, b) => {
        expect(deltaE2000(a, b)).toBe(deltaE2000(b, a));
        expect(deltaE2000(a, a)).toBe(0);
        expect(deltaE2000(a, b) > 0).toBe(a.oklab.some((part, index) => part !== b.oklab[index]));
      }),
      { numRuns: 1000 },
    );
  });
});

describe("CMC(2:1)", () => {
  test.each(CMC_SPOTS)("published spot value of %j against %j", (standard, sample, published) => {
    expect(deltaCmc21(of(standard), of(sample))).toBeCloseTo(published, 7);
  });

  test.each(CMC21.map((row, index) => [index + 1, ...row] as const))(
    "pair %i, both ways",
    (number, difference, exchanged) => {
      const [one, other] = CIEDE2000_PAIRS[number - 1] ?? [];
      if (one === undefined || other === undefined) throw new Error(`There is no pair ${number}.`);
      expect(deltaCmc21(of(one), of(other))).toBeCloseTo(difference, 3.9);
      expect(deltaCmc21(of(other), of(one))).toBeCloseTo(exchanged, 3.9);
    },
  );

  test("agrees with culori where lightness differs too", () => {
    const reference = differenceCmc(2, 1);
    fc.assert(
      fc.property(anyPoint, anyPoint, (a, b) => {
        expect(deltaCmc21(a, b)).toBeCloseTo(reference(lab65(a.lab), lab65(b.lab)), 6);
      }),
    );
  });
});

test("HyAB agrees with culori", () => {
  const reference = differenceHyab();
  fc.assert(
    fc.property(anyPoint, anyPoint, (a, b) => {
      expect(deltaHyab(a, b)).toBeCloseTo(reference(lab65(a.lab), lab65(b.lab)), 9);
    }),
  );
});

describe("grey scale, ISO 105-A02:1993 clause 2.4", () => {
  /** The standard's tolerance of each step; that of 5 from memory. */
  const TOLERANCES = [0.2, 0.2, 0.3, 0.35, 0.4, 0.5, 0.6, 0.7, 1];

  test.each(
    GREY_SCALE.map(([grade, difference], index) => [grade, difference, TOLERANCES[index] ?? 0] as const),
  )("grade %s holds %f ± %f", (grade, difference, tolerance) => {
    for (const within of [
      difference,
      difference + tolerance * 0.99,
      Math.max(0, difference - tolerance * 0.99),
    ]) {
      expect(greyGradeOf(within)).toBe(grade);
    }
  });

  test("is read from the CIELAB difference of 1976", () => {
    expect(deltaE76(of([50, 3, 4]), of([50, 0, 0]))).toBe(5);
    expect(greyGradeOf(80)).toBe("1");
  });
});
