import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { relate } from "../../lib/color/relate.ts";
import { whyRelation } from "../../lib/color/why.ts";
import { anyPoint, onWheel, pointOf } from "./arbitraries.ts";

function why(one: string, other: string, names: readonly [string, string]): string {
  const [a, b] = [pointOf(one), pointOf(other)];
  return whyRelation(a, b, relate(a, b), names);
}

describe("why", () => {
  test("names both colours, the relation and its number", () => {
    expect(why("#e42833", "#1f9d55", ["red", "green"])).toBe(
      "Red and green are opposites, 176° apart on the artist's wheel.",
    );
    expect(why("black", "#e42833", ["black", "red"])).toMatch(
      /^Black and red go together because black is a neutral \(HyAB \d+\)\.$/,
    );
    expect(why("#e42833", "#efe433", ["red", "yellow"])).toContain("two of a triad");
  });

  test("never certifies a textile match, and gives the trade's figures beside it", () => {
    const said = why("#a13a3e", "#a33c40", ["brick", "brick"]);
    expect(said).toMatch(
      /^Both are brick and look like one shade in the photo \(ΔE00 \d\.\d, CMC\(2:1\) \d\.\d, grey scale [-\d]+\)/,
    );
    expect(said).toContain("no photo can certify a textile match");
  });

  test("admits what the picture leaves open", () => {
    const [a, b] = [onWheel(75), onWheel(75 + 166)];
    expect(whyRelation(a, b, relate(a, b), ["orange", "blue"])).toMatch(
      /Going by a photo, whose hues are sure to about \d+°, it may also be split-complementary\.$/,
    );
  });

  test("is one or two sentences whatever the colours, the same figures both ways", () => {
    const figures = (text: string) => text.match(/\d+(\.\d+)?/g);
    fc.assert(
      fc.property(anyPoint, anyPoint, (a, b) => {
        const said = whyRelation(a, b, relate(a, b), ["one", "other"]);
        expect(said).toMatch(/^[A-Z][^!]*\.$/);
        expect(said).not.toMatch(/NaN|undefined|null|Infinity/);
        expect(said.match(/\.( |$)/g)?.length).toBeLessThanOrEqual(2);
        expect(figures(whyRelation(b, a, relate(b, a), ["other", "one"]))).toEqual(figures(said));
      }),
      { numRuns: 500 },
    );
  });
});
