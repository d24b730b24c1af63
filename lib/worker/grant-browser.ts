import { browser } from "wxt/browser";
import { patternOf } from "../link/origin-of.ts";

/** As much of the browser as switching stores on and off needs; injected, so that the logic runs in a plain test. */
export interface GrantBrowser {
  /** The stored records, unchecked. */
  readStores(): Promise<unknown>;
  writeStores(stores: unknown): Promise<void>;
  /** Calls `listener` after the records changed, in whichever context. */
  onStoresChange(listener: () => void): void;
  /** Is every one of these origins granted? */
  isGranted(origins: readonly string[]): Promise<boolean>;
  giveBack(origins: readonly string[]): Promise<void>;
  /** Origins whose pages get the page script by themselves. */
  registered(): Promise<readonly string[]>;
  register(origins: readonly string[]): Promise<void>;
  unregister(origins: readonly string[]): Promise<void>;
  /** Starts the page script in tabs that already show this origin. */
  runInOpenTabs(origin: string): Promise<void>;
  /** Ends the page script wherever it runs on this origin. */
  stopPages(origin: string): Promise<void>;
}

const STORES_KEY = "stores";

/** Built from entrypoints/visit.ts. */
export const PAGE_SCRIPT = "/visit.js";

/** Built from entrypoints/show.ts and entrypoints/card.ts. */
export const PART_SCRIPTS = { show: "/show.js", card: "/card.js" } as const;

/** The real browser. */
export const grantBrowser: GrantBrowser = {
  readStores: async () => (await browser.storage.local.get(STORES_KEY))[STORES_KEY],
  writeStores: (stores) => browser.storage.local.set({ [STORES_KEY]: stores }),
  onStoresChange: (listener) =>
    browser.storage.local.onChanged.addListener((changes) => {
      if (STORES_KEY in changes) listener();
    }),
  isGranted: (origins) => browser.permissions.contains({ origins: origins.map(patternOf) }),
  giveBack: async (origins) => {
    if (origins.length > 0) await browser.permissions.remove({ origins: origins.map(patternOf) });
  },
  registered: async () => (await browser.scripting.getRegisteredContentScripts()).map((script) => script.id),
  register: (origins) =>
    browser.scripting.registerContentScripts(
      origins.map((origin) => ({
        id: origin,
        js: [PAGE_SCRIPT],
        matches: [patternOf(origin)],
        runAt: "document_idle" as const,
        persistAcrossSessions: true,
      })),
    ),
  unregister: (origins) => browser.scripting.unregisterContentScripts({ ids: [...origins] }),
  runInOpenTabs: async (origin) => {
    const tabs = await browser.tabs.query({ url: patternOf(origin) });
    await Promise.allSettled(
      tabs.map(async ({ id }) => {
        if (id !== undefined)
          await browser.scripting.executeScript({ target: { tabId: id }, files: [PAGE_SCRIPT] });
      }),
    );
  },
  stopPages: async (origin) => {
    const tabs = await browser.tabs.query({});
    await Promise.allSettled(
      tabs.map(async ({ id }) => {
        if (id !== undefined) await browser.tabs.sendMessage(id, { to: "page", stop: origin });
      }),
    );
  },
};
