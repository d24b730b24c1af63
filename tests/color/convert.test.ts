import { converter } from "culori";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ColorError } from "../../lib/color/color-error.ts";
import { colorPoint } from "../../lib/color/color-point.ts";
import { chromaOf, cssOf, hueOf, inSrgb, oklabFromRgb8, rgb8FromOklab } from "../../lib/color/convert.ts";
import { hexOf } from "../../lib/color/hex-of.ts";
import { labFromOklab } from "../../lib/color/lab.ts";
import { nuanceOf } from "../../lib/color/level.ts";
import type { Oklab } from "../../lib/color/oklab.ts";
import { parseColor } from "../../lib/color/parse-color.ts";
import { anyRgb } from "./arbitraries.ts";

const toOklab = converter("oklab");
const toLab65 = converter("lab65");
const toOklch = converter("oklch");

/** Numbers of any size in the shape of OKLab, far outside sRGB as well. */
const anyNumbers = fc.tuple(
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.double({ min: -0.5, max: 0.5, noNaN: true }),
  fc.double({ min: -0.5, max: 0.5, noNaN: true }),
);

const BROKEN: readonly Oklab[] = [
  [Number.NaN, 0, 0],
  [0.5, Number.POSITIVE_INFINITY, 0],
  [0.5, 0, Number.NEGATIVE_INFINITY],
];

describe("conversions", () => {
  test("agree with culori", () => {
    fc.assert(
      fc.property(anyRgb, ([r, g, b]) => {
        const color = oklabFromRgb8(r, g, b);
        const reference = { mode: "rgb" as const, r: r / 255, g: g / 255, b: b / 255 };
        const oklab = toOklab(reference);
        const lab = toLab65(reference);
        const lch = toOklch(reference);
        expect(color[0]).toBeCloseTo(oklab.l, 12);
        expect(color[1]).toBeCloseTo(oklab.a, 12);
        expect(color[2]).toBeCloseTo(oklab.b, 12);
        for (const [index, part] of [lab.l, lab.a, lab.b].entries()) {
          expect(labFromOklab(color)[index]).toBeCloseTo(part, 8);
        }
        expect(chromaOf(color)).toBeCloseTo(lch.c, 12);
        if (lch.c > 1e-3) expect(hueOf(color)).toBeCloseTo(lch.h ?? 0, 8);
      }),
      { numRuns: 500 },
    );
  });

  test("give every 8-bit colour back, by bytes, hex and CSS", () => {
    fc.assert(
      fc.property(anyRgb, ([r, g, b]) => {
        const color = oklabFromRgb8(r, g, b);
        expect(rgb8FromOklab(color)).toEqual([r, g, b]);
        expect(hexOf(parseColor(hexOf(color)))).toBe(hexOf(color));
        expect(rgb8FromOklab(parseColor(cssOf(color)))).toEqual([r, g, b]);
      }),
      { numRuns: 1000 },
    );
  });

  test("bring what sRGB cannot show inside, at the same lightness and hue", () => {
    const strong: Oklab = [0.7, 0.3, 0.2];
    expect(inSrgb(strong)).toBe(false);
    const shown = oklabFromRgb8(...rgb8FromOklab(strong));
    expect(shown[0]).toBeCloseTo(strong[0], 2);
    expect(Math.abs(hueOf(shown) - hueOf(strong))).toBeLessThan(1.5);
    expect(chromaOf(shown)).toBeLessThan(chromaOf(strong));
  });

  test("never give a number that is none", () => {
    fc.assert(
      fc.property(anyNumbers, (color) => {
        const point = colorPoint(color);
        const numbers = [...rgb8FromOklab(color), ...point.lab, point.chroma, point.hue, point.saturation];
        const { white, black } = nuanceOf(color);
        expect(
          [...numbers, white, black, point.wheel ?? 0].filter((number) => !Number.isFinite(number)),
        ).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });

  test.each(BROKEN)("refuse %f %f %f and name it", (...broken) => {
    for (const use of [rgb8FromOklab, cssOf, hexOf, colorPoint]) {
      expect(() => use(broken)).toThrow(ColorError);
      expect(() => use(broken)).toThrow(broken.join(" "));
    }
  });

  test("refuse bytes that are none, and a lightness beyond white", () => {
    for (const bad of [-1, 256, 1.5, Number.NaN])
      expect(() => oklabFromRgb8(0, bad, 0)).toThrow(`rgb 0 ${bad} 0`);
    expect(() => colorPoint([1.2, 0, 0])).toThrow("1.2 0 0");
  });
});
