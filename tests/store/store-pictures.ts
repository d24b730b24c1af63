import { createHash } from "node:crypto";
import { globSync, mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { bundle } from "../browser/bundle.ts";
import { openBrowser } from "../browser/open-browser.ts";
import { PICTURES, type Picture } from "./catalogue.ts";
import type { PictureTruth } from "./picture-truth.ts";
import { CUTS } from "./studio/recipe.ts";
import type { Taken } from "./studio/take-picture.ts";

const HERE = dirname(fileURLToPath(import.meta.url));
const CACHE = join(HERE, "../../.output/store");
/** Pages that take pictures side by side. */
const STUDIOS = 2;

/** A name that changes with every source that decides the pictures. */
function edition(): string {
  const hash = createHash("sha256").update(JSON.stringify(PICTURES));
  for (const file of globSync("studio/**/*.ts", { cwd: HERE }).sort())
    hash.update(readFileSync(join(HERE, file)));
  return hash.digest("hex").slice(0, 12);
}

const exists = (path: string): boolean => statSync(path, { throwIfNoEntry: false }) !== undefined;

/** The true colours of a picture, counted on the picture itself. */
function truthOf(picture: Picture, pixels: readonly number[]): PictureTruth {
  const { id, cut, cloth, scene, cors } = picture;
  const all = pixels.reduce((sum, count) => sum + count, 0);
  const swatches = cloth.dyes
    .map((hex, i) => ({ hex, share: Number(((pixels[i] ?? 0) / all).toFixed(4)) }))
    .sort((a, b) => b.share - a.share);
  return { id, slot: CUTS[cut], cut, print: cloth.print, weave: cloth.weave, scene, cors, swatches };
}

async function takeInto(folder: string, page: Page, picture: Picture): Promise<void> {
  const taken = (await page.evaluate(`Studio.takePicture(${JSON.stringify(picture)})`)) as Taken;
  writeFileSync(join(folder, `${picture.id}.jpg`), Buffer.from(taken.jpeg, "base64"));
  writeFileSync(join(folder, `${picture.id}.mask.png`), Buffer.from(taken.mask, "base64"));
  writeFileSync(join(folder, `${picture.id}.json`), `${JSON.stringify(truthOf(picture, taken.pixels))}\n`);
}

async function takeAll(folder: string): Promise<void> {
  const code = await bundle(join(HERE, "studio/take-picture.ts"), "Studio");
  const waiting = [...PICTURES];
  const studio = async (): Promise<void> => {
    const browser = await openBrowser();
    try {
      const page = await browser.newPage();
      await page.addScriptTag({ content: code });
      for (let next = waiting.shift(); next; next = waiting.shift()) await takeInto(folder, page, next);
    } finally {
      await browser.close();
    }
  };
  await Promise.all(Array.from({ length: STUDIOS }, studio));
}

/**
 * Makes sure that every picture of the catalogue exists, and returns their folder: `<id>.jpg`, its truth
 * `<id>.json` and `<id>.mask.png` (see `Taken.mask`). Takes them once per edition of the studio; later calls are instant.
 */
export async function storePictures(): Promise<string> {
  const folder = join(CACHE, edition());
  if (exists(folder)) return folder;
  const draft = `${folder}.${process.pid}`;
  mkdirSync(draft, { recursive: true });
  try {
    await takeAll(draft);
    if (!exists(folder)) renameSync(draft, folder);
  } finally {
    rmSync(draft, { recursive: true, force: true });
  }
  return folder;
}

/** The truth beside a picture. */
export const readTruth = (folder: string, id: string): PictureTruth =>
  JSON.parse(readFileSync(join(folder, `${id}.json`), "utf8"));
