import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { BrowserContext, Page } from "playwright-core";
import type { PageSummary } from "../../lib/link/messages.ts";
import { type HiddenNode, type HiddenParts, hiddenParts } from "../browser/hidden-parts.ts";
import { importCloset } from "../browser/import-closet.ts";
import { openExtension, type Popup } from "../browser/open-extension.ts";
import { startChromium } from "../browser/start-chromium.ts";
import { openServer, type PictureServer } from "../pixels/picture-server.ts";
import { pngOf } from "../pixels/png-of.ts";
import { badgesOf, DEMO_CLOSET, summaryOf, until } from "./store-visit.ts";

/** Cloth on a white ground, one file for every address that ends in its name. */
const garment = (red: number, green: number, blue: number) =>
  pngOf(120, 156, (x, y) =>
    x > 30 && x < 90 && y > 24 && y < 132 ? [red, green, blue, 255] : [255, 255, 255, 255],
  );
/** What the pictures show, sRGB. */
export const CLOTH = { red: [178, 34, 52], blue: [20, 60, 160] } as const;
/** A picture file of the red cloth. */
export const CLOTH_PICTURE = garment(...CLOTH.red);
const PICTURES: Readonly<Record<string, Buffer>> = {
  red: CLOTH_PICTURE,
  blue: garment(...CLOTH.blue),
};

/** A page of the store: markup, and headers where it needs its own. */
export interface StorePage {
  readonly html: string;
  readonly headers?: Readonly<Record<string, string>>;
}

/** A browser with the extension switched on for a store whose pages a test writes. */
export interface LivingStore {
  readonly shop: PictureServer;
  readonly cdn: PictureServer;
  readonly shopUrl: string;
  /** Opens a page of the store, served under `path` from then on; on another host the extension leaves it alone. */
  open(path: string, page: StorePage, host?: string): Promise<{ page: Page; hidden: HiddenParts }>;
  /** The same with the badges come, as many as are near the screen. */
  show(
    path: string,
    html: string,
    count: number,
    headers?: StorePage["headers"],
  ): Promise<{ page: Page; hidden: HiddenParts; badges: readonly HiddenNode[] }>;
  /** Starts the page script once more on a page, as the popup does. */
  startAgain(page: Page): Promise<void>;
  /** Presses the toolbar button on a page, which opens the popup. */
  press(page: Page): Promise<Popup>;
  /** Has a page hold still as the popup does, until the function that it gives is called. */
  holdStill(page: Page): Promise<() => Promise<void>>;
  /** What the page script last told of a page, once it is done. */
  summary(page: Page): Promise<PageSummary>;
  /** Enlarges a page as the browser's own menu does. */
  zoom(page: Page, factor: number): Promise<void>;
  /** Closes the browser and starts it once more as a person does; and a page of the extension in it. */
  restart(): Promise<{ context: BrowserContext; closetPage: Page }>;
  /** Serves a page under `path` from then on. */
  serve(path: string, page: StorePage): void;
  close(): Promise<void>;
}

export async function openLivingStore(): Promise<LivingStore> {
  const pages = new Map<string, StorePage>();
  const answer: Parameters<typeof openServer>[0] = async (path, response) => {
    const url = new URL(path, "http://store.invalid");
    const wait = Number(url.searchParams.get("wait"));
    if (wait) await new Promise((done) => setTimeout(done, wait));
    // Pictures that only a page of the store may show, and pictures that lie elsewhere in truth.
    if (url.pathname.startsWith("/own/") && !response.req.headers.referer?.includes("shop.localhost"))
      return response.writeHead(403).end();
    if (url.pathname.startsWith("/moved/"))
      return response
        .writeHead(302, {
          location: `http://elsewhere.localhost:${cdn.port}${path.replace("/moved", "/kept")}`,
        })
        .end();
    const picture = PICTURES[url.pathname.split("/").at(-1) ?? ""];
    if (picture) {
      if (url.pathname.startsWith("/open/")) response.setHeader("access-control-allow-origin", "*");
      response.setHeader("cache-control", "max-age=600").setHeader("content-type", "image/png").end(picture);
      return;
    }
    const page = pages.get(url.pathname);
    response.statusCode = page ? 200 : 404;
    for (const [name, value] of Object.entries(page?.headers ?? {})) response.setHeader(name, value);
    response.setHeader("content-type", "text/html; charset=utf-8").end(page?.html ?? "Not here");
  };
  const shop = await openServer(answer);
  const cdn = await openServer(answer);
  const shopUrl = `http://shop.localhost:${shop.port}`;
  const profile = mkdtempSync(join(tmpdir(), "hueward-living-"));
  const extension = await openExtension({ profile });
  let browser: { close(): Promise<void> } = extension;
  const closetPage = await extension.openPage("closet.html");
  await importCloset(closetPage, DEMO_CLOSET);
  const imageOrigins = ["http://shop.localhost", "http://cdn.localhost"];
  await extension.grant(imageOrigins);
  // What the popup notes when a person switches a store on.
  const stores = { "http://shop.localhost": { imageOrigins, since: Date.now() } };
  await closetPage.evaluate(`chrome.storage.local.set({ stores: ${JSON.stringify(stores)} })`);
  await until("the page script's registration", async () =>
    closetPage.evaluate("chrome.scripting.getRegisteredContentScripts().then((all) => all.length > 0)"),
  );
  const open: LivingStore["open"] = async (path, content, host = "shop.localhost") => {
    pages.set(path, content);
    const page = await extension.context.newPage();
    await page.goto(`http://${host}:${shop.port}${path}`);
    return { page, hidden: await hiddenParts(page) };
  };
  return {
    shop,
    cdn,
    shopUrl,
    startAgain: (page) =>
      closetPage.evaluate(`(async () => {
        const tab = (await chrome.tabs.query({})).find(({ url }) => url === ${JSON.stringify(page.url())});
        await chrome.scripting.executeScript({ target: { tabId: tab.id }, files: ["/visit.js"] });
      })()`),
    press: extension.clickAction,
    holdStill: async (page) => {
      await closetPage.evaluate(`(async () => {
        const tab = (await chrome.tabs.query({})).find(({ url }) => url === ${JSON.stringify(page.url())});
        globalThis.still = chrome.tabs.connect(tab.id, { name: "snapshot" });
        await new Promise((ready) => still.onMessage.addListener(ready));
      })()`);
      return () => closetPage.evaluate("still.disconnect()");
    },
    summary: (page) => summaryOf({ closetPage }, page),
    open,
    show: async (path, html, count, headers = {}) => {
      const opened = await open(path, { html, headers });
      return { ...opened, badges: await badgesCome(opened.hidden, count) };
    },
    zoom: (page, factor) =>
      closetPage.evaluate(`(async () => {
        const tab = (await chrome.tabs.query({})).find(({ url }) => url === ${JSON.stringify(page.url())});
        await chrome.tabs.setZoom(tab.id, ${factor});
      })()`),
    serve: (path, content) => pages.set(path, content),
    restart: async () => {
      await browser.close();
      const plain = await startChromium(profile);
      browser = plain;
      const closetPage = await plain.context.newPage();
      await closetPage.goto(`chrome-extension://${extension.id}/closet.html`);
      return { context: plain.context, closetPage };
    },
    close: async () => {
      await browser.close();
      await shop.close();
      await cdn.close();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}

/** A tile of 200 × 260 px as stores build them, its picture the store's own. */
export const tile = (name: string, picture = `/pictures/${name}/red`): string => `
  <li class="product"><a class="media" href="/p/${encodeURIComponent(name)}"><img alt="" width="200" height="260" src="${picture}"></a>
  <h3><a href="/p/${encodeURIComponent(name)}">Shirt ${name}</a></h3><span class="price">€ 20.00</span></li>`;

export const tiles = (count: number, from = 0): string =>
  Array.from({ length: count }, (_, n) => tile(String(from + n))).join("");

export const STYLE = `body{margin:8px;font:16px/20px sans-serif}ul{display:flex;flex-wrap:wrap;gap:20px;margin:0;padding:0}
  li{width:200px;list-style:none}.media{position:relative;display:block;height:260px}h3,.price{margin:0;display:block;height:20px;overflow:hidden}`;

export const listing = (items: string, more = "", doctype = "<!doctype html>"): string =>
  `${doctype}<html lang="en"><title>Shirts</title><style>${STYLE}</style><h1>Shirts</h1><ul id="list">${items}</ul>${more}`;

/** Waits until so many badges have come and every one says its verdict. */
export const badgesCome = (hidden: HiddenParts, count: number) =>
  until(`${count} badges`, async () => {
    const badges = await badgesOf(hidden);
    const ready = badges.filter(({ attributes }) => attributes["data-state"] !== "reading");
    return ready.length === count && badges.length === count && badges;
  });

/** The products that badges are for. */
export const titlesOf = (badges: readonly HiddenNode[]): string[] =>
  badges.map(({ attributes }) => attributes["aria-label"]?.split(". ").at(-1) ?? "");
