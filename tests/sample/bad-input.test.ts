import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { samplePixels } from "../../lib/sample/sample-pixels.ts";
import { everywhere, folds, lit, painted, shirt } from "./painted.ts";

const bytes = (width: number, height: number, value = 255) =>
  new Uint8ClampedArray(width * height * 4).fill(value);

describe("what cannot be read", () => {
  it.each([
    ["an empty picture", 0, 0, 255],
    ["no height", 9, 0, 255],
    ["a line", 1, 400, 255],
    ["a column", 400, 1, 255],
    ["a dot", 1, 1, 255],
    ["nothing but transparency", 96, 96, 0],
  ])("%s gives no swatch and a reason", (_, width, height, value) => {
    const palette = samplePixels(bytes(width, height, value), width, height);
    expect(palette).toMatchObject({ swatches: [], confidence: 0, evidence: [] });
    expect(palette.reason).toMatch(/^[A-Z].+\.$/);
  });

  it.each([
    ["NaN", Number.NaN, 96],
    ["infinite", 96, Number.POSITIVE_INFINITY],
    ["negative", -96, -96],
    ["broken", 95.5, 96],
    ["too large for the data", 97, 96],
    ["too small for the data", 95, 96],
  ])("a size that is %s is refused", (_, width, height) => {
    expect(() => samplePixels(bytes(96, 96), width, height)).toThrow(RangeError);
  });
});

describe("any picture", () => {
  const anyPicture = fc
    .record({ width: fc.integer({ min: 1, max: 40 }), height: fc.integer({ min: 1, max: 40 }) })
    .chain(({ width, height }) =>
      fc
        .uint8Array({ minLength: width * height * 4, maxLength: width * height * 4 })
        .map((data) => ({ data: new Uint8ClampedArray(data), width, height })),
    );

  it("gives shares that sum to 1 and finite colours, or a reason", () => {
    fc.assert(
      fc.property(anyPicture, ({ data, width, height }) => {
        const { swatches, confidence, reason } = samplePixels(data, width, height);
        expect(confidence).toBeGreaterThanOrEqual(0);
        expect(confidence).toBeLessThanOrEqual(1);
        if (swatches.length === 0) expect(reason).toBeTruthy();
        else expect(swatches.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 5);
        for (const { oklab } of swatches) expect(oklab.every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it("gives the same answer whatever was sampled before, and leaves the data alone", () => {
    const picture = painted([everywhere([230, 230, 228]), lit(shirt([60, 110, 80]), folds)]);
    const copy = picture.slice();
    const first = samplePixels(picture, 96, 96);
    fc.assert(
      fc.property(anyPicture, ({ data, width, height }) => {
        samplePixels(data, width, height, { slot: "shoes", text: "white red blue" });
        expect(samplePixels(picture, 96, 96)).toEqual(first);
      }),
      { numRuns: 20 },
    );
    expect(picture).toEqual(copy);
  });
});
