import { describe, expect, it } from "vitest";
import type { Oklab } from "../../lib/color/oklab.ts";
import { reliability, type Score, scoreSwatches, summarize } from "../bench/measure-photos.ts";

const RED: Oklab = [0.5, 0.17, 0.08];
const NAVY: Oklab = [0.28, 0, -0.07];
const WHITE: Oklab = [0.97, 0, 0];

describe("the score of a picture", () => {
  const patches = [
    { color: RED, group: 0, share: 0.6 },
    { color: NAVY, group: 1, share: 0.3 },
  ];
  it("is nothing for the right colours", () => {
    const swatches = [
      { oklab: RED, share: 0.6 },
      { oklab: NAVY, share: 0.4 },
    ];
    expect(scoreSwatches(swatches, patches)).toEqual({
      error: 0,
      groups: 2,
      missed: 0,
      judged: 2,
      foreign: 0,
    });
  });
  it("does not take a small group for the dominant one, but a nearly equal one", () => {
    const navy = [{ oklab: NAVY, share: 1 }];
    expect(scoreSwatches(navy, patches).error).toBeGreaterThan(30);
    expect(scoreSwatches(navy, patches, true).error).toBe(0);
    const equal = patches.map((patch) => ({ ...patch, share: 0.45 }));
    expect(scoreSwatches(navy, equal).error).toBe(0);
  });
  it("counts what is missing and what is foreign", () => {
    const swatches = [
      { oklab: RED, share: 0.5 },
      { oklab: WHITE, share: 0.4 },
      { oklab: WHITE, share: 0.1 },
    ];
    expect(scoreSwatches(swatches, patches)).toMatchObject({ missed: 1, judged: 2, foreign: 1 });
    expect(scoreSwatches([], patches)).toMatchObject({ error: 100, missed: 2, judged: 0 });
  });
});

describe("the summary", () => {
  const score = (error: number, confidence: number): Score => ({
    file: "",
    error,
    confidence,
    ms: 1,
    groups: 1,
    missed: error > 10 ? 1 : 0,
    judged: 1,
    foreign: 0,
  });
  const scores = [score(1, 0.9), score(2, 0.9), score(3, 0.7), score(40, 0.3)];
  it("gives the middle, the ninth tenth and the part within 10", () => {
    expect(summarize(scores)).toMatchObject({
      pictures: 4,
      median: "3.00",
      p90: "40.00",
      "within 10": "75.0 %",
    });
  });
  it("tells how far a confidence can be trusted", () => {
    const table = reliability(scores);
    expect(table.at(-1)).toEqual({ confidence: "0.8 and up", pictures: 2, "within 10": "100.0 %" });
    expect(table[1]).toEqual({ confidence: "0.2 and up", pictures: 1, "within 10": "0.0 %" });
  });
});
