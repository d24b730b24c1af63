import { differenceCiede2000 } from "culori";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ColorPoint, colorPoint } from "../../lib/color/color-point.ts";
import { ciede2000SquaredAtLeast } from "../../lib/color/difference.ts";
import type { Lab } from "../../lib/color/lab.ts";
import { LazyRelating } from "../../lib/color/lazy-relating.ts";
import type { Oklab } from "../../lib/color/oklab.ts";
import { packColors } from "../../lib/color/packed-colors.ts";
import { relate } from "../../lib/color/relate.ts";
import { relateToAll } from "../../lib/color/relate-to-all.ts";
import { codeOf, followedBy, NO_NAMES, relationsIn } from "../../lib/color/relation-code.ts";
import { RELATIONS, type Relation } from "../../lib/color/relation-name.ts";
import { anyPoint } from "./arbitraries.ts";
import { CIEDE2000_PAIRS } from "./facts/ciede2000-pairs.ts";
import { roundedNames, slowColor, slowFigures } from "./slow-relation.ts";

/** Numbers in even steps, for fc.double prefers the ends of its range. */
const steps = (low: number, high: number) =>
  fc.integer({ min: Math.round(low * 10000), max: Math.round(high * 10000) }).map((n) => n / 10000);

/** Keeps lightness and chroma off the limits of neutrals, where the last bit decides between us and culori. */
const OFF_EDGES = 0.00003;

const colored = (chroma: fc.Arbitrary<number>, lightness = steps(0.1, 0.98)) =>
  fc
    .record({ l: lightness, c: chroma, h: steps(0, 2 * Math.PI) })
    .map(
      ({ l, c, h }): Oklab => [l + OFF_EDGES, (c + OFF_EDGES) * Math.cos(h), (c + OFF_EDGES) * Math.sin(h)],
    );

/** Strong colours, and neutral and tinted ones, each about as often. */
const anyColor = fc.oneof(colored(steps(0.03, 0.2)), colored(steps(0, 0.06)));

/** Two colours, in one of two cases near enough to match or nearly. */
const nudge = steps(-0.06, 0.06);
const anyPair = fc
  .record({ one: anyColor, other: anyColor, near: fc.boolean(), by: fc.tuple(nudge, nudge, nudge) })
  .map(({ one, other, near, by: [l, a, b] }): readonly [Oklab, Oklab] => [
    one,
    near ? [Math.min(1, Math.max(0, one[0] + l)), one[1] + a, one[2] + b] : other,
  ]);

const anyConfidence = fc.oneof(fc.constantFrom(0, 1, 0.5, -1, 2, Number.NaN), steps(0, 1));

/** The names that one colour's relations to others get in one go. */
function namesInOneGo(one: ColorPoint, others: readonly ColorPoint[], confidence: number) {
  const codes = new Uint32Array(others.length);
  relateToAll(packColors([one]), 0, packColors(others), confidence, codes);
  return [...codes].map(relationsIn);
}

const namesOf = ({ relation, alternatives }: { relation: Relation; alternatives: readonly Relation[] }) => [
  relation,
  ...alternatives,
];

describe("relating one colour to many in one go", () => {
  test("gives the names that relating each pair gives, whichever colour comes first", () => {
    const seen = new Set<Relation>();
    fc.assert(
      fc.property(fc.array(anyPair, { minLength: 1 }), anyConfidence, (pairs, confidence) => {
        const points = pairs.flat().map(colorPoint);
        for (const [at, one] of points.entries()) {
          const names = namesInOneGo(one, points, confidence);
          expect(names).toEqual(points.map((other) => namesOf(relate(one, other, confidence))));
          for (const [to, other] of points.entries()) {
            expect(namesInOneGo(other, [one], confidence)[0]).toEqual(names[to]);
            if (to !== at) seen.add(names[to]?.[0] ?? "none");
          }
        }
      }),
      { numRuns: 200 },
    );
    expect(seen.size).toBe(RELATIONS.length);
  });

  test("gives the names that a slow comparison with culori gives, but where rounding decides", () => {
    fc.assert(
      fc.property(anyPair, steps(0, 1), ([one, other], confidence) => {
        const [slowOne, slowOther] = [one, other].map(([l, a, b]) => slowColor({ mode: "oklab", l, a, b }));
        if (!slowOne || !slowOther) throw new Error("two colours make a pair");
        const names = namesInOneGo(colorPoint(one), [colorPoint(other)], confidence)[0];
        expect(roundedNames(slowFigures(slowOne, slowOther, confidence))).toContain(names?.join());
      }),
      { numRuns: 3000 },
    );
  });

  test("leaves the figures of a pair to be read later, the same as ever", () => {
    fc.assert(
      fc.property(anyPair, anyConfidence, (pair, confidence) => {
        const [one, other] = [colorPoint(pair[0]), colorPoint(pair[1])];
        const expected = relate(one, other, confidence);
        const code = namesOf(expected).map(codeOf).reduce(followedBy, NO_NAMES);
        const { relation, alternatives, wheelAngle, deltaE2000, uncertainty } = new LazyRelating(
          code,
          one,
          other,
          confidence,
        );
        expect({ relation, alternatives, wheelAngle, deltaE2000, uncertainty }).toEqual(expected);
      }),
    );
  });
});

describe("the figure that CIEDE2000 is never below", () => {
  const reference = differenceCiede2000();
  const lab65 = ([l, a, b]: Lab) => ({ mode: "lab65" as const, l, a, b });
  const least = (one: Lab, other: Lab) =>
    Math.sqrt(
      ciede2000SquaredAtLeast(...one, Math.hypot(one[1], one[2]), ...other, Math.hypot(other[1], other[2])),
    );
  /** Binary rounding of figures up to 200. */
  const ROUNDING = 1e-9;

  test("lies below culori's for any two colours, near or far, and for blues, where the formula turns hues most", () => {
    const part = steps(-130, 130);
    const anyLab = fc.tuple(steps(0, 100), part, part);
    const blue = fc.tuple(steps(0, 100), steps(-30, 40), steps(-110, 0));
    const nudge = fc.tuple(steps(-12, 12), steps(-12, 12), steps(-12, 12));
    const pair = fc.oneof(fc.tuple(anyLab, anyLab), fc.tuple(blue, blue), nearOf(anyLab), nearOf(blue));
    function nearOf(some: fc.Arbitrary<[number, number, number]>) {
      return fc.tuple(some, nudge).map(([[l, a, b], [dl, da, db]]): [Lab, Lab] => [
        [l, a, b],
        [Math.min(100, Math.max(0, l + dl)), a + da, b + db],
      ]);
    }
    fc.assert(
      fc.property(pair, ([one, other]) => {
        expect(least(one, other)).toBeLessThanOrEqual(reference(lab65(one), lab65(other)) + ROUNDING);
      }),
      { numRuns: 20000 },
    );
  });

  test("lies below the published ones (Sharma, Wu & Dalal 2005)", () => {
    for (const [one, other, published] of CIEDE2000_PAIRS) {
      expect(least(one, other)).toBeLessThanOrEqual(published + 0.00005);
    }
  });

  test("is reached by greys at half lightness, and tells most colours apart", () => {
    expect(least([40, 0, 0], [60, 0, 0])).toBeCloseTo(20, 12);
    const far = fc.sample(fc.tuple(anyPoint, anyPoint), { numRuns: 1000, seed: 1 });
    expect(far.filter(([a, b]) => least(a.lab, b.lab) > 10).length).toBeGreaterThan(800);
  });
});
