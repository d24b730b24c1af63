import type { Page } from "playwright-core";
import type { ExplainedVerdict, PageSummary } from "../../lib/link/messages.ts";
import { originOf } from "../../lib/link/origin-of.ts";
import { importCloset } from "../browser/import-closet.ts";
import { type ExtensionBrowser, openExtension } from "../browser/open-extension.ts";
import { type Store, startStore } from "../store/start-store.ts";

export const DEMO_CLOSET = "tests/store/demo-closet.json";

/** Longest wait for anything on a screen; ms. Generous, for a loaded machine: it only bounds a failure. */
const WAIT_MS = 45_000;
const POLL_MS = 100;

const pause = () => new Promise((done) => setTimeout(done, POLL_MS));

/** Tries until `look` gives something, or says what it was waiting for. */
export async function until<T>(what: string, look: () => Promise<T | null | undefined | false>): Promise<T> {
  const end = Date.now() + WAIT_MS;
  for (;;) {
    const seen = await look();
    if (seen) return seen;
    if (Date.now() > end) throw new Error(`Waited in vain for ${what}.`);
    await pause();
  }
}

/** The invented store and a browser with the extension, the demo closet and a granted store. */
export interface Scene {
  readonly store: Store;
  readonly extension: ExtensionBrowser;
  readonly closetPage: Page;
  readonly origins: readonly string[];
  close(): Promise<void>;
}

export async function openScene(profile?: string): Promise<Scene> {
  const store = await startStore();
  const extension = await openExtension(profile ? { profile } : {});
  const closetPage = await extension.openPage("closet.html");
  await importCloset(closetPage, DEMO_CLOSET);
  const origins = [store.shopUrl, store.cdnUrl].flatMap((url) => originOf(url) ?? []);
  await extension.approve(origins);
  return {
    store,
    extension,
    closetPage,
    origins,
    close: async () => {
      await extension.close();
      await store.close();
    },
  };
}

/** Switches the store on through the real popup, as a person does. */
export async function switchOn({ extension }: Scene, page: Page): Promise<void> {
  const popup = await extension.clickAction(page);
  await popup.click("button", "Switch on");
  await popup.waitFor("document.querySelector('.row')");
  await popup.close();
  await page.bringToFront();
}

/** A page of whichever browser, as far as these steps need it. */
export interface AnyPage {
  evaluate<T>(expression: string): Promise<T>;
}

/** A button behind a closed shadow root. */
interface AnyButton {
  readonly text: string;
  readonly attributes: Readonly<Record<string, string>>;
}

/** Badges that have said something: their buttons, in document order. */
export async function badgesOf<B extends AnyButton>(hidden: {
  buttons(): Promise<readonly B[]>;
}): Promise<readonly B[]> {
  return (await hidden.buttons()).filter(
    ({ text, attributes }) => text !== "" && "aria-haspopup" in attributes,
  );
}

/** What the page script last told of the page, once it is done; asked as the popup asks. */
export async function summaryOf(
  { closetPage }: { closetPage: AnyPage },
  page: AnyPage,
): Promise<PageSummary> {
  const url = JSON.stringify(await page.evaluate<string>("document.URL"));
  await closetPage.evaluate(`(async () => {
    const tab = (await chrome.tabs.query({})).find((tab) => tab.url === ${url});
    globalThis.told = null;
    globalThis.listen = () => {
      const port = chrome.tabs.connect(tab.id, { name: "page-summary" });
      port.onMessage.addListener((summary) => { globalThis.told = summary; });
      port.onDisconnect.addListener(() => { globalThis.lost = true; });
      globalThis.lost = false;
    };
    listen();
  })()`);
  return until("a summary of the page", async () => {
    // The page script may not have come yet, and where nobody listens the line is cut.
    const told = await closetPage.evaluate<PageSummary | null>("(lost && listen(), told)");
    return told?.state === "done" && told;
  });
}

/** Asks the worker as the extension's own pages do. */
export async function explain(
  { closetPage }: { closetPage: AnyPage },
  summary: PageSummary,
): Promise<readonly ExplainedVerdict[]> {
  const candidates = summary.products.map(({ candidate }) => candidate);
  const message = { to: "worker", ask: "explain", request: { candidates } };
  const reply = await closetPage.evaluate<{ ok: boolean; value: ExplainedVerdict[]; error: string }>(
    `chrome.runtime.sendMessage(${JSON.stringify(message)})`,
  );
  if (!reply.ok) throw new Error(reply.error);
  return reply.value;
}

/** Scrolls through the page so that every tile comes into view once. */
export async function scrollThrough(page: AnyPage): Promise<void> {
  const height = Number(await page.evaluate("document.documentElement.scrollHeight"));
  for (let y = 0; y < height; y += 500) {
    await page.evaluate(`scrollTo({ top: ${y}, behavior: "instant" })`);
    await pause();
  }
  await page.evaluate(`scrollTo({ top: 0, behavior: "instant" })`);
}
