import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cubeRoot } from "../../lib/sample/cube-root.ts";
import { readPicture } from "../../lib/sample/picture.ts";
import { oklab, readOklab, STEPS_OF_BYTE } from "../../lib/sample/pixel-oklab.ts";
import { ODDS_STEPS, probabilityOf } from "../../lib/sample/probability-of.ts";
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

const byte = fc.integer({ min: 0, max: 255 });

describe("the tables in place of costly functions", () => {
  it("give a cube root within 0.04 %", () => {
    fc.assert(
      fc.property(fc.double({ min: 2 ** -13, max: 1, noNaN: true }), (value) => {
        expect(Math.abs(cubeRoot(value) / Math.cbrt(value) - 1)).toBeLessThan(0.0004);
      }),
    );
    expect(cubeRoot(0)).toBe(0);
  });
  it("give the OKLab of a colour as culori has it", () => {
    fc.assert(
      fc.property(fc.tuple(byte, byte, byte), (color) => {
        const [l, a, b] = oklabOf(color);
        readOklab(STEPS_OF_BYTE * color[0], STEPS_OF_BYTE * color[1], STEPS_OF_BYTE * color[2]);
        // Less than half of what one step of an 8-bit value changes.
        expect(Math.abs((oklab[0] ?? 0) - l * 100)).toBeLessThan(0.15);
        expect(Math.abs((oklab[1] ?? 0) - a * 100)).toBeLessThan(0.2);
        expect(Math.abs((oklab[2] ?? 0) - b * 100)).toBeLessThan(0.2);
      }),
      { examples: [[[0, 0, 1]], [[1, 0, 0]], [[0, 1, 0]], [[0, 0, 0]]] },
    );
  });
  it("give a probability within 0.0004, certain from odds of 3,000 on", () => {
    fc.assert(
      fc.property(fc.integer({ min: -28 * ODDS_STEPS, max: 28 * ODDS_STEPS }), (steps) => {
        expect(Math.abs(probabilityOf(steps) - 1 / (1 + Math.exp(-steps / ODDS_STEPS)))).toBeLessThan(0.0004);
      }),
    );
    expect([probabilityOf(-8 * ODDS_STEPS), probabilityOf(8 * ODDS_STEPS)]).toEqual([0, 1]);
  });
});

describe("a picture", () => {
  it("holds the colour of each pixel of a small picture", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(byte, byte, byte), { minLength: 8, maxLength: 48 }), (colors) => {
        const paint = (x: number): Paint => colors[x] ?? [0, 0, 0];
        const { sketch, count } = readPicture(pixels(colors.length, 1, paint), colors.length, 1);
        expect([sketch.count, count]).toEqual([colors.length, 4 * colors.length]);
        colors.forEach(
          (color, i) => void expect(sketch.lightness[i]).toBeCloseTo(oklabOf(color)[0] * 100, 0),
        );
      }),
    );
  });
  it("has a sketch of half the size, whose pixels are means and whose bins are those of a pixel", () => {
    const stripes = (x: number): Paint => (x % 2 ? [20, 20, 20] : [240, 240, 240]);
    const { sketch, count, even, lightness, bin } = readPicture(pixels(96, 64, stripes), 96, 64);
    expect([sketch.width, sketch.height, sketch.count, count]).toEqual([48, 32, 1536, 96 * 64]);
    const [light, dark] = [oklabOf([240, 240, 240])[0] * 100, oklabOf([20, 20, 20])[0] * 100];
    expect(sketch.lightness[500]).toBeCloseTo((light + dark) / 2, 0);
    expect([bin[0], bin[1]]).toContain(sketch.bin[0]);
    expect(even[500]).toBe(0);
    for (const [i, l] of [light, dark, light, dark].entries())
      expect(lightness[4 * 500 + i]).toBeCloseTo(l, 0);
  });
  it("reads pixels as one where they differ by noise alone, in each channel, up and down", () => {
    const oddColumns = (channel: number, value: number) =>
      pixels(96, 96, (x) => {
        const odd = (c: number): number => (x % 2 && c === channel ? value : 128);
        return [odd(0), odd(1), odd(2)];
      });
    for (const channel of [0, 1, 2]) {
      for (const value of [125, 131]) {
        const { sketch, even } = readPicture(oddColumns(channel, value), 96, 96);
        expect(even[500]).toBe(1);
        expect(sketch.lightness[500]).toBeCloseTo(oklabOf([128, 128, 128])[0] * 100, 0);
      }
      for (const value of [122, 134]) {
        expect(readPicture(oddColumns(channel, value), 96, 96).even[500]).toBe(0);
      }
    }
  });
  it("takes each pixel of a small picture four times, and leaves transparent ones out", () => {
    const data = pixels(10, 10, (x) => [x * 20, 0, 0]);
    for (let i = 0; i < 10; i++) data[i * 40 + 3] = 0;
    const { sketch, opaque, count } = readPicture(data, 10, 10);
    expect([sketch.width, sketch.height]).toEqual([10, 10]);
    expect([opaque, count]).toEqual([360, 400]);
    expect(sketch.bin[0]).toBe(0);
    expect(sketch.bin[1]).toBeGreaterThan(0);
  });
  it("reads bytes that lie anywhere in their buffer", () => {
    const data = pixels(10, 10, (x, y) => [x * 20, y * 20, 50]);
    const shifted = new Uint8ClampedArray(data.length + 1).subarray(1);
    shifted.set(data);
    const expected = Array.from(readPicture(data, 10, 10).sketch.lightness.subarray(0, 100));
    expect(Array.from(readPicture(shifted, 10, 10).sketch.lightness.subarray(0, 100))).toEqual(expected);
  });
});
