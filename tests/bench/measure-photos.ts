// `node tests/bench/measure-photos.ts FOLDER…` (or PHOTO_FOLDERS, separated by `:`): how near the sampler comes to labelled
// photos. A folder holds pictures and labels.json: file → {patches: [{box, group, share}], tie?, slot?, title?}; the first
// patch belongs to the dominant colour, boxes are in percent. Nothing of a folder is kept.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { argv, env } from "node:process";
import { pathToFileURL } from "node:url";
import { colorPoint } from "../../lib/color/color-point.ts";
import { oklabFromRgb8 } from "../../lib/color/convert.ts";
import { deltaE2000 } from "../../lib/color/difference.ts";
import type { Oklab } from "../../lib/color/oklab.ts";
import type { Swatch } from "../../lib/sample/palette.ts";
import type { SampleHints } from "../../lib/sample/sample-pixels.ts";
import type { Slot } from "../../lib/words/slot.ts";
import { type Box, type Cut, openPictureDesk, type PictureDesk } from "../sample/picture-desk.ts";
import { medianCut, weightedKMeans } from "./quantizers.ts";

/** CIEDE2000 within which a colour counts as found. */
const NEAR = 10;
/** A group with this part of the dominant one's share may stand for it; groups and swatches below the other share are not judged. */
const NEARLY_DOMINANT = 0.65;
const JUDGED_SHARE = 0.15;
/** Confidence bands of the reliability table. */
const BANDS = [0, 0.2, 0.4, 0.6, 0.8];
/** How many of the worst pictures are listed. */
const WORST = 8;

interface Label {
  readonly patches: readonly { readonly box: Box; readonly group: number; readonly share: number }[];
  readonly tie?: boolean;
  readonly slot?: Slot;
  readonly title?: string;
}

interface Patch {
  readonly color: Oklab;
  readonly group: number;
  readonly share: number;
}

export interface Score {
  readonly file: string;
  readonly error: number;
  readonly confidence: number;
  readonly ms: number;
  readonly groups: number;
  readonly missed: number;
  readonly judged: number;
  readonly foreign: number;
}

const apart = (a: Oklab, b: Oklab): number => deltaE2000(colorPoint(a), colorPoint(b));

/** Error of the first swatch, groups without a swatch, and swatches without a group. */
export function scoreSwatches(swatches: readonly Swatch[], patches: readonly Patch[], tie = false) {
  const [main] = patches;
  const [first] = swatches;
  if (!main) throw new Error("A label needs at least one patch.");
  const rivals = patches.filter(
    ({ group, share }) => tie || group === main.group || share >= NEARLY_DOMINANT * main.share,
  );
  const groups = new Set(patches.filter(({ share }) => share >= JUDGED_SHARE).map(({ group }) => group));
  const found = [...groups].filter((wanted) =>
    patches.some(
      ({ group, color }) => group === wanted && swatches.some(({ oklab }) => apart(oklab, color) <= NEAR),
    ),
  );
  const judged = swatches.filter(({ share }) => share > JUDGED_SHARE);
  const foreign = judged.filter(({ oklab }) => patches.every(({ color }) => apart(oklab, color) > NEAR));
  return {
    error: first ? Math.min(...rivals.map(({ color }) => apart(first.oklab, color))) : 100,
    groups: groups.size,
    missed: groups.size - found.length,
    judged: judged.length,
    foreign: foreign.length,
  };
}

/** The naive way: the median of the middle third. */
function middleThird(data: Uint8ClampedArray): Swatch[] {
  const side = Math.sqrt(data.length / 4);
  const channels: number[][] = [[], [], []];
  for (let y = Math.floor(side / 3); y < (side * 2) / 3; y++) {
    for (let x = Math.floor(side / 3); x < (side * 2) / 3; x++) {
      channels.forEach((values, c) => void values.push(data[(y * side + x) * 4 + c] ?? 0));
    }
  }
  const [r = 0, g = 0, b = 0] = channels.map(
    (values) => values.sort((p, q) => p - q)[values.length >> 1] ?? 0,
  );
  return [{ oklab: oklabFromRgb8(r, g, b), share: 1 }];
}

/** Ways to a colour without any idea of what is cloth, for comparison, on the same 96 × 96 pixels. */
const NAIVE = { middle: middleThird, cut: medianCut, means: weightedKMeans };

export type Way = "pixels" | "words" | keyof typeof NAIVE;

/**
 * The same pictures cut and mirrored, so that an answer which hangs on a few pixels shows: where a change moves only these
 * figures or only those of the whole pictures, it moves nothing.
 */
const CUTS: readonly Cut[] = [0, 0.013, 0.027, 0.04].flatMap((left, x) =>
  [0, 0.01, 0.02, 0.03].map((top, y) => {
    const [right, bottom] = [(0.04 * ((x + y) % 4)) / 3, (0.03 * ((x + 2 * y) % 4)) / 3];
    return { left, top, right, bottom, mirrored: (x + y) % 2 === 1 };
  }),
);

const readLabels = (folder: string) =>
  Object.entries(JSON.parse(readFileSync(join(folder, "labels.json"), "utf8")) as Record<string, Label>);

/** Scores every labelled picture of a folder in each of its cuts. */
async function measureCuts(desk: PictureDesk, folder: string): Promise<Record<"pixels" | "words", Score[]>> {
  const scores: Record<"pixels" | "words", Score[]> = { pixels: [], words: [] };
  for (const [file, label] of readLabels(folder)) {
    const bytes = readFileSync(join(folder, file));
    const truth = await truthOf(desk, bytes, label);
    const score = async (way: "pixels" | "words", hints: SampleHints): Promise<void> => {
      for (const cut of CUTS) {
        const { palette, ms } = await desk.sample(bytes, hints, cut);
        const { confidence, swatches } = palette;
        scores[way].push({ file, confidence, ms, ...scoreSwatches(swatches, truth, label.tie) });
      }
    };
    await score("pixels", { slot: null, text: "" });
    if (label.slot || label.title)
      await score("words", { slot: label.slot ?? null, text: label.title ?? "" });
  }
  return scores;
}

/** The labelled colours of a picture, measured in it. */
async function truthOf(desk: PictureDesk, bytes: Uint8Array, { patches }: Label): Promise<Patch[]> {
  const boxes = patches.map(({ box }) => box);
  const medians = await desk.medians(bytes, boxes);
  return patches.map(({ group, share }, p) => {
    const [r = 0, g = 0, b = 0] = medians[p] ?? [];
    return { color: oklabFromRgb8(r, g, b), group, share };
  });
}

/** Scores every labelled picture of a folder in each way. */
export async function measureFolder(desk: PictureDesk, folder: string): Promise<Record<Way, Score[]>> {
  const scores: Record<Way, Score[]> = { pixels: [], words: [], middle: [], cut: [], means: [] };
  for (const [file, label] of readLabels(folder)) {
    const { tie, slot, title } = label;
    const bytes = readFileSync(join(folder, file));
    const truth = await truthOf(desk, bytes, label);
    const score = async (way: Way, hints?: SampleHints): Promise<void> => {
      const { palette, ms } = await desk.sample(bytes, hints);
      const { confidence } = palette;
      scores[way].push({ file, confidence, ms, ...scoreSwatches(palette.swatches, truth, tie) });
    };
    await score("pixels");
    if (slot || title) await score("words", { slot: slot ?? null, text: title ?? "" });
    const pixels = await desk.pixels(bytes);
    for (const [way, read] of Object.entries(NAIVE) as [keyof typeof NAIVE, typeof middleThird][]) {
      scores[way].push({ file, confidence: 0, ms: 0, ...scoreSwatches(read(pixels), truth, tie) });
    }
  }
  return scores;
}

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
const percent = (part: number, all: number): string => (all ? `${((100 * part) / all).toFixed(1)} %` : "–");

function quantile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? Number.NaN;
}

/** Figures of one way over a folder. */
export function summarize(scores: readonly Score[]) {
  const errors = scores.map(({ error }) => error);
  return {
    pictures: scores.length,
    median: quantile(errors, 0.5).toFixed(2),
    p90: quantile(errors, 0.9).toFixed(2),
    "within 10": percent(errors.filter((error) => error <= NEAR).length, errors.length),
    "colours found": percent(sum(scores.map((s) => s.groups - s.missed)), sum(scores.map((s) => s.groups))),
    "foreign swatches": percent(sum(scores.map((s) => s.foreign)), sum(scores.map((s) => s.judged))),
    "ms median": quantile(
      scores.map(({ ms }) => ms),
      0.5,
    ).toFixed(2),
  };
}

/** How often results of each confidence are within 10. */
export function reliability(scores: readonly Score[]) {
  return BANDS.map((from, band) => {
    const below = BANDS[band + 1] ?? Number.POSITIVE_INFINITY;
    const inside = scores.filter(({ confidence }) => confidence >= from && confidence < below);
    const near = inside.filter(({ error }) => error <= NEAR).length;
    return {
      confidence: `${from} and up`,
      pictures: inside.length,
      "within 10": percent(near, inside.length),
    };
  });
}

/** The figures of all ways over a folder, best first. */
export function tableOf({ pixels, words, middle, cut, means }: Record<Way, Score[]>) {
  return {
    ...(words.length && { "with words and slot": summarize(words) }),
    "from pixels alone": summarize(pixels),
    "median of the middle third": summarize(middle),
    "median cut, largest of 5": summarize(cut),
    "weighted k-means, largest of 128": summarize(means),
  };
}

async function main(folders: readonly string[]): Promise<void> {
  if (folders.length === 0) throw new Error("Usage: node tests/bench/measure-photos.ts FOLDER…");
  const desk = await openPictureDesk();
  try {
    for (const folder of folders) {
      const scores = await measureFolder(desk, folder);
      const best = scores.words.length ? scores.words : scores.pixels;
      console.log(`\n${folder}`);
      console.table(tableOf(scores));
      console.table(reliability([...scores.pixels, ...scores.words]));
      const cuts = await measureCuts(desk, folder);
      console.log(`Each in ${CUTS.length} cuts`);
      console.table({
        ...(cuts.words.length && { "with words and slot": summarize(cuts.words) }),
        "from pixels alone": summarize(cuts.pixels),
      });
      for (const { file, error, confidence } of [...best].sort((a, b) => b.error - a.error).slice(0, WORST)) {
        console.log(`${error.toFixed(1).padStart(6)}  confidence ${confidence.toFixed(2)}  ${file}`);
      }
    }
  } finally {
    await desk.close();
  }
}

if (import.meta.url === pathToFileURL(argv[1] ?? "").href) {
  const given = argv.slice(2);
  main(given.length ? given : (env.PHOTO_FOLDERS ?? "").split(":").filter(Boolean)).catch(
    (error: unknown) => {
      process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
      process.exitCode = 1;
    },
  );
}
