// `node tests/bench/sample-kinds.ts [KIND…]`: how near the sampler comes to the generated pictures of tests/sample/kinds, by kind of
// picture and by the skin tone of the person in it, from the pixels alone and with what the page says. A picture's truth is the
// OKLab median of the piece's own pixels, each dye for itself. `--scores` first: the score of each picture as JSON instead of tables.
import process, { argv } from "node:process";
import { pathToFileURL } from "node:url";
import { samplePixels } from "../../lib/sample/sample-pixels.ts";
import { SIDE } from "../sample/kinds/develop.ts";
import { kindPictures } from "../sample/kinds/kind-pictures.ts";
import type { KindPicture } from "../sample/kinds/shot.ts";
import { reliability, type Score, scoreSwatches, summarize } from "./measure-photos.ts";

/** How many of the worst pictures are listed. */
const WORST = 30;

export interface KindScore extends Score {
  readonly kind: string;
  /** Monk tone 1–10, null where nobody is in the picture. */
  readonly tone: number | null;
}

/** From the pixels alone, and with the page's slot and words. */
export type Way = "pixels" | "words";

function score(kind: string, picture: KindPicture, way: Way): KindScore {
  const { id, slot, text, tone, data, truth } = picture;
  const start = performance.now();
  const palette = samplePixels(data, SIDE, SIDE, way === "words" ? { slot, text } : { slot: null, text: "" });
  const ms = performance.now() - start;
  const { swatches, confidence } = palette;
  return { kind, tone, file: id, confidence, ms, ...scoreSwatches(swatches, truth) };
}

/** Scores pictures in one of the two ways. */
const scoreKinds = (pictures: ReadonlyMap<string, readonly KindPicture[]>, way: Way): KindScore[] =>
  [...pictures].flatMap(([kind, list]) => list.map((picture) => score(kind, picture, way)));

/** The scores of some kinds or all in both ways. */
export function allScores(kinds?: readonly string[]): Record<Way, KindScore[]> {
  const pictures = kindPictures(kinds);
  return { pixels: scoreKinds(pictures, "pixels"), words: scoreKinds(pictures, "words") };
}

const grouped = <Key extends string | number>(
  scores: readonly KindScore[],
  keyOf: (score: KindScore) => Key | null,
): [Key, KindScore[]][] => {
  const groups = new Map<Key, KindScore[]>();
  for (const one of scores) {
    const key = keyOf(one);
    if (key === null) continue;
    const list = groups.get(key);
    if (list) list.push(one);
    else groups.set(key, [one]);
  }
  return [...groups];
};

/** The figures of each kind, and of all. */
export const byKind = (scores: readonly KindScore[]) => ({
  ...Object.fromEntries(grouped(scores, ({ kind }) => kind).map(([kind, list]) => [kind, summarize(list)])),
  all: summarize(scores),
});

/** The figures of each skin tone, and how much the worst tone's median lies above the mean of the ten. */
export function byTone(scores: readonly KindScore[]) {
  const tones = grouped(scores, ({ tone }) => tone)
    .sort(([a], [b]) => a - b)
    .map(([tone, list]) => [`monk ${tone}`, summarize(list)] as const);
  const medians = tones.map(([, { median }]) => Number(median));
  const mean = medians.reduce((sum, median) => sum + median, 0) / medians.length;
  return {
    tones: Object.fromEntries(tones),
    worstAboveMean: Number((Math.max(...medians) - mean).toFixed(2)),
  };
}

/** All tables. */
export function measureKinds(kinds?: readonly string[]) {
  const { pixels, words } = allScores(kinds);
  return {
    pixels: { ...byTone(pixels), kinds: byKind(pixels) },
    words: { ...byTone(words), kinds: byKind(words) },
    reliability: reliability([...pixels, ...words]),
    worst: words.toSorted((a, b) => b.error - a.error).slice(0, WORST),
  };
}

function main(kinds: readonly string[]): void {
  const { pixels, words, reliability: table, worst } = measureKinds(kinds.length ? kinds : undefined);
  for (const [title, way] of [
    ["From the pixels alone", pixels],
    ["With slot and words", words],
  ] as const) {
    console.log(`\n${title}; the worst tone's median is ${way.worstAboveMean} above the mean of the ten`);
    console.table(way.kinds);
    console.table(way.tones);
  }
  console.table(table);
  for (const { file, tone, error, confidence } of worst)
    console.log(
      `${error.toFixed(1).padStart(6)}  confidence ${confidence.toFixed(2)}  ${file} ${tone ? `monk ${tone}` : ""}`,
    );
}

if (import.meta.url === pathToFileURL(argv[1] ?? "").href) {
  const [first, ...rest] = argv.slice(2);
  if (first === "--scores") process.stdout.write(JSON.stringify(allScores(rest.length ? rest : undefined)));
  else main(argv.slice(2));
}
