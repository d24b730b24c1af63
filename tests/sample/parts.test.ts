import { describe, expect, it } from "vitest";
import { BARRIER_CAP, measureBarrier } from "../../lib/sample/barrier.ts";
import { confidenceOf } from "../../lib/sample/confidence-of.ts";
import { findParts, partOf, partWeight } from "../../lib/sample/find-parts.ts";
import { clearOfGround, findGround, isEdge } from "../../lib/sample/ground.ts";
import { isBlend } from "../../lib/sample/is-blend.ts";
import type { Raster } from "../../lib/sample/raster.ts";
import { isAmong, spanOf } from "../../lib/sample/span.ts";

/** A picture of one digit of lightness per pixel, × 2. */
function digits(rows: readonly string[]): Raster {
  const values = rows.join("").split("").map(Number);
  return {
    width: rows[0]?.length ?? 0,
    height: rows.length,
    count: values.length,
    lightness: Float32Array.from(values, (value) => value * 2),
    a: new Float32Array(values.length),
    b: new Float32Array(values.length),
    bin: new Int32Array(values.length).fill(1),
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
  const partsOf = (count: number): number[] => Array.from(partOf.subarray(0, count));
  it("are told apart where a gap is wide, and weighed", () => {
    const label = Int32Array.from("000000000001".split(""), Number);
    label.fill(-1, 3, 9);
    findParts(digits(["0".repeat(12)]), label, new Float32Array(12).fill(0.75));
    expect(partsOf(12)).toEqual([0, 0, 0, -1, -1, -1, -1, -1, -1, 9, 9, 11]);
    expect([0, 9, 11].map((part) => partWeight[part])).toEqual([2.25, 1.5, 0.75]);
  });
  it("hang together over a narrow gap, as stripes do", () => {
    const label = Int32Array.from("0010100".split(""), Number);
    findParts(digits(["0000000"]), label, new Float32Array(7).fill(1));
    expect(partsOf(7)).toEqual([0, 0, 2, 0, 2, 0, 0]);
  });
  it("do not hang together through what is hardly cloth", () => {
    const label = new Int32Array(5);
    findParts(digits(["00000"]), label, Float32Array.from([1, 0.2, 0.2, 0.2, 1]));
    expect(partsOf(5)).toEqual([0, -1, -1, -1, 4]);
  });
});

describe("the ground beside the cloth", () => {
  // Lightness 0 … 18: cloth of 16 in the middle on a ground of 2.
  const sketch = digits(["11111", "18881", "18881", "18881", "11111"]);
  const cloth = Float32Array.from(sketch.lightness, (l) => (l > 10 ? 1 : 0));
  findGround(sketch, cloth);
  it("lies along the edge, not in the middle and not outside", () => {
    expect([6, 8, 16, 18].every(isEdge)).toBe(true);
    expect(isEdge(12)).toBe(false);
    expect(isEdge(0)).toBe(false);
  });
  it("leaves nothing of its own colour to the cloth, and all of a clear difference", () => {
    expect(clearOfGround(6, 2, 0, 0)).toBe(0);
    expect(clearOfGround(6, 7, 0, 0)).toBeCloseTo(0.5, 5);
    expect(clearOfGround(6, 16, 0, 0)).toBe(1);
  });
});

describe("a blend", () => {
  const white = { l: 95, a: 0, b: 0, mass: 50 };
  const navy = { l: 25, a: 0, b: -8, mass: 40 };
  it("lies between two larger colours", () => {
    expect(isBlend({ l: 60, a: 0, b: -4, mass: 10 }, [white, navy])).toBe(true);
  });
  it.each([
    ["holds more than one of them", { l: 60, a: 0, b: -4, mass: 45 }],
    ["lies off the way between them", { l: 60, a: 15, b: 8, mass: 10 }],
    ["is a shade of one of them", { l: 93, a: 0, b: 0, mass: 10 }],
  ])("is none where it %s", (_, color) => {
    expect(isBlend(color, [white, navy])).toBe(false);
  });
});

describe("the span of a set", () => {
  it("holds what has the set on all four sides, across a stripe without it", () => {
    const picture = digits(["00000", "01110", "00000", "01110", "00000"]);
    const span = spanOf(
      picture,
      Uint8Array.from(picture.lightness, (l) => (l === 2 ? 1 : 0)),
    );
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
