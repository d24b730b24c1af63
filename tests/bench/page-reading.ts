import { argv } from "node:process";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { bundle } from "../browser/bundle.ts";
import { openBrowser } from "../browser/open-browser.ts";
import { readingPage, readingTile } from "./reading-page.ts";
import type { Reading } from "./reading-probe.ts";

/** What finding the products of a page costs its main thread; ms, in a real browser. */
export interface ReadingFigures {
  readonly tiles: number;
  readonly found: number;
  /** Script per 100 tiles, cold: each run in a fresh page; median of the runs. Other work of the machine counts in. */
  readonly msPer100: number;
  /** What the page's thread computed in that time, per 100 tiles, with its own drawing between slices; median. */
  readonly cpuPer100: number;
  /** Longest work without a breath and longest between two yields of the reader; medians of the runs. */
  readonly longestSlice: number;
  readonly longestStep: number;
  readonly added: {
    readonly tiles: number;
    readonly batches: number;
    readonly found: number;
    readonly ms: number;
    readonly rescanMs: number;
    /** How many times less than reading the whole page again after each batch. */
    readonly timesLess: number;
    readonly longestSlice: number;
  };
}

const RUNS = 5;
/** An address that the test browser answers itself. */
const ADDRESS = "http://shop.localhost/everything";
const PICTURE = `<svg xmlns="http://www.w3.org/2000/svg" width="360" height="480"><rect width="360" height="480" fill="#777"/></svg>`;

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

async function openTiles(browser: Browser, probe: string, tiles: number): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  await page.route("**/*", (route) =>
    route.request().resourceType() === "document"
      ? route.fulfill({ contentType: "text/html", body: readingPage(tiles) })
      : route.fulfill({ contentType: "image/svg+xml", body: PICTURE }),
  );
  await page.goto(ADDRESS);
  await page.evaluate(`${probe};globalThis.Probe = Probe;`);
  return page;
}

/** How long the page's main thread has computed so far, ms: waiting for a processor does not count. */
async function threadClock(page: Page): Promise<() => Promise<number>> {
  const session = await page.context().newCDPSession(page);
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  return async () => {
    const { metrics } = await session.send("Performance.getMetrics");
    return (metrics.find(({ name }) => name === "ThreadTime")?.value ?? 0) * 1000;
  };
}

async function growing(browser: Browser, probe: string, tiles: number, batch: number, again: boolean) {
  const page = await openTiles(browser, probe, batch);
  await page.evaluate("Probe.whole()");
  const readings: Reading[] = [];
  for (let at = batch; at < batch + tiles; at += batch) {
    const markup = Array.from({ length: batch }, (_, i) => readingTile(at + i)).join("");
    readings.push(await page.evaluate<Reading>(`Probe.grown(${JSON.stringify(markup)}, ${again})`));
  }
  await page.close();
  return readings;
}

/** Reads a page of `tiles` tiles, and one that adds `more` of them in batches of `batch`, in a browser without the extension. */
export async function measureReading(tiles = 240, more = 2400, batch = 48): Promise<ReadingFigures> {
  const probe = await bundle(fileURLToPath(new URL("./reading-probe.ts", import.meta.url)), "Probe");
  const browser = await openBrowser();
  try {
    const runs: Reading[] = [];
    const computed: number[] = [];
    for (let run = 0; run < RUNS; run++) {
      const page = await openTiles(browser, probe, tiles);
      const computedBy = await threadClock(page);
      const start = await computedBy();
      runs.push(await page.evaluate<Reading>("Probe.whole()"));
      computed.push((await computedBy()) - start);
      await page.close();
    }
    const added = await growing(browser, probe, more, batch, false);
    const rescanned = await growing(browser, probe, more, batch, true);
    const [ms, rescanMs] = [added, rescanned].map((readings) => sum(readings.map((one) => one.ms)));
    return {
      tiles,
      found: runs[0]?.products ?? 0,
      msPer100: (median(runs.map((one) => one.ms)) / tiles) * 100,
      cpuPer100: (median(computed) / tiles) * 100,
      longestSlice: median(runs.map((one) => one.slice)),
      longestStep: median(runs.map((one) => one.step)),
      added: {
        tiles: more,
        batches: added.length,
        found: sum(added.map((one) => one.products)),
        ms: ms ?? 0,
        rescanMs: rescanMs ?? 0,
        timesLess: (rescanMs ?? 0) / (ms || 1),
        longestSlice: median(added.map((one) => one.slice)),
      },
    };
  } finally {
    await browser.close();
  }
}

if (argv[1] && import.meta.url === pathToFileURL(argv[1]).href) {
  console.log(JSON.stringify(await measureReading()));
}
