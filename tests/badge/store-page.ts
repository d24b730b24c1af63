import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { bundle } from "../browser/bundle.ts";
import { openBrowser } from "../browser/open-browser.ts";

let browser: Browser;
let code: string;

beforeAll(async () => {
  code = await bundle(new URL("./badge-room.ts", import.meta.url).pathname, "Room");
  browser = await openBrowser();
});
afterAll(() => browser?.close());

interface Options {
  readonly open?: boolean;
  readonly headers?: Record<string, string>;
  readonly dark?: boolean;
  readonly width?: number;
}

/** A page of a store. `open` lets the test, and only it, look into our shadow trees. */
export async function storePage(
  body: string,
  { open = true, headers = {}, dark = false, width = 800 }: Options = {},
): Promise<Page> {
  const page = await browser.newPage({
    viewport: { width, height: 600 },
    colorScheme: dark ? "dark" : "light",
    reducedMotion: "reduce",
    hasTouch: true,
  });
  if (open) {
    await page.addInitScript(() => {
      const attach = Element.prototype.attachShadow;
      Element.prototype.attachShadow = function (init) {
        return attach.call(this, { ...init, mode: "open" });
      };
    });
  }
  await page.route("http://shop.localhost/**", (route) =>
    route.fulfill({
      contentType: "text/html",
      headers,
      body: `<!doctype html><html lang="en"><body>${body}`,
    }),
  );
  await page.goto("http://shop.localhost/");
  await page.evaluate(`${code};globalThis.Room = Room;0`);
  return page;
}

/** Resolves after the browser has laid out and observers have told. */
export const drawn = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<void>((done) =>
        requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 50))),
      ),
  );

/** Matches what we hang on a page of these tests; outside of tests nothing tells it. */
export const HOST = "span[hidden]";

/** The first badge of the page; an open page only. */
export const chip = (page: Page) => page.locator(".chip").first();
