import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { relate } from "../../lib/color/relate.ts";
import { schemeOf } from "../../lib/color/scheme.ts";
import { angleBetween } from "../../lib/color/wheel.ts";
import { anyPoint, onWheel, pointOf } from "./arbitraries.ts";

const NEUTRALS = ["black", "white", "#808080"].map(pointOf);

/** Degrees on the wheel, what they make, and how far the worst is from its arm. Art-school schemes after Itten 1961; common practice. */
const LOOKS = [
  [[40, 50], "monochromatic", 5],
  [[210, 240, 270], "analogous", 30],
  [[0, 180], "complementary", 0],
  [[0, 10, 172], "complementary", 9],
  [[0, 150], "split-complementary", 0],
  [[0, 150, 210], "split-complementary", 0],
  [[0, 120], "triadic", 0],
  [[0, 120, 240], "triadic", 0],
  [[5, 118, 250], "triadic", 12],
  [[0, 60, 180, 240], "tetradic", 0],
  [[0, 90, 180, 270], "tetradic", 0],
  [[0, 75, 180, 255], "tetradic", 7.5],
  [[3, 58, 178, 246], "tetradic", 5],
  [[0, 66, 180], "tetradic", 3],
  [[0, 88], "none", 0],
  [[0, 80, 120, 200], "none", 0],
  [[0, 60, 120, 180, 240, 300], "none", 0],
] as const;

/** Lightness differs from swatch to swatch, so that no two are one shade. */
const look = (angles: readonly number[], turn = 0) =>
  angles.map((angle, index) => onWheel(angle + turn, 0.8 - 0.1 * (index % 4), 0.09));

describe("the scheme of a look", () => {
  test.each(LOOKS)("of hues at %j is %s", (angles, scheme, off) => {
    const found = schemeOf(look(angles));
    expect(found.scheme).toBe(scheme);
    expect(Math.max(...found.off)).toBeLessThanOrEqual(off + 1e-6);
  });

  test.each(LOOKS)("%j stays the same through a turn of the wheel", (angles, scheme) => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359 }), (turn) => {
        const found = schemeOf(look(angles, turn));
        const plain = schemeOf(look(angles));
        expect(found.scheme).toBe(scheme);
        for (const [index, off] of found.off.entries())
          expect(off).toBeCloseTo(plain.off[index] ?? Number.NaN, 6);
        expect(found.missing).toHaveLength(plain.missing.length);
      }),
      { numRuns: 60 },
    );
  });

  test("does not hang on the order, and neutrals never break it", () => {
    fc.assert(
      fc.property(
        fc.array(anyPoint, { minLength: 1, maxLength: 6 }).chain((points) =>
          fc.record({
            points: fc.constant(points),
            order: fc.shuffledSubarray([...points.keys()], { minLength: points.length }),
            at: fc.nat({ max: points.length }),
            neutral: fc.constantFrom(...NEUTRALS),
          }),
        ),
        ({ points, order, at, neutral }) => {
          const plain = schemeOf(points);
          const shuffled = schemeOf(order.flatMap((index) => points.slice(index, index + 1)));
          expect(shuffled.scheme).toBe(plain.scheme);
          expect(shuffled.missing).toHaveLength(plain.missing.length);
          for (const [at, { from, to }] of shuffled.missing.entries()) {
            expect(angleBetween(from, plain.missing[at]?.from ?? Number.NaN)).toBeLessThan(1e-6);
            expect(angleBetween(to, plain.missing[at]?.to ?? Number.NaN)).toBeLessThan(1e-6);
          }
          for (const [place, index] of order.entries()) {
            expect(shuffled.off[place]).toBeCloseTo(plain.off[index] ?? Number.NaN, 6);
          }
          const withOne = schemeOf(points.toSpliced(at, 0, neutral));
          if (plain.scheme !== "matching") expect(withOne.scheme).toBe(plain.scheme);
          else expect(["matching", "with-neutral", "monochromatic", "analogous"]).toContain(withOne.scheme);
          expect(withOne.off[at]).toBe(0);
        },
      ),
      { numRuns: 500 },
    );
  });

  test("of two colours agrees with the plain name of their relation", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359 }), fc.integer({ min: 0, max: 180 }), (start, angle) => {
        fc.pre(![15, 75, 100, 140, 160].includes(angle));
        const [a, b] = [onWheel(start, 0.75), onWheel(start + angle, 0.45, 0.08)];
        const { relation, alternatives } = relate(a, b);
        expect([relation, ...alternatives]).toContain(schemeOf([a, b]).scheme);
      }),
    );
  });

  test("says where the third hue of a triad may be: every hue there completes it, none beyond", () => {
    const [red, yellow] = look([350, 95]);
    if (red === undefined || yellow === undefined) throw new Error("A look of two has two.");
    const { scheme, missing } = schemeOf([red, yellow]);
    expect(scheme).toBe("triadic");
    expect(missing).toHaveLength(1);
    const [range] = missing;
    if (range === undefined) throw new Error("Two of a triad miss one range.");
    for (let angle = 2; angle < 360; angle += 5) {
      const inside = angleBetween(angle, (range.from + range.to) / 2) <= (range.to - range.from) / 2;
      const third = onWheel(angle, 0.5, 0.09);
      const completes = [red, yellow].every((one) => {
        const apart = angleBetween(one.wheel ?? Number.NaN, third.wheel ?? Number.NaN);
        return apart >= 100 && apart <= 140;
      });
      expect(inside, `${angle}°`).toBe(completes);
      if (inside) expect(schemeOf([red, yellow, third])).toMatchObject({ scheme: "triadic", missing: [] });
    }
  });

  test("says both places of the missing arm of a split complement", () => {
    const { missing } = schemeOf(look([0, 150]));
    expect(missing.map(({ from, to }) => [Math.round(from), Math.round(to)])).toEqual([
      [200, 220],
      [290, 310],
    ]);
    for (const { from, to } of missing) {
      expect(schemeOf(look([0, 150, (from + to) / 2])).scheme).toBe("split-complementary");
    }
  });

  test.each([
    [[0, 66, 183], 245],
    [[0, 114, 177], 295],
    [[4, 88, 182], 270],
  ] as const)(
    "%j are three of a tetrad, which any hue of the range about %i° makes whole",
    (three, fourth) => {
      const { scheme, missing } = schemeOf(look(three));
      expect(scheme).toBe("tetradic");
      expect(missing).toHaveLength(1);
      const [{ from, to } = { from: 0, to: 0 }] = missing;
      expect(angleBetween((from + to) / 2, fourth)).toBeLessThan(5);
      expect(to - from).toBeGreaterThan(15);
      for (let part = 0.02; part < 1; part += 0.08) {
        const whole = schemeOf(look([...three, from + part * (to - from)]));
        expect(whole.missing).toEqual([]);
        expect(whole.scheme).not.toBe("none");
      }
      expect(schemeOf(look([...three, (from + to) / 2])).scheme).toBe("tetradic");
    },
  );

  test("is a tetrad only of four hues or more, a triad never whole of two", () => {
    const angle = fc.integer({ min: 0, max: 359 });
    fc.assert(
      fc.property(fc.array(angle, { minLength: 1, maxLength: 3 }), (angles) => {
        const { scheme, missing } = schemeOf(look(angles));
        if (scheme === "tetradic" || (scheme === "triadic" && angles.length < 3)) {
          expect(missing).toHaveLength(1);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test("of neutrals, of one colour with neutrals, of one colour, of nothing", () => {
    expect(schemeOf(NEUTRALS)).toMatchObject({ scheme: "with-neutral", center: null, off: [0, 0, 0] });
    expect(schemeOf([...NEUTRALS, onWheel(90)]).scheme).toBe("with-neutral");
    expect(schemeOf([onWheel(90)])).toMatchObject({ scheme: "matching", missing: [] });
    expect(schemeOf([])).toMatchObject({ scheme: "none", off: [], levels: [], saturationAgree: true });
  });

  test("reports saturation and levels beside it", () => {
    const apart = schemeOf([pointOf("#ff0000"), pointOf("#5f8f84")]);
    expect(apart.saturationAgree).toBe(false);
    const alike = schemeOf([pointOf("#e42833"), pointOf("#1f9d55")]);
    expect(alike).toMatchObject({ scheme: "complementary", saturationAgree: true, levels: ["pure", "pure"] });
  });
});
