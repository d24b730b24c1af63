import { mkdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, Page } from "playwright-core";
import { build } from "vite";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openBrowser } from "../browser/open-browser.ts";

/** Folder for pictures of every screen, to be looked at; none are taken where it is not named. */
const PICTURES = process.env.POPUP_PICTURES;

const SCREENS = [
  "ready",
  "ready-many-hosts",
  "reading",
  "results",
  "once",
  "closet-empty",
  "nothing-found",
  "not-a-web-page",
  "lost",
  "error",
];
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

let browser: Browser;
let page: Page;
beforeAll(async () => {
  const html = await roomPage();
  browser = await openBrowser();
  page = await browser.newPage();
  await page.setContent(html);
  await page.evaluate(axe);
});
afterAll(() => browser.close());

/** The popup's page with its styles, and the room that plays its screens on the global `Room`. */
async function roomPage(): Promise<string> {
  const entry = new URL("./popup-room.tsx", import.meta.url).pathname;
  const built = await build({
    configFile: false,
    logLevel: "error",
    define: { "process.env.NODE_ENV": JSON.stringify("production") },
    build: { write: false, minify: false, target: "esnext", lib: { entry, name: "Room", formats: ["iife"] } },
  });
  const output = (Array.isArray(built) ? built : [built]).flatMap((one) =>
    "output" in one ? one.output : [],
  );
  const script = output.flatMap((part) => (part.type === "chunk" ? [part.code] : [])).join("\n");
  const style = output.flatMap((part) => (part.type === "asset" ? [String(part.source)] : [])).join("\n");
  return `<!doctype html><html lang="en-GB"><head><meta charset="utf-8"><title>Popup</title><style>${style}</style></head>
    <body><div id="popup"></div><script>${script.replaceAll("</script", "<\\/script")}</script></body></html>`;
}

async function open(screen: string, width: number, scheme: "light" | "dark"): Promise<void> {
  await page.setViewportSize({ width, height: 600 });
  await page.emulateMedia({ colorScheme: scheme });
  await page.evaluate(`Room.show(${JSON.stringify(screen)})`);
}

async function picture(name: string): Promise<void> {
  if (!PICTURES) return;
  mkdirSync(PICTURES, { recursive: true });
  await page.screenshot({ path: `${PICTURES}/${name}.png` });
}

async function violations(): Promise<unknown> {
  return page.evaluate(
    `axe.run().then(({ violations }) => violations.map(({ id, nodes }) => [id, nodes.map(({ html, failureSummary }) => html + failureSummary)]))`,
  );
}

it("knows the screens of the room", async () => {
  await open("ready", 380, "light");
  expect(await page.evaluate("Room.screens")).toEqual(SCREENS);
});

for (const scheme of ["light", "dark"] as const) {
  it.each(SCREENS)(`is accessible and fits 380 px: %s, ${scheme}`, async (screen) => {
    await open(screen, 380, scheme);
    await picture(`${screen}-${scheme}`);
    expect(await violations()).toEqual([]);
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBe(380);
  });
}

it.each([360, 800])("shows opened reasons and what could not be read at %d px", async (width) => {
  await open("results", width, "light");
  await page.locator(".row-open").first().click();
  await page.locator(".unread summary").click();
  await page.locator(".store-strip summary").click();
  await picture(`opened-${width}`);
  if (PICTURES) {
    await page
      .locator(".row")
      .first()
      .screenshot({ path: `${PICTURES}/row-${width}.png` });
    await page.locator(".unread").screenshot({ path: `${PICTURES}/unread-${width}.png` });
  }
  expect(await violations()).toEqual([]);
  expect(await page.evaluate("document.documentElement.scrollWidth")).toBe(width);
});

it("gives every control 24 px, or the room of 24 px round it", async () => {
  await open("results", 380, "light");
  await page.locator(".row-open").first().click();
  const small = await page.evaluate(() =>
    [...document.querySelectorAll("button, summary, a, .filter > span")]
      .map((control) => ({ name: control.textContent, box: control.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && (box.height < 23.9 || box.width < 23.9))
      .map(({ name, box }) => `${name} ${box.width}×${box.height}`),
  );
  expect(small).toEqual([]);
});

it("is worked by keyboard alone: filter, open, save", async () => {
  await open("results", 380, "light");
  await page.locator(".filter input").first().focus();
  await page.keyboard.press("ArrowRight");
  await page.locator(".filter input:checked").waitFor({ state: "attached" });
  const chosen = await page.evaluate(
    "document.querySelector('.filter input:checked').parentElement.textContent",
  );
  expect(chosen).toContain("Finishes looks");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  expect(await page.locator(".row-open").first().getAttribute("aria-expanded")).toBe("true");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await page.locator(".row-foot button", { hasText: "Take off wishlist" }).first().waitFor();
  const outline = await page.evaluate("getComputedStyle(document.activeElement).outlineStyle");
  expect(outline).toBe("solid");
});
