import { execFile } from "node:child_process";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { beforeAll, describe, expect, it } from "vitest";
import type { Oklab } from "../../lib/color/oklab.ts";
import { type Palette, SURE } from "../../lib/sample/palette.ts";
import type { Photo } from "../../lib/sample/photo.ts";
import { samePhoto } from "../../lib/sample/same-photo.ts";
import { samplePixels } from "../../lib/sample/sample-pixels.ts";
import { sampleViews } from "../../lib/sample/sample-views.ts";
import type { ViewScore, viewScores } from "../bench/sample-views.ts";
import { apart } from "./color-distance.ts";
import { SIDE } from "./kinds/develop.ts";
import { viewedProducts } from "./kinds/view-pictures.ts";
import { box, everywhere, folds, type Layer, lit, type Paint, painted, shirt } from "./painted.ts";

const WHITE: Paint = [245, 245, 244];
const RED: Paint = [176, 32, 44];
const NAVY: Paint = [31, 40, 74];
const TEAL: Paint = [20, 110, 112];
const NO_HINTS = { slot: null, text: "" } as const;

const photo = (layers: readonly Layer[], options?: Parameters<typeof painted>[1]): Photo => ({
  data: painted(layers, options),
  width: options?.width ?? 96,
  height: options?.height ?? 96,
});
const alone = ({ data, width, height }: Photo): Palette => samplePixels(data, width, height, NO_HINTS);
const errorOf = ({ swatches: [first] }: Palette, paint: Paint): number =>
  first ? apart(first.oklab, paint) : 100;
const photoOf = ({ data }: { readonly data: Uint8ClampedArray }): Photo => ({
  data,
  width: SIDE,
  height: SIDE,
});
const apartInOklab = (a: Oklab, b: Oklab): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
/** The shirt by itself, `light` times as bright. */
const shot = (paint: Paint, light = 1): Photo =>
  photo([everywhere([214, 216, 220]), lit(shirt(paint), (x, y) => light * folds(x, y))]);

/** Two halves of one size: one photo cannot say which is the piece. */
const pair = photo([everywhere(WHITE), box(0.15, 0.25, 0.5, 0.75, RED), box(0.5, 0.25, 0.85, 0.75, NAVY)]);
const sure = photo([everywhere(WHITE), lit(shirt(RED), folds)]);

describe("sampleViews", () => {
  it("says of a single photo what samplePixels says", () => {
    expect(sampleViews(pair, [], NO_HINTS)).toEqual(alone(pair));
  });

  it.each([
    ["red", RED],
    ["navy", NAVY],
  ] as const)(
    "finds by another photo that the %s half is the piece, and says what it rests on",
    (_, paint) => {
      const palette = sampleViews(pair, [shot(paint)], NO_HINTS);
      expect(errorOf(palette, paint)).toBeLessThan(3);
      expect(palette.evidence).toEqual(["pixels", "photos"]);
      expect(palette.confidence).toBeGreaterThan(alone(pair).confidence);
    },
  );

  it("knows the cloth in another light", () => {
    for (const [paint, light] of [
      [NAVY, 0.8],
      [NAVY, 1.2],
      [RED, 0.9],
      [RED, 1.1],
    ] as const) {
      const palette = sampleViews(pair, [shot(paint, light)], NO_HINTS);
      expect(errorOf(palette, paint), `${light}`).toBeLessThan(3);
      expect(palette.evidence, `${light}`).toContain("photos");
    }
  });

  it("takes no colour from another photo that the first does not show, and is less sure then", () => {
    const other = sampleViews(sure, [shot(TEAL)], NO_HINTS);
    expect(errorOf(other, RED)).toBeLessThan(3);
    expect(other.evidence).toEqual(["pixels"]);
    expect(other.confidence).toBeLessThan(alone(sure).confidence);
    expect(other.confidence).toBeGreaterThan(0);
  });

  it("is not drawn off a sure answer by one photo that shows something else of the first", () => {
    const worn = photo([everywhere(WHITE), box(0.3, 0.7, 0.7, 1, NAVY), lit(shirt(RED), folds)]);
    expect(errorOf(alone(worn), RED)).toBeLessThan(3);
    for (const others of [[shot(NAVY)], [shot(NAVY), shot(RED)]])
      expect(errorOf(sampleViews(worn, others, NO_HINTS), RED)).toBeLessThan(3);
  });

  it("hears no witness twice: further renditions of the first photo leave the answer as it is", () => {
    const finer = photo(
      [everywhere(WHITE), box(0.15, 0.25, 0.5, 0.75, RED), box(0.5, 0.25, 0.85, 0.75, NAVY)],
      {
        width: 140,
        height: 140,
      },
    );
    expect(sampleViews(pair, [pair, finer], NO_HINTS)).toEqual(alone(pair));
  });

  it("leaves out photos in which nothing can be read", () => {
    const empty: Photo = { data: new Uint8ClampedArray(96 * 96 * 4), width: 96, height: 96 };
    expect(sampleViews(pair, [empty], NO_HINTS)).toEqual(alone(pair));
    expect(sampleViews(empty, [pair], NO_HINTS)).toEqual(alone(empty));
  });

  it("refuses sizes that do not fit, of any photo", () => {
    const short: Photo = { ...pair, width: 95 };
    const endless: Photo = { ...pair, width: Number.POSITIVE_INFINITY };
    for (const bad of [short, endless]) {
      expect(() => sampleViews(bad, [pair], NO_HINTS)).toThrow(RangeError);
      expect(() => sampleViews(pair, [bad], NO_HINTS)).toThrow(RangeError);
    }
  });
});

describe("samePhoto", () => {
  it("knows a photo in another size and with other grain, and no other photo", () => {
    const drawn = [everywhere(WHITE), lit(shirt(RED), folds)];
    expect(samePhoto(photo(drawn), photo(drawn, { width: 60, height: 80, noise: 3 }))).toBe(true);
    expect(samePhoto(photo(drawn), photo([everywhere(WHITE), lit(shirt(NAVY), folds)]))).toBe(false);
    expect(samePhoto(photo(drawn), photo([everywhere(WHITE), box(0.3, 0.3, 0.7, 0.8, RED)]))).toBe(false);
  });
});

describe("generated products", () => {
  const products = viewedProducts(["lace", "soft-shadow"]);
  const isPiece = (shown: string) => ["worn", "alone", "detail"].includes(shown);

  it("have one to three further photos, the same at each call, none of them the first one again", () => {
    expect(products.length).toBeGreaterThanOrEqual(20);
    expect(viewedProducts(["lace"])).toEqual(products.filter(({ kind }) => kind === "lace"));
    for (const { first, others, shown } of products) {
      expect(others.length, first.id).toBeGreaterThanOrEqual(1);
      expect(others.length, first.id).toBeLessThanOrEqual(3);
      expect(shown, first.id).toHaveLength(others.length);
      for (const other of others) expect(samePhoto(photoOf(first), photoOf(other)), other.id).toBe(false);
    }
  });

  it("show the first photo's cloth as another lamp leaves it, and in some photos something else", () => {
    const all = products.flatMap(({ first, others, shown }) =>
      others.map((other, i) => ({ first, other, shown: shown[i] ?? "" })),
    );
    const pieces = all.filter(({ shown }) => isPiece(shown));
    expect(pieces.length).toBeLessThan(all.length);
    expect(pieces.length).toBeGreaterThan(0.8 * all.length);
    const moved = pieces.flatMap(({ first, other }) => {
      const [label] = first.truth;
      const same = other.truth.find(({ group }) => group === label?.group);
      return label && same ? apartInOklab(label.color, same.color) : [];
    });
    expect(moved.length).toBe(pieces.length);
    expect(moved.toSorted((a, b) => a - b)[moved.length >> 1]).toBeLessThan(0.03);
  });
});

describe("the other photos of generated products", () => {
  const KINDS = ["among-others", "much-skin", "close-up", "small-goods", "model", "ghost"];
  let scores: ReturnType<typeof viewScores>;

  /** In Nodes of their own: pixel loops run three times as fast as under the test runner. */
  beforeAll(async () => {
    const file = fileURLToPath(new URL("../bench/sample-views.ts", import.meta.url));
    const halves = [KINDS.slice(0, 3), KINDS.slice(3)].map(async (kinds) => {
      const { stdout } = await promisify(execFile)(process.execPath, [file, "--scores", ...kinds], {
        maxBuffer: 1 << 26,
      });
      return JSON.parse(stdout) as ReturnType<typeof viewScores>;
    });
    const [one, two] = await Promise.all(halves);
    scores = {
      pixels: [...(one?.pixels ?? []), ...(two?.pixels ?? [])],
      words: [...(one?.words ?? []), ...(two?.words ?? [])],
    };
  }, 300_000);

  const near = ({ error }: { error: number }) => error <= 10;
  const gained = (list: readonly ViewScore[]) =>
    list.filter(({ one, all }) => !near(one) && near(all)).length;
  const lost = (list: readonly ViewScore[]) => list.filter(({ one, all }) => near(one) && !near(all)).length;
  const share = (part: number, all: number) => (100 * part) / all;

  it("put more right than wrong, by pixels many, by words the few that are left", () => {
    for (const way of ["pixels", "words"] as const) {
      expect(scores[way].length, way).toBeGreaterThan(60);
      expect(share(lost(scores[way]), scores[way].length), `${way}: lost`).toBeLessThanOrEqual(2);
      expect(gained(scores[way]), `${way}: gained`).toBeGreaterThan(lost(scores[way]));
    }
    expect(share(gained(scores.pixels), scores.pixels.length)).toBeGreaterThanOrEqual(5);
  });

  it("make answers sure that can be relied on", () => {
    for (const way of ["pixels", "words"] as const) {
      const made = scores[way].filter(({ one, all }) => one.confidence < SURE && all.confidence >= SURE);
      expect(made.length, way).toBeGreaterThanOrEqual(10);
      expect(share(made.filter(({ all }) => near(all)).length, made.length), way).toBeGreaterThanOrEqual(95);
    }
  });
});
