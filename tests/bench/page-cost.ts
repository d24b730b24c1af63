import type { Page } from "playwright-core";
import type { PageSummary } from "../../lib/link/messages.ts";
import { originOf } from "../../lib/link/origin-of.ts";
import type { ExtensionBrowser } from "../browser/open-extension.ts";

/** What a page costs while it is read. */
export interface PageCost {
  readonly products: number;
  /** Badges with a verdict; those of tiles that came into view. */
  readonly judged: number;
  /** From the start of the page script to the last badge, ms. */
  readonly lastBadge: number;
  /** The longest task on the page's main thread in that time, ms; 50 where none was longer than the browser counts. */
  readonly longestTask: number;
  readonly longTasks: number;
  /** Cumulative layout shift in that time. */
  readonly layoutShift: number;
}

/** The browser reports tasks longer than this (W3C Long Tasks API, section 1); ms. */
const LONG_TASK_MS = 50;

/** How long the page must have been at rest before measuring, and how long without change ends it; ms. */
const REST_MS = 1_500;

const WAIT_MS = 60_000;

/** Collects long tasks and layout shifts on the page, as the browser itself reports them. */
const observeScript = `globalThis.seen = { tasks: [], shift: 0 };
new PerformanceObserver((list) => { for (const e of list.getEntries()) seen.tasks.push(e.duration); }).observe({ type: "longtask" });
new PerformanceObserver((list) => { for (const e of list.getEntries()) seen.shift += e.value; }).observe({ type: "layout-shift" });`;

async function scrollThrough(page: Page): Promise<void> {
  const height = await page.evaluate("document.documentElement.scrollHeight");
  for (let y = 0; y < Number(height); y += 600) {
    await page.evaluate(`scrollTo({ top: ${y}, behavior: "instant" })`);
    await page.waitForTimeout(100);
  }
}

/**
 * Loads a page, waits until it is at rest, then scrolls through it, with the page script or without. The scrolling
 * is the same in both, so that what differs is the script's.
 */
export async function pageCost(
  extension: ExtensionBrowser,
  desk: Page,
  url: string,
  withScript: boolean,
): Promise<PageCost> {
  const page = await extension.context.newPage();
  await page.goto(url, { waitUntil: "load" });
  await scrollThrough(page);
  await page.evaluate(`scrollTo({ top: 0, behavior: "instant" })`);
  await page.waitForTimeout(REST_MS);
  await page.evaluate(observeScript);
  if (withScript) {
    await desk.evaluate(`(async () => {
      const tab = (await chrome.tabs.query({})).find((tab) => tab.url === ${JSON.stringify(page.url())});
      await chrome.scripting.executeScript({ target: { tabId: tab.id }, files: ["/visit.js"] });
      globalThis.summary = null;
      chrome.tabs.connect(tab.id, { name: "page-summary" }).onMessage.addListener((s) => { globalThis.summary = s; });
    })()`);
  }
  await page.bringToFront();
  await scrollThrough(page);
  const end = Date.now() + WAIT_MS;
  let summary: PageSummary | null = null;
  while (withScript && Date.now() < end) {
    summary = await desk.evaluate<PageSummary | null>("globalThis.summary");
    if (summary?.state === "done" && summary.products.every(({ brief }) => brief)) break;
    await page.waitForTimeout(100);
  }
  await page.waitForTimeout(REST_MS);
  const seen = await page.evaluate<{ tasks: number[]; shift: number }>("seen");
  await page.close();
  return {
    products: summary?.products.length ?? 0,
    judged: summary?.products.filter(({ brief }) => brief).length ?? 0,
    lastBadge: summary?.timings.lastBadge ?? 0,
    longestTask: Math.max(LONG_TASK_MS, ...seen.tasks),
    longTasks: seen.tasks.length,
    layoutShift: seen.shift,
  };
}

/** The same page without and with the page script, one after the other in one browser. */
export async function comparePageCost(
  extension: ExtensionBrowser,
  desk: Page,
  url: string,
  imageUrl: string,
) {
  await extension.grant([url, imageUrl].flatMap((address) => originOf(address) ?? []));
  const without = await pageCost(extension, desk, url, false);
  const withIt = await pageCost(extension, desk, url, true);
  return { without, with: withIt };
}
