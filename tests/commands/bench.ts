// `npm run --silent bench`: tables on standard error, one JSON object on standard output. Every ratio is of things that
// were measured side by side in this run.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { entrySizes } from "../bench/entry-sizes.ts";
import { measureFolder, reliability, tableOf } from "../bench/measure-photos.ts";
import { measureAccuracy } from "../bench/page-accuracy.ts";
import { comparePageCost } from "../bench/page-cost.ts";
import { measureReading } from "../bench/page-reading.ts";
import { raceSamplers } from "../bench/race-samplers.ts";
import { measureRelations } from "../bench/relations.ts";
import { measureKinds } from "../bench/sample-kinds.ts";
import { measureViews } from "../bench/sample-views.ts";
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

/** Pictures that the sampler is timed on. */
const PICTURES = 20;

/** Folders of labelled photos beside the repository; measured where they are there. */
const PHOTO_FOLDERS = ["../shared/photos", "../shared/store-pictures"];

const say = (title: string, rows: unknown) => {
  process.stderr.write(`\n${title}\n`);
  const table = new console.Console(process.stderr);
  table.table(rows);
};

/** Time of the sampler beside two quantizers on pictures of the invented store; and accuracy on labelled photos. */
async function measureSampler() {
  const folder = await storePictures();
  const files = readdirSync(folder).filter((file) => file.endsWith(".jpg"));
  const desk = await openPictureDesk();
  try {
    const pictures: Uint8ClampedArray[] = [];
    for (const file of files.slice(0, PICTURES))
      pictures.push(await desk.pixels(readFileSync(join(folder, file))));
    const race = await raceSamplers(pictures);
    say("One picture of 96 × 96 in Chromium, ms, and the sampler's time against the others'", race);
    const photos: Record<string, unknown> = {};
    for (const path of PHOTO_FOLDERS.filter((path) => existsSync(join(path, "labels.json")))) {
      const scores = await measureFolder(desk, path);
      const sureness = reliability([...scores.pixels, ...scores.words]);
      photos[path] = { ways: tableOf(scores), reliability: sureness };
      say(`Labelled photos: ${path}`, tableOf(scores));
      say("How far a confidence can be trusted", sureness);
    }
    return { race, photos };
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
  const relations = measureRelations();
  say("Relations: packed numbers beside culori's objects", { ...relations });
  const verdicts = measureVerdicts();
  say("Verdicts", { ...verdicts });
  const sampler = await measureSampler();
  const kinds = measureKinds();
  for (const way of ["pixels", "words"] as const) {
    say(`Generated pictures by kind, from ${way}`, kinds[way].kinds);
    say(
      `By skin tone; the worst is ${kinds[way].worstAboveMean} above the mean of the ten`,
      kinds[way].tones,
    );
  }
  const views = measureViews();
  say("Generated products, from the first photo and with the other photos of each", views);
  const reading = await measureReading();
  say("Finding the products of a page, ms on its main thread", { ...reading, added: undefined });
  say("The same in tiles that it adds", reading.added);
  const accuracy = await measureAccuracy();
  say("Products found on the invented pages", accuracy);
  const page = await measurePage();
  say(`A page of ${TILES} tiles, scrolled through`, page);
  process.stdout.write(
    `${JSON.stringify({ sizes, relations, verdicts, sampler, kinds, views, reading, accuracy, page })}\n`,
  );
}

main().catch((error: unknown) => {
  process.stderr.write(`${error instanceof Error ? error.message : error}\n`);
  process.exitCode = 1;
});
