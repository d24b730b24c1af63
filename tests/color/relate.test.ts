import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BANDS, hueNamesNear, hueRelation } from "../../lib/color/hue-relation.ts";
import { relate } from "../../lib/color/relate.ts";
import { relationsIn } from "../../lib/color/relation-code.ts";
import { RELATIONS } from "../../lib/color/relation-name.ts";
import { pairError, wheelError } from "../../lib/color/uncertainty.ts";
import { anyPoint, onWheel, pointOf } from "./arbitraries.ts";
import { CAUS_FABRICS } from "./facts/caus-fabrics.ts";

const fabric = (name: string) =>
  pointOf(CAUS_FABRICS.find((one) => one.name === name)?.hex ?? "no such fabric");
const namesNear = (angle: number, reach: number) => relationsIn(hueNamesNear(angle, reach));
const confidence = fc.double({ min: 0, max: 1, noNaN: true });

describe("bands", () => {
  test("cover 0–180 once, edge to edge", () => {
    expect(BANDS[0]?.from).toBe(0);
    expect(BANDS.at(-1)?.to).toBe(180);
    // The name of an angle is looked up by its whole degree.
    expect(BANDS.every(({ to }) => Number.isInteger(to))).toBe(true);
    for (const [index, { from }] of BANDS.slice(1).entries()) expect(from).toBe(BANDS[index]?.to);
  });

  test.each([
    [0, "monochromatic"],
    [15, "monochromatic"],
    [16, "analogous"],
    [74, "analogous"],
    [88, "none"],
    [120, "triadic"],
    [150, "split-complementary"],
    [161, "complementary"],
    [180, "complementary"],
  ] as const)("%i° is %s", (angle, relation) => {
    expect(hueRelation(angle)).toBe(relation);
  });

  test("the hedge holds the plain name, and exactly the bands within reach, likelier first", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 180, noNaN: true }),
        fc.integer({ min: 1, max: 30 }),
        (angle, reach) => {
          const names = namesNear(angle, reach);
          expect(names).toContain(hueRelation(angle));
          for (const { relation, from, to } of BANDS) {
            const gap = Math.max(0, from - angle, angle - to);
            if (gap > 0) expect(names.includes(relation)).toBe(gap < reach);
          }
        },
      ),
    );
    expect(namesNear(136, 10)).toEqual(["triadic", "split-complementary"]);
    expect(namesNear(144, 10)).toEqual(["split-complementary", "triadic"]);
    expect(namesNear(179, 10)).toEqual(["complementary"]);
  });
});

describe("a relation", () => {
  test("is the same whichever colour comes first", () => {
    fc.assert(
      fc.property(anyPoint, anyPoint, confidence, (a, b, sure) => {
        expect(relate(a, b, sure)).toEqual(relate(b, a, sure));
      }),
      { numRuns: 1000 },
    );
  });

  test("of a colour with itself is matching, without a hedge", () => {
    fc.assert(
      fc.property(anyPoint, (point) => {
        expect(relate(point, point)).toMatchObject({ relation: "matching", alternatives: [], deltaE2000: 0 });
      }),
    );
  });

  test("has a known name, and its hedge holds the name that its numbers alone would give", () => {
    fc.assert(
      fc.property(anyPoint, anyPoint, confidence, (a, b, sure) => {
        const { relation, alternatives, wheelAngle, deltaE2000 } = relate(a, b, sure);
        const names = [relation, ...alternatives];
        expect(RELATIONS).toEqual(expect.arrayContaining(names));
        expect(new Set(names).size).toBe(names.length);
        expect(names.length).toBeLessThanOrEqual(5);
        if (deltaE2000 <= 6) expect(relation).toBe("matching");
        else if (wheelAngle === null || a.tinted || b.tinted) expect(relation).toBe("with-neutral");
        else expect(names).toContain(hueRelation(wheelAngle));
        expect(names.includes("matching")).toBe(deltaE2000 <= 10);
      }),
      { numRuns: 1000 },
    );
  });

  test("turns with the wheel: only the angle between two hues counts", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359 }), fc.constantFrom(0, 45, 120, 150, 172), (start, angle) => {
        const { relation, alternatives, wheelAngle } = relate(
          onWheel(start, 0.75),
          onWheel(start + angle, 0.4, 0.08),
        );
        expect(wheelAngle).toBeCloseTo(angle, 6);
        expect([relation, ...alternatives]).toContain(hueRelation(angle));
      }),
    );
  });

  test("is never one of hues with a neutral", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 255 }), anyPoint, (grey, other) => {
        const neutral = pointOf(`rgb(${grey} ${grey} ${grey})`);
        const { relation, alternatives, wheelAngle } = relate(neutral, other);
        for (const name of [relation, ...alternatives]) expect(["matching", "with-neutral"]).toContain(name);
        expect(wheelAngle).toBeNull();
      }),
    );
    expect(relate(pointOf("black"), pointOf("#0a0a0a")).relation).toBe("matching");
    expect(relate(pointOf("black"), pointOf("white")).relation).toBe("with-neutral");
  });

  test("hedges more for a faint colour and for a sampler that is less sure", () => {
    const strong = onWheel(180);
    const faint = onWheel(180, 0.65, 0.045);
    expect(faint.wheelError.sure).toBeGreaterThan(strong.wheelError.sure);
    expect(pairError(strong, faint, 0.2)).toBeGreaterThan(pairError(strong, faint, 1));
    expect(pairError(strong, faint, Number.NaN)).toBe(pairError(strong, faint, 0));
    const orange = onWheel(75);
    expect(relate(orange, onWheel(75 + 166)).alternatives).toEqual(["split-complementary"]);
    expect(relate(orange, onWheel(75 + 176)).alternatives).toEqual([]);
    expect(relate(orange, onWheel(75 + 176), 0).alternatives).toEqual(["split-complementary"]);
  });

  /**
   * A Monte Carlo of ours over sRGB gives the 90th percentile of the wheel error at noise 0.01 as 47°, 22°, 11° and 10° for chroma below
   * 0.035, to 0.06, to 0.09 and above, over all hues.
   */
  test.each([
    [0.047, 17, 27],
    [0.075, 9, 15],
    [0.12, 6, 12],
  ])("at chroma %f the mean error lies between %i and %i degrees", (chroma, least, most) => {
    const errors = Array.from({ length: 360 }, (_, hue) => wheelError(chroma, hue).sure);
    const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
    expect(mean).toBeGreaterThan(least);
    expect(mean).toBeLessThan(most);
  });

  test("of one hue goes by shade: matching to 6, either to 10, monochromatic beyond", () => {
    const base = pointOf("#a13a3e");
    expect(relate(base, pointOf("#a33c40"))).toMatchObject({ relation: "matching", alternatives: [] });
    expect(relate(base, pointOf("#ad4448"))).toMatchObject({
      relation: "matching",
      alternatives: ["monochromatic"],
    });
    expect(relate(base, pointOf("#b84a4e")).alternatives).toContain("matching");
    const pink = relate(base, pointOf("#e0a0a2"));
    expect(pink.relation).toBe("monochromatic");
    expect(pink.alternatives).not.toContain("matching");
  });

  test.each([
    ["red", "green", "complementary"],
    ["yellow", "purple", "complementary"],
    ["blue", "orange", "complementary"],
    ["red", "yellow", "triadic"],
    ["orange", "purple", "triadic"],
    ["teal", "green", "analogous"],
    ["fuchsia", "red", "analogous"],
    ["pink", "wine", "monochromatic"],
    ["taupe", "red", "with-neutral"],
  ] as const)("fabrics called %s and %s are %s (Centore 2020)", (one, other, relation) => {
    expect(relate(fabric(one), fabric(other)).relation).toBe(relation);
  });
});
