import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { angleBetween, hueFromWheel, turnOf, WHEEL_KNOTS, wheelFromHue } from "../../lib/color/wheel.ts";

const angle = fc.double({ min: -720, max: 1080, noNaN: true });
const WAYS = [wheelFromHue, hueFromWheel] as const;

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
    for (const follow of WAYS) {
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

  test("keeps the order of any hues around the circle, both ways", () => {
    fc.assert(
      fc.property(
        angle,
        fc.double({ min: 1e-6, max: 359.9, noNaN: true }),
        fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }),
        (start, way, part) => {
          for (const follow of WAYS) {
            const whole = turnOf(follow(start + way) - follow(start));
            const first = turnOf(follow(start + way * part) - follow(start));
            expect(first).toBeGreaterThan(0);
            expect(first).toBeLessThan(whole);
          }
        },
      ),
      { numRuns: 1000 },
    );
  });

  test("is the same after any number of full turns, and always within one", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 360, noNaN: true }),
        fc.integer({ min: -20, max: 20 }),
        (start, turns) => {
          for (const follow of WAYS) {
            expect(angleBetween(follow(start + 360 * turns), follow(start))).toBeLessThan(1e-9);
            expect(follow(start)).toBeGreaterThanOrEqual(0);
            expect(follow(start)).toBeLessThan(360);
          }
        },
      ),
    );
  });

  test("has every knot where it is said to be, in a circle of twelve equal steps", () => {
    for (const [hue, wheel] of WHEEL_KNOTS) expect(angleBetween(wheelFromHue(hue), wheel)).toBeLessThan(1e-9);
    expect(WHEEL_KNOTS.map(([, wheel]) => wheel)).toEqual(Array.from({ length: 13 }, (_, step) => 30 * step));
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses %f", (broken) => {
    for (const use of [wheelFromHue, hueFromWheel, turnOf]) {
      expect(() => use(broken)).toThrow(`${broken}`);
    }
  });
});

describe("the angle between two hues", () => {
  test("is 0 from a hue to itself, the same both ways, and never more than half a turn", () => {
    fc.assert(
      fc.property(angle, angle, (a, b) => {
        expect(angleBetween(a, a)).toBe(0);
        expect(angleBetween(a, b)).toBe(angleBetween(b, a));
        expect(angleBetween(a, b)).toBeGreaterThanOrEqual(0);
        expect(angleBetween(a, b)).toBeLessThanOrEqual(180);
      }),
    );
  });

  test("does not change when the circle is turned, and is never longer than a way round", () => {
    fc.assert(
      fc.property(angle, angle, angle, (a, b, c) => {
        expect(angleBetween(a + c, b + c)).toBeCloseTo(angleBetween(a, b), 9);
        expect(angleBetween(a, b)).toBeLessThanOrEqual(angleBetween(a, c) + angleBetween(c, b) + 1e-9);
      }),
    );
  });
});
