import { describe, expect, it } from "vitest";
import { BARRIER_CAP, measureBarrier } from "../../lib/sample/barrier.ts";
import { confidenceOf } from "../../lib/sample/confidence-of.ts";
import { largestParts } from "../../lib/sample/largest-parts.ts";
import type { Picture } from "../../lib/sample/picture.ts";
import { isAmong, spanOf } from "../../lib/sample/span.ts";

/** A picture of one digit of lightness per pixel, × 2. */
function digits(rows: readonly string[]): Picture {
  const values = rows.join("").split("").map(Number);
  return {
    width: rows[0]?.length ?? 0,
    height: rows.length,
    count: values.length,
    opaque: values.length,
    lightness: Float32Array.from(values, (value) => value * 2),
    a: new Float32Array(values.length),
    b: new Float32Array(values.length),
    solid: new Uint8Array(values.length).fill(1),
  };
}

describe("the minimum barrier", () => {
  it("is the range of lightness on the best path, worked out by hand", () => {
    const picture = digits(["11111", "19991", "19391", "19991", "11111"]);
    const seed = Float32Array.from({ length: 25 }, (_, i) => {
      const x = i % 5;
      const y = Math.floor(i / 5);
      return x === 0 || y === 0 || x === 4 || y === 4 ? 0 : -1;
    });
    const barrier = new Float32Array(25);
    measureBarrier(picture, seed, barrier);
    expect(barrier[0]).toBe(0);
    expect(barrier[6]).toBe(16);
    // The middle is near the border in colour but lies behind the wall.
    expect(barrier[12]).toBe(16);
  });
  it("takes the way round a wall, and a dear seed costs what it says", () => {
    const picture = digits(["1111", "1991", "1111"]);
    const seed = new Float32Array(12).fill(-1);
    seed[0] = 5;
    const barrier = new Float32Array(12);
    measureBarrier(picture, seed, barrier);
    expect(barrier[11]).toBe(5);
    expect(barrier[5]).toBe(21);
  });
});

describe("a barrier beyond the cap", () => {
  it("is the cap", () => {
    const picture = digits(["0099"]);
    picture.lightness.set([0, 0, 90, 90]);
    const barrier = new Float32Array(4);
    measureBarrier(picture, Float32Array.from([0, -1, -1, -1]), barrier);
    expect(Array.from(barrier)).toEqual([0, 0, BARRIER_CAP, BARRIER_CAP]);
  });
});

describe("connected parts", () => {
  it("gives the weight of the largest part of each label", () => {
    const width = 12;
    const label = Int32Array.from("000000000001".split(""), Number);
    label[3] = label[4] = label[5] = label[6] = label[7] = label[8] = -1;
    const weights = new Float32Array(width).fill(0.5);
    const row = { ...digits(["0".repeat(width)]) };
    expect(largestParts(row, label, weights, 2)).toEqual([1.5, 0.5]);
  });
  it("lets parts hang together over a narrow gap, as stripes do", () => {
    const label = Int32Array.from("0011100".split(""), Number);
    expect(largestParts(digits(["0000000"]), label, new Float32Array(7).fill(1), 2)).toEqual([4, 3]);
  });
});

describe("the span of a set", () => {
  it("holds what has the set on all four sides, across a stripe without it", () => {
    const picture = digits(["00000", "01110", "00000", "01110", "00000"]);
    const span = spanOf(picture, (i) => picture.lightness[i] === 2);
    expect(isAmong(span, 2, 2)).toBe(true);
    expect(isAmong(span, 0, 2)).toBe(false);
    expect(isAmong(span, 2, 0)).toBe(false);
    expect(isAmong(span, 2, 4)).toBe(false);
  });
});

describe("confidence", () => {
  const clear = { rival: 0, close: 1, sure: 1, whole: 1, part: 1, said: null };
  it("is high without any doubt, and never certain", () => {
    expect(confidenceOf(clear)).toBeGreaterThan(0.9);
    expect(confidenceOf({ ...clear, said: 1 })).toBeLessThan(1);
  });
  it.each([
    ["a rival", { rival: 1 }],
    ["scattered colours", { close: 0.2 }],
    ["unsure pixels", { sure: 0.5 }],
    ["pieces", { whole: 0.3 }],
    ["other garments", { part: 0.4 }],
    ["words that say another colour", { said: 0 }],
  ])("falls below 0.8 with %s", (_, doubt) => {
    expect(confidenceOf({ ...clear, ...doubt })).toBeLessThan(0.8);
  });
  it("rises with words that agree", () => {
    const unsure = { ...clear, rival: 0.8 };
    expect(confidenceOf({ ...unsure, said: 1 })).toBeGreaterThan(confidenceOf(unsure));
  });
});
