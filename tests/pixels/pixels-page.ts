import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach } from "vitest";
import { bundle } from "../browser/bundle.ts";
import { openBrowser } from "../browser/open-browser.ts";
import { bombOf } from "./bomb.ts";
import { openServer, type PictureServer } from "./picture-server.ts";
import { pngOf } from "./png-of.ts";

/** Upper half and lower half of the picture; any colours would do. */
export const UPPER = [200, 40, 60, 255] as const;
export const LOWER = [20, 90, 160, 255] as const;
const halves = pngOf(120, 240, (_, y) => (y < 120 ? UPPER : LOWER));
const tiny = pngOf(24, 24, () => UPPER);
const clear = pngOf(100, 100, (x) => (x < 50 ? [0, 0, 0, 0] : UPPER));
const noise = pngOf(700, 900, (x, y) => {
  const n = Math.imul(x * 374761393 + y * 668265263, 1274126177) >>> 0;
  return [n & 255, (n >> 8) & 255, (n >> 16) & 255, 255];
});
const huge = bombOf(8_000);
const files: Record<string, Buffer> = { halves, tiny, clear, noise, huge };

let browser: Browser;
export let store: PictureServer;
export let cdn: PictureServer;
export let code: string;
export let page: Page;

beforeAll(async () => {
  code = await bundle(new URL("./pixels-room.ts", import.meta.url).pathname, "Pixels");
  browser = await openBrowser();
  store = await openServer((path, response) => {
    const file = files[path.slice(1)];
    if (file) response.setHeader("content-type", "image/png").end(file);
    else response.setHeader("content-type", "text/html").end("<!doctype html><title>Store</title>");
  });
  cdn = await openServer((path, response) => {
    const [, rule, name] = (path.split("?")[0] ?? "").split("/");
    if (rule === "open") response.setHeader("access-control-allow-origin", "*");
    if (name === "endless") {
      response.setHeader("content-type", "image/png");
      const more = () => {
        while (!response.destroyed && response.write(Buffer.alloc(1 << 20)));
      };
      response.on("drain", more);
      more();
      return;
    }
    const file = files[name ?? ""];
    response.statusCode = file ? 200 : 404;
    response.setHeader("content-type", name === "halves" ? "image/png" : "text/plain").end(file ?? "no");
  });
});

afterAll(async () => {
  await browser?.close();
  await store?.close();
  await cdn?.close();
});

beforeEach(async () => {
  page = await browser.newPage();
  await page.goto(`http://shop.localhost:${store.port}/`);
  await page.addScriptTag({ content: code });
  cdn.seen.length = 0;
  return () => page.close();
});

export const here = (name: string) => `http://shop.localhost:${store.port}/${name}`;
export const there = (name: string) => `http://cdn.localhost:${cdn.port}/${name}`;
