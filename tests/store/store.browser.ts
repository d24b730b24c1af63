import { readFileSync } from "node:fs";
import { request } from "node:http";
import { join } from "node:path";
import { differenceCiede2000, modeLab65, modeRgb, useMode } from "culori/fn";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openBrowser } from "../browser/open-browser.ts";
import { CATALOGUE, PICTURES, picturePath } from "./catalogue.ts";
import { type Store, startStore } from "./start-store.ts";
import { readTruth, storePictures } from "./store-pictures.ts";
import { MASK_STEP } from "./studio/take-picture.ts";

useMode(modeRgb);
useMode(modeLab65);

let store: Store;
let browser: Browser;
let folder: string;

beforeAll(async () => {
  folder = await storePictures();
  store = await startStore();
  browser = await openBrowser();
}, 600_000);

afterAll(async () => {
  await browser?.close();
  await store?.close();
});

/** A request to a host on loopback, as a browser would resolve it. */
const head = (address: string): Promise<{ status: number; headers: Record<string, unknown> }> =>
  new Promise((done, failed) => {
    const url = new URL(address);
    const headers = { host: url.host };
    request(
      { host: "127.0.0.1", port: url.port, path: url.pathname + url.search, method: "HEAD", headers },
      (answer) => {
        answer.resume();
        done({ status: answer.statusCode ?? 0, headers: answer.headers });
      },
    )
      .on("error", failed)
      .end();
  });

it("serves every picture as a JPEG with the CORS header that its truth states", async () => {
  for (const picture of PICTURES) {
    const truth = readTruth(folder, picture.id);
    const { status, headers } = await head(`${store.cdnUrl}${picturePath(picture)}?width=480`);
    expect(status, picture.id).toBe(200);
    expect(headers["content-type"]).toBe("image/jpeg");
    expect(headers["cache-control"]).toContain("max-age");
    expect(headers["access-control-allow-origin"]).toBe(truth.cors ? "*" : undefined);
  }
  expect((await head(`${store.cdnUrl}/media/none.jpg`)).status).toBe(404);
  const logged = store.requests.find(({ path }) => path === "/media/none.jpg");
  expect(logged).toMatchObject({ method: "HEAD", host: new URL(store.cdnUrl).host });
});

it("states the dyes of the catalogue as truth, every one visible", () => {
  for (const { id, cloth } of PICTURES) {
    const { swatches } = readTruth(folder, id);
    expect(swatches.map(({ hex }) => hex).sort(), id).toEqual([...cloth.dyes].sort());
    expect(
      swatches.reduce((sum, { share }) => sum + share, 0),
      id,
    ).toBeCloseTo(1, 2);
    for (const { share } of swatches) expect(share, id).toBeGreaterThan(0.02);
    expect(swatches[0]?.hex, id).toBe(cloth.dyes[0]);
  }
});

/** In a page: the median colour of a picture where its mask has one grey, for each grey; and how many pixels that is. */
const MEDIANS = `async ([jpeg, mask, greys]) => {
  const pixels = async (source) => {
    const image = new Image();
    image.src = source;
    await image.decode();
    const board = new OffscreenCanvas(image.naturalWidth, image.naturalHeight).getContext("2d");
    board.drawImage(image, 0, 0);
    return board.getImageData(0, 0, image.naturalWidth, image.naturalHeight).data;
  };
  const [photo, zones] = [await pixels(jpeg), await pixels(mask)];
  return greys.map((grey) => {
    const channels = [[], [], []];
    for (let i = 0; i < zones.length; i += 4) if (zones[i] === grey) for (let c = 0; c < 3; c++) channels[c].push(photo[i + c]);
    return channels.map((values) => values.sort((a, b) => a - b)[values.length >> 1] ?? 0);
  });
}`;

const fileUrl = (name: string, type: string): string =>
  `data:${type};base64,${readFileSync(join(folder, name)).toString("base64")}`;

it("photographs each dye near its true colour: median below 4 ΔE00, every main dye below 8", async () => {
  const page = await browser.newPage();
  const difference = differenceCiede2000();
  const errors: number[] = [];
  for (const { id, cloth } of PICTURES) {
    const greys = cloth.dyes.map((_, i) => (i + 1) * MASK_STEP);
    const asked = JSON.stringify([
      fileUrl(`${id}.jpg`, "image/jpeg"),
      fileUrl(`${id}.mask.png`, "image/png"),
      greys,
    ]);
    const seen = (await page.evaluate(`(${MEDIANS})(${asked})`)) as [number, number, number][];
    const off = cloth.dyes.map((dye, i) => {
      const [r, g, b] = (seen[i] ?? [0, 0, 0]).map((code) => code / 255);
      return difference(dye, { mode: "rgb", r: r ?? 0, g: g ?? 0, b: b ?? 0 });
    });
    expect(off[0], id).toBeLessThan(8);
    errors.push(...off);
  }
  await page.close();
  errors.sort((a, b) => a - b);
  const [median, high] = [errors[errors.length >> 1] ?? 99, errors[Math.floor(errors.length * 0.9)] ?? 99];
  console.log(
    `ΔE00 of ${errors.length} dyes in ${PICTURES.length} pictures: median ${median.toFixed(2)}, 90th percentile ${high.toFixed(2)}`,
  );
  expect(median).toBeLessThan(4);
});

it("shows a listing whose 48 pictures all decode", async () => {
  const page = await browser.newPage();
  const faults: string[] = [];
  page.on("pageerror", ({ message }) => faults.push(message));
  await page.goto(store.shopUrl, { waitUntil: "load" });
  const sizes = await page.$$eval(".tile img", (images) =>
    Promise.all(
      images.map(async (image) => {
        if (!(image instanceof HTMLImageElement)) return "";
        await image.decode();
        return `${image.naturalWidth}x${image.naturalHeight}`;
      }),
    ),
  );
  expect(sizes).toEqual(CATALOGUE.map(() => "480x640"));
  expect(faults).toEqual([]);
  await page.close();
});

it("changes the large picture and the address with the chosen colour", async () => {
  const page = await browser.newPage();
  await page.goto(`${store.shopUrl}/product/marla-wrap-dress-in-cobalt`);
  await page.click('.swatches a[title="Fuchsia"]');
  expect(await page.getAttribute(".stage img", "src")).toContain("--fuchsia-1.jpg");
  expect(await page.textContent(".chosen")).toBe("Fuchsia");
  expect(page.url()).toContain("?colour=fuchsia");
  await page.close();
});

it("fetches lazy pictures and further tiles as the endless listing is scrolled", async () => {
  const page = await browser.newPage();
  await page.goto(`${store.shopUrl}/endless?count=72`);
  expect(await page.locator(".tile img.wait").count()).toBeGreaterThan(8);
  while ((await page.locator(".tile").count()) < 72) {
    await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
    await page.waitForTimeout(50);
  }
  expect(await page.locator(".tile").count()).toBe(72);
  await page.waitForFunction(() =>
    document.querySelector(".pages")?.textContent?.startsWith("That is everything"),
  );
  await page.close();
});
