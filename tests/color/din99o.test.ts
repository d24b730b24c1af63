import { converter } from "culori";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { din99oFromLab } from "../../lib/color/din99o.ts";
import type { Lab } from "../../lib/color/lab.ts";
import { anyPoint } from "./arbitraries.ts";
import { CIEDE2000_PAIRS } from "./facts/ciede2000-pairs.ts";

function distance(one: Lab, other: Lab): number {
  const [l, a, b] = din99oFromLab(one);
  const [l2, a2, b2] = din99oFromLab(other);
  return Math.hypot(l - l2, a - a2, b - b2);
}

describe("DIN99o", () => {
  test("agrees with culori in lightness, chroma and every distance", () => {
    const reference = converter("dlab");
    const culori = ([l, a, b]: Lab) => reference({ mode: "lab65", l, a, b });
    fc.assert(
      fc.property(anyPoint, anyPoint, ({ lab: one }, { lab: other }) => {
        const p = culori(one);
        const q = culori(other);
        expect(din99oFromLab(one)[0]).toBeCloseTo(p.l, 9);
        expect(distance(one, other)).toBeCloseTo(Math.hypot(p.l - q.l, p.a - q.a, p.b - q.b), 9);
      }),
      { numRuns: 500 },
    );
  });

  test("is one hundred at white and nothing at black and grey", () => {
    expect(din99oFromLab([100, 0, 0])[0]).toBeCloseTo(100, 9);
    expect(din99oFromLab([0, 0, 0])).toEqual([0, 0, 0]);
    expect(din99oFromLab([50, 0, 0]).slice(1)).toEqual([0, 0]);
  });

  /** What a name rests on: the two disagree by a fraction, far less than two neighbouring blocks are apart. */
  test("keeps to CIEDE2000 within a fraction over the pairs of Sharma, Wu & Dalal 2005 that are no large differences", () => {
    const small = CIEDE2000_PAIRS.filter(([, , published]) => published < 10);
    const off = small.map(([one, other, published]) => distance(one, other) / published);
    expect(small.length).toBeGreaterThan(20);
    const logs = off.map((ratio) => Math.abs(Math.log2(ratio)));
    expect(logs.reduce((sum, log) => sum + log, 0) / logs.length).toBeLessThan(0.5);
  });
});
