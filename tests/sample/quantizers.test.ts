import { describe, expect, it } from "vitest";
import { medianCut, weightedKMeans } from "../bench/quantizers.ts";
import { apart } from "./color-distance.ts";
import type { Paint } from "./painted.ts";

const PAINTS: readonly (readonly [Paint, number])[] = [
  [[200, 40, 40], 60],
  [[40, 60, 200], 30],
  [[240, 240, 240], 10],
];

/** 100 pixels of three colours, and a transparent one that must not count. */
function threeColors(): Uint8ClampedArray {
  const pixels = PAINTS.flatMap(([paint, count]) => Array.from({ length: count }, () => [...paint, 255]));
  return Uint8ClampedArray.from([...pixels, [0, 255, 0, 0]].flat());
}

/** Each colour must come out with its share: within a step of the histogram for the median cut, exactly for the k-means. */
describe.each([
  ["the median cut", medianCut, 3],
  ["the weighted k-means", weightedKMeans, 0.5],
] as const)("%s", (_, read, near) => {
  it("finds the colours of a picture that has only three, the largest first", () => {
    const swatches = read(threeColors());
    expect(swatches.map(({ share }) => share)).toEqual([0.6, 0.3, 0.1]);
    PAINTS.forEach(([paint], n) => {
      const swatch = swatches[n];
      expect(swatch && apart(swatch.oklab, paint)).toBeLessThan(near);
    });
  });
  it("finds nothing where nothing is opaque", () => {
    expect(read(new Uint8ClampedArray(40))).toEqual([]);
  });
});
