// `npm run --silent bench`: tables on standard error, one JSON object on standard output. Every ratio is of things that
// were measured side by side in this run.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { entrySizes } from "../bench/entry-sizes.ts";
import { measureFolder, summarize } from "../bench/measure-photos.ts";
import { comparePageCost } from "../bench/page-cost.ts";
import { measureVerdicts } from "../bench/verdicts.ts";
import { buildExtension } from "../browser/build-extension.ts";
import { ensureChromium } from "../browser/ensure-chromium.ts";
import { importCloset } from "../browser/import-closet.ts";
import { BUILT_EXTENSION, openExtension } from "../browser/open-extension.ts";
import { openPictureDesk } from "../sample/picture-desk.ts";
import { startStore } from "../store/start-store.ts";
import { storePictures } from "../store/store-pictures.ts";

/** Tiles on the measured page. */
const TILES = 240;

/** Pictures that one sample is measured on, and runs over them. */
const PICTURES = 20;
const RUNS = 3;

/** Folders of labelled photos beside the repository; measured where they are there. */
const PHOTO_FOLDERS = ["../shared/photos", "../shared/store-pictures"];

const say = (title: string, rows: unknown) => {
  process.stderr.write(`\n${title}\n`);
  const table = new console.Console(process.stderr);
  table.table(rows);
};

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;

/** Time of one sample in a real browser, ms, on pictures of the invented store; and accuracy on labelled photos. */
async function measureSampler() {
  const folder = await storePictures();
  const files = readdirSync(folder).filter((file) => file.endsWith(".jpg"));
  const desk = await openPictureDesk();
  try {
    const times: number[] = [];
    for (let run = 0; run < RUNS; run++) {
      for (const file of files.slice(0, PICTURES)) {
        times.push((await desk.sample(readFileSync(join(folder, file)))).ms);
      }
    }
    const photos: Record<string, unknown> = {};
    for (const path of PHOTO_FOLDERS.filter((path) => existsSync(join(path, "labels.json")))) {
      const { pixels, words, middle } = await measureFolder(desk, path);
      photos[path] = {
        pixels: summarize(pixels),
        ...(words.length > 0 && { words: summarize(words) }),
        middleThird: summarize(middle),
      };
      say(`Labelled photos: ${path}`, photos[path]);
    }
    return { medianMs: median(times), samples: times.length, photos };
  } finally {
    await desk.close();
  }
}

async function measurePage() {
  const store = await startStore();
  const extension = await openExtension();
  try {
    const desk = await extension.openPage("closet.html");
    await importCloset(desk, "tests/store/demo-closet.json");
    return await comparePageCost(extension, desk, `${store.shopUrl}/tiles?n=${TILES}`, store.cdnUrl);
  } finally {
    await extension.close();
    await store.close();
  }
}

async function main(): Promise<void> {
  ensureChromium();
  buildExtension();
  const sizes = entrySizes(BUILT_EXTENSION);
  say("Bytes after gzip", sizes);
  const verdicts = measureVerdicts();
  say("Verdicts", { ...verdicts });
  const sampler = await measureSampler();
  say("One sample in Chromium, ms", { median: sampler.medianMs, samples: sampler.samples });
  const page = await measurePage();
  say(`A page of ${TILES} tiles, scrolled through`, page);
  process.stdout.write(`${JSON.stringify({ sizes, verdicts, sampler, page })}\n`);
}

main().catch((error: unknown) => {
  process.stderr.write(`${error instanceof Error ? error.message : error}\n`);
  process.exitCode = 1;
});
