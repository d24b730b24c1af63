import { converter } from "culori";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ISCC_NAMES } from "../../lib/color/data/iscc-names.ts";
import { LEVELS, levelOf, nuanceOf, saturationOf, surfaceNuanceOf } from "../../lib/color/level.ts";
import { isNeutral, isTinted } from "../../lib/color/neutral.ts";
import { anyOklab, anyPoint, pointOf } from "./arbitraries.ts";

const CENTROIDS = ISCC_NAMES.split("|").map((row) => ({
  name: row.slice(7),
  point: pointOf(`#${row.slice(0, 6)}`),
}));

describe("neutrals among the ISCC-NBS centroids", () => {
  const grey = (name: string) => /(white|grey|black)$/.test(name);

  test("nearly all greys, whites and blacks are neutral, the rest tinted", () => {
    const rows = CENTROIDS.filter(({ name }) => grey(name));
    expect(rows).toHaveLength(33);
    expect(rows.filter(({ point }) => point.neutral).length).toBeGreaterThanOrEqual(30);
    expect(rows.filter(({ point }) => !point.neutral && !point.tinted)).toEqual([]);
  });

  test("of the coloured ones only blackish ones are neutral", () => {
    const taken = CENTROIDS.filter(({ name, point }) => !grey(name) && point.neutral).map(({ name }) => name);
    expect(taken.every((name) => /^(blackish|very|dark greyish)/.test(name))).toBe(true);
    expect(taken.length).toBeLessThanOrEqual(6);
  });

  test("the limit is wider near black and near white", () => {
    expect(isNeutral(0.5, 0.025)).toBe(false);
    expect(isNeutral(0.2, 0.025)).toBe(true);
    expect(isNeutral(0.95, 0.025)).toBe(true);
    expect(isTinted(0.5, 0.025)).toBe(true);
    expect(isTinted(0.2, 0.025)).toBe(false);
    expect(isTinted(0.5, 0.04)).toBe(false);
  });
});

describe("levels", () => {
  test("white, grey and black mixed into red make tint, tone and shade", () => {
    expect(pointOf("#e0102a").level).toBe("pure");
    expect(pointOf("#f0a0a4").level).toBe("tint");
    expect(pointOf("#96605f").level).toBe("tone");
    expect(pointOf("#4d0a10").level).toBe("shade");
    expect(pointOf("#777777").level).toBe("neutral");
  });

  test("never offer the level itself again, know only the five, and are neutral with the colour", () => {
    fc.assert(
      fc.property(anyPoint, ({ level, levelAlternatives, neutral }) => {
        expect(levelAlternatives).not.toContain(level);
        expect(new Set(levelAlternatives).size).toBe(levelAlternatives.length);
        expect(LEVELS).toEqual(expect.arrayContaining([level, ...levelAlternatives]));
        expect(level === "neutral").toBe(neutral);
      }),
      { numRuns: 1000 },
    );
  });

  test("near an edge both names are given", () => {
    for (const { point } of CENTROIDS) {
      for (const level of point.levelAlternatives) expect(levelOf(point.oklab).level).not.toBe(level);
    }
    expect(CENTROIDS.some(({ point }) => point.levelAlternatives.length > 0)).toBe(true);
    expect(CENTROIDS.some(({ point }) => point.levelAlternatives.length === 0)).toBe(true);
  });

  test("whiteness, blackness and colour are parts of one, and saturation is culori's Okhsl", () => {
    const toOkhsl = converter("okhsl");
    fc.assert(
      fc.property(anyOklab, (color) => {
        const { white, black } = nuanceOf(color);
        for (const part of [white, black, 1 - white - black]) expect(part).toBeGreaterThan(-1e-9);
        const reference = toOkhsl({ mode: "oklab", l: color[0], a: color[1], b: color[2] });
        if (color[0] > 0.1 && color[0] < 0.99)
          expect(saturationOf(color)).toBeCloseTo(Math.min(1, reference.s), 3);
      }),
    );
  });

  test("black counts for more around orange and yellow only, never for less, and not in white", () => {
    fc.assert(
      fc.property(anyOklab, (color) => {
        const plain = nuanceOf(color);
        const counted = surfaceNuanceOf(color);
        expect(counted.white).toBe(plain.white);
        expect(counted.black).toBeGreaterThanOrEqual(plain.black);
      }),
    );
    for (const blue of ["#0343df", "#5a3b6b", "#1a1c4b"]) {
      expect(surfaceNuanceOf(pointOf(blue).oklab)).toEqual(nuanceOf(pointOf(blue).oklab));
    }
    const mustard = pointOf("#d4a017").oklab;
    expect(surfaceNuanceOf(mustard).black).toBeGreaterThan(nuanceOf(mustard).black + 0.2);
    const white = pointOf("#ffffff").oklab;
    expect(surfaceNuanceOf(white).black).toBeCloseTo(0, 3);
  });
});
