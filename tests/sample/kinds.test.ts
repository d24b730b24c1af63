import { execFile } from "node:child_process";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { beforeAll, describe, expect, it } from "vitest";
import { byTone, type KindScore, type Way } from "../bench/sample-kinds.ts";
import { DYES } from "../store/dyes.ts";
import { apart } from "./color-distance.ts";
import { coverPolygon } from "./kinds/cover-polygon.ts";
import { SIDE } from "./kinds/develop.ts";
import { FLOORS, SURE_FLOOR, TONE_FLOOR, UNFAIR } from "./kinds/floors.ts";
import { kindPictures, kindShots } from "./kinds/kind-pictures.ts";
import type { Paint } from "./painted.ts";

const KINDS = kindShots();

describe("the generated pictures", () => {
  const shots = new Map([...KINDS].map(([kind, scenes]) => [kind, scenes.flatMap((scene) => scene())]));

  it("are at least twenty of each kind", () => {
    expect(shots.size).toBeGreaterThanOrEqual(14);
    for (const [kind, list] of shots) expect(list.length, kind).toBeGreaterThanOrEqual(20);
  });

  it("show every skin tone in the same scenes, and every tone with at least six kinds of hair", () => {
    for (const [kind, list] of shots) {
      const counts = Array.from({ length: 10 }, (_, t) => list.filter(({ tone }) => tone === t + 1).length);
      expect(new Set(counts).size, `${kind}: ${counts}`).toBe(1);
    }
    const people = [...shots.values()].flat().filter(({ tone }) => tone !== null);
    for (let tone = 1; tone <= 10; tone++) {
      const hairs = new Set(people.filter((one) => one.tone === tone).map(({ hair }) => hair));
      expect(hairs.size, `monk ${tone}`).toBeGreaterThanOrEqual(6);
    }
  });

  const taken = kindPictures(["mesh", "several-views"]);

  it("are the same at each call", () => {
    expect(taken.size).toBe(2);
    expect(kindPictures(["several-views"]).get("several-views")).toEqual(taken.get("several-views"));
  });

  it("are whole pictures, each with labels that make up the piece", () => {
    for (const { id, data, truth } of [...taken.values()].flat()) {
      expect(data.length, id).toBe(SIDE * SIDE * 4);
      expect(truth.length, id).toBeGreaterThan(0);
      const shares = truth.reduce((sum, { share }) => sum + share, 0);
      expect(shares, id).toBeGreaterThan(0.9);
      expect(shares, id).toBeLessThanOrEqual(1.0001);
    }
  });

  it("show their dye as a lamp leaves it: the label of a plain cloth stays near its dye", () => {
    const mint: Paint = [0xa8, 0xda, 0xbe];
    expect(DYES.mint).toBe("#a8dabe");
    const tees = (taken.get("several-views") ?? []).slice(0, 10);
    expect(tees.length).toBe(10);
    for (const { id, truth } of tees) {
      const [label] = truth;
      if (!label) throw new Error(`${id} has no label.`);
      expect(apart(label.color, mint), id).toBeLessThan(8);
    }
  });
});

describe("coverPolygon", () => {
  const frame = { left: 0, top: 0, width: 10, height: 10 };
  const areaOf = (...polygons: readonly (readonly (readonly [number, number])[])[]): number => {
    const cover = new Float32Array(100);
    for (const polygon of polygons) coverPolygon(polygon, frame, cover);
    return cover.reduce((sum, part) => sum + part, 0);
  };

  it("covers as much as the polygon's area, whichever way it runs", () => {
    const square = [
      [1.25, 1.25],
      [6.75, 1.25],
      [6.75, 6.75],
      [1.25, 6.75],
    ] as const;
    expect(areaOf(square)).toBeCloseTo(5.5 * 5.5, 4);
    expect(areaOf(square.toReversed())).toBeCloseTo(5.5 * 5.5, 4);
    expect(
      areaOf([
        [1, 1],
        [9, 1],
        [1, 9],
      ]),
    ).toBeCloseTo(32, 4);
  });

  it("does not count twice what two polygons share, and cuts off what lies outside", () => {
    const square = [
      [2, 2],
      [8, 2],
      [8, 8],
      [2, 8],
    ] as const;
    expect(areaOf(square, square)).toBeCloseTo(36, 4);
    expect(
      areaOf([
        [-5, -5],
        [5, -5],
        [5, 5],
        [-5, 5],
      ]),
    ).toBeCloseTo(25, 4);
  });
});

const scores: Record<Way, KindScore[]> = { pixels: [], words: [] };

/** Scores in a Node of its own: its pixel loops run three times as fast as under the test runner. */
async function scoresOf(kinds: readonly string[]): Promise<Record<Way, KindScore[]>> {
  const file = fileURLToPath(new URL("../bench/sample-kinds.ts", import.meta.url));
  const { stdout } = await promisify(execFile)(process.execPath, [file, "--scores", ...kinds], {
    maxBuffer: 1 << 26,
  });
  return JSON.parse(stdout) as Record<Way, KindScore[]>;
}

beforeAll(async () => {
  const halves = [0, 1].map((half) => [...KINDS.keys()].filter((_, i) => i % 2 === half));
  for (const { pixels, words } of await Promise.all(halves.map(scoresOf))) {
    scores.pixels.push(...pixels);
    scores.words.push(...words);
  }
}, 600_000);

const WAYS: readonly Way[] = ["pixels", "words"];

const medianOf = (list: readonly KindScore[]): number =>
  list.map(({ error }) => error).toSorted((a, b) => a - b)[list.length >> 1] ?? Number.NaN;
const within10Of = (list: readonly KindScore[]): number =>
  (100 * list.filter(({ error }) => error <= 10).length) / list.length;

describe("the sampler on the generated pictures", () => {
  it("has a floor for every kind, and no floor without pictures", () => {
    expect(Object.keys(FLOORS).toSorted()).toEqual([...KINDS.keys()].toSorted());
  });

  it.each(Object.keys(FLOORS))("reads the kind %s no worse than it did", (kind) => {
    for (const way of WAYS) {
      const list = scores[way].filter((score) => score.kind === kind);
      const floor = FLOORS[kind]?.[way];
      expect(medianOf(list), `${way}: median`).toBeLessThanOrEqual(floor?.median ?? Number.NaN);
      expect(within10Of(list), `${way}: within 10`).toBeGreaterThanOrEqual(floor?.within10 ?? Number.NaN);
    }
  });

  it.each([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])("reads clothes on Monk tone %i no worse than it did", (tone) => {
    for (const way of WAYS) {
      const list = scores[way].filter((score) => score.tone === tone);
      expect(medianOf(list), `${way}: median`).toBeLessThanOrEqual(TONE_FLOOR[way].median);
      expect(within10Of(list), `${way}: within 10`).toBeGreaterThanOrEqual(TONE_FLOOR[way].within10);
    }
  });

  it("reads no skin tone's clothes worse than the mean of the ten by more than 1.0", () => {
    for (const way of WAYS) {
      const { worstAboveMean } = byTone(scores[way]);
      expect(worstAboveMean, way).toBeGreaterThanOrEqual(0);
      expect(worstAboveMean, way).toBeLessThanOrEqual(UNFAIR);
    }
  });

  it("is right where it claims to be sure", () => {
    for (const way of WAYS) {
      const sure = scores[way].filter(({ confidence }) => confidence >= 0.8);
      expect(sure.length, way).toBeGreaterThan(50);
      expect(within10Of(sure), way).toBeGreaterThanOrEqual(SURE_FLOOR);
    }
  });
});
