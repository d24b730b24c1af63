import type { Page } from "playwright-core";
import type { ExplainedVerdict, PageSummary } from "../../lib/link/messages.ts";
import { originOf } from "../../lib/link/origin-of.ts";
import { evaluateApart } from "./evaluate-apart.ts";
import { type Explanation, explainPage } from "./explain-page.ts";
import type { ExtensionBrowser } from "./open-extension.ts";

/** A page as the extension saw it. */
export interface ScannedPage {
  readonly summary: PageSummary;
  /** By product key. */
  readonly verdicts: ReadonlyMap<string, ExplainedVerdict>;
  /** Where it was asked for: what was found by which evidence, and what was left out and why. */
  readonly explanation: Explanation | null;
}

/** How long a page may take to load before what is there is scanned; ms. */
const LOAD_WAIT_MS = 30_000;

/** Screens scrolled through at most, so that an endless page ends. */
const SCREENS_MOST = 40;

/** A pause on each screen for lazy pictures to start loading; ms. */
const SCREEN_PAUSE_MS = 120;

const POLL_MS = 100;

/** Products in one question to the worker. */
const BATCH = 100;

const SCROLL_ON = `(() => {
  const before = scrollY;
  scrollBy({ top: innerHeight * 0.8, behavior: "instant" });
  return scrollY > before;
})()`;

async function scrollThrough(page: Page): Promise<void> {
  for (let screen = 0; screen < SCREENS_MOST; screen++) {
    const more = await evaluateApart<boolean>(page, SCROLL_ON);
    await page.waitForTimeout(SCREEN_PAUSE_MS);
    if (!more) break;
  }
  await evaluateApart(page, `scrollTo({ top: 0, behavior: "instant" })`);
}

/** Collects the summaries that the page script publishes, on the global `summary` of an extension page. */
const listenScript = (url: string) => `(async () => {
  const tab = (await chrome.tabs.query({})).find((tab) => tab.url === ${JSON.stringify(url)});
  await chrome.scripting.executeScript({ target: { tabId: tab.id }, files: ["/visit.js"] });
  const port = chrome.tabs.connect(tab.id, { name: "page-summary" });
  globalThis.summary = null;
  port.onMessage.addListener((summary) => { globalThis.summary = summary; });
})()`;

async function explainAll(desk: Page, summary: PageSummary): Promise<Map<string, ExplainedVerdict>> {
  const candidates = summary.products.map(({ candidate }) => candidate);
  const verdicts = new Map<string, ExplainedVerdict>();
  for (let at = 0; at < candidates.length; at += BATCH) {
    const message = {
      to: "worker",
      ask: "explain",
      request: { candidates: candidates.slice(at, at + BATCH) },
    };
    const reply = await desk.evaluate<{ ok: boolean; error?: string; value: ExplainedVerdict[] }>(
      `chrome.runtime.sendMessage(${JSON.stringify(message)})`,
    );
    if (!reply.ok) throw new Error(reply.error);
    for (const verdict of reply.value) verdicts.set(verdict.key, verdict);
  }
  return verdicts;
}

/**
 * Opens an address, lets the built extension read all of it, and returns what it found and judged.
 * @param desk a page of the extension, from which the page script is started and the worker asked
 * @param wait how long the reading may take, ms; what is read by then is returned
 * @param explain reads the page once more, by a build that says why
 */
export async function scanPage(
  extension: ExtensionBrowser,
  desk: Page,
  url: string,
  wait: number,
  explain = false,
): Promise<ScannedPage> {
  const page = await extension.context.newPage();
  const origins = new Set<string>();
  page.on("request", (request) => {
    const origin = originOf(request.url());
    if (origin && request.resourceType() === "image") origins.add(origin);
  });
  try {
    await page.goto(url, { waitUntil: "load", timeout: LOAD_WAIT_MS }).catch(async (error: Error) => {
      if (page.url() === "about:blank" || !/timeout/i.test(error.message)) throw error;
    });
    await scrollThrough(page);
    const own = originOf(page.url());
    if (!own) throw new Error(`${url} is not a web page: give an http or https address.`);
    await extension.grant([own, ...origins]);
    await page.bringToFront();
    await desk.evaluate(listenScript(page.url()));
    const end = Date.now() + wait;
    await scrollThrough(page);
    let summary: PageSummary | null = null;
    while (Date.now() < end) {
      summary = await desk.evaluate<PageSummary | null>("globalThis.summary");
      if (summary?.state === "done") break;
      await page.waitForTimeout(POLL_MS);
    }
    if (!summary) throw new Error(`${url} could not be read within ${wait} ms. Give it longer with --wait.`);
    const verdicts = await explainAll(desk, summary);
    return { summary, verdicts, explanation: explain ? await explainPage(page) : null };
  } finally {
    await page.close();
  }
}
