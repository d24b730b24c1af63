import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cubeRoot } from "../../lib/sample/cube-root.ts";
import { readPicture } from "../../lib/sample/picture.ts";
import { probabilityOf } from "../../lib/sample/probability-of.ts";
import { oklabOf } from "./color-distance.ts";
import type { Paint } from "./painted.ts";

/** Pixels of a size, each painted by its place. */
function pixels(width: number, height: number, paint: (x: number, y: number) => Paint): Uint8ClampedArray {
  const data = new Uint8ClampedArray(width * height * 4);
  for (let i = 0; i < width * height; i++) {
    data.set([...paint(i % width, Math.floor(i / width)), 255], i * 4);
  }
  return data;
}

describe("the tables in place of costly functions", () => {
  it("give a cube root within 0.04 %", () => {
    fc.assert(
      fc.property(fc.double({ min: 2 ** -13, max: 1, noNaN: true }), (value) => {
        expect(Math.abs(cubeRoot(value) / Math.cbrt(value) - 1)).toBeLessThan(0.0004);
      }),
    );
    expect(cubeRoot(0)).toBe(0);
  });
  it("give a probability within 0.005, certain from odds of 3,000 on", () => {
    fc.assert(
      fc.property(fc.double({ min: -20, max: 20, noNaN: true }), (odds) => {
        expect(Math.abs(probabilityOf(odds) - 1 / (1 + Math.exp(-odds)))).toBeLessThan(0.005);
      }),
    );
    expect([probabilityOf(-8), probabilityOf(8)]).toEqual([0, 1]);
  });
});

describe("a picture", () => {
  it("holds the OKLab of each pixel, as culori has it", () => {
    const byte = fc.integer({ min: 0, max: 255 });
    fc.assert(
      fc.property(fc.array(fc.tuple(byte, byte, byte), { minLength: 8, maxLength: 64 }), (colors) => {
        const paint = (x: number): Paint => colors[x] ?? [0, 0, 0];
        const picture = readPicture(pixels(colors.length, 1, paint), colors.length, 1);
        colors.forEach((color, i) => {
          const [l, a, b] = oklabOf(color);
          // Half of what one step of an 8-bit value changes.
          expect(picture.lightness[i]).toBeCloseTo(l * 100, 0);
          expect(Math.abs((picture.a[i] ?? 0) - a * 100)).toBeLessThan(0.2);
          expect(Math.abs((picture.b[i] ?? 0) - b * 100)).toBeLessThan(0.2);
        });
      }),
    );
  });
  it("has a sketch of half the size, whose pixels are means and whose bins are those of a pixel", () => {
    const stripes = (x: number): Paint => (x % 2 ? [20, 20, 20] : [240, 240, 240]);
    const { sketch, sketchOf, bin } = readPicture(pixels(96, 64, stripes), 96, 64);
    expect([sketch.width, sketch.height, sketch.count]).toEqual([48, 32, 1536]);
    const mean = (oklabOf([20, 20, 20])[0] + oklabOf([240, 240, 240])[0]) * 50;
    expect(sketch.lightness[500]).toBeCloseTo(mean, 0);
    expect([bin[0], bin[1]]).toContain(sketch.bin[0]);
    expect(sketchOf[97]).toBe(0);
    expect(sketchOf[2 * 96 + 2]).toBe(49);
  });
  it("keeps a small picture as it is, and leaves transparent pixels out", () => {
    const data = pixels(10, 10, (x) => [x * 20, 0, 0]);
    for (let i = 0; i < 10; i++) data[i * 40 + 3] = 0;
    const { sketch, bin, opaque } = readPicture(data, 10, 10);
    expect([sketch.width, sketch.height]).toEqual([10, 10]);
    expect(opaque).toBe(90);
    expect([bin[0], sketch.bin[0]]).toEqual([0, 0]);
    expect(sketch.bin[1]).toBe(bin[1]);
  });
});
