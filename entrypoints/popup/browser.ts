import { browser } from "wxt/browser";
import { browserBell } from "../../lib/closet/browser-bell.ts";
import { openCloset } from "../../lib/closet/open-closet.ts";
import { askWorker } from "../../lib/link/ask-worker.ts";
import { SNAPSHOT_PORT, type SnapshotWord, SUMMARY_PORT } from "../../lib/link/messages.ts";
import { patternOf } from "../../lib/link/origin-of.ts";
import { pixelsOfSnapshot } from "../../lib/pixels/pixels-of-snapshot.ts";
import { imageOriginsOnPage } from "../../lib/ui/popup/image-origins-on-page.ts";
import type { PopupBrowser } from "../../lib/ui/popup/popup-browser.ts";
import { grantBrowser, PAGE_SCRIPT } from "../../lib/worker/grant-browser.ts";
import { grantOf, intendStore } from "../../lib/worker/stores.ts";

const closet = openCloset(browserBell(browser.storage));

/** The real browser. */
export const popupBrowser: PopupBrowser = {
  async shownTab() {
    const [tab] = await browser.tabs.query({ active: true, currentWindow: true });
    return tab?.id === undefined ? null : { id: tab.id, url: tab.url ?? null };
  },
  onTabLoaded(tabId, listener, signal) {
    const whenUpdated = (id: number, { status }: { status?: string | undefined }) => {
      if (id === tabId && status === "complete") listener();
    };
    browser.tabs.onUpdated.addListener(whenUpdated);
    signal.addEventListener("abort", () => browser.tabs.onUpdated.removeListener(whenUpdated));
  },
  async imageOrigins(tabId) {
    const [frame] = await browser.scripting.executeScript({ target: { tabId }, func: imageOriginsOnPage });
    return frame?.result;
  },
  storeGrant: (origin) => grantOf(grantBrowser, origin),
  requestOrigins: (origins) => browser.permissions.request({ origins: origins.map(patternOf) }),
  intendStore: (origin, imageOrigins) => intendStore(grantBrowser, origin, imageOrigins, Date.now()),
  async runOnce(tabId) {
    await browser.scripting.executeScript({ target: { tabId }, files: [PAGE_SCRIPT] });
  },
  reloadTab: (tabId) => browser.tabs.reload(tabId),
  connect(tabId, line) {
    const port = browser.tabs.connect(tabId, { name: SUMMARY_PORT });
    port.onMessage.addListener((message) => line.summary(message));
    port.onDisconnect.addListener(() => {
      // Reading it tells Chromium that a page without the script is no surprise.
      void browser.runtime.lastError;
      line.closed();
    });
    return () => port.disconnect();
  },
  holdStill(tabId) {
    const port = browser.tabs.connect(tabId, { name: SNAPSHOT_PORT });
    const say = (word: SnapshotWord) => port.postMessage(word);
    return new Promise((ready, failed) => {
      port.onMessage.addListener((views: unknown) => ready({ views, say }));
      port.onDisconnect.addListener(() => failed(browser.runtime.lastError));
    });
  },
  snapshot: async () => (await fetch(await browser.tabs.captureVisibleTab({ format: "png" }))).blob(),
  pixelsIn: pixelsOfSnapshot,
  closetSize: async () => (await closet.pieces()).length,
  onClosetChange: (listener, signal) => closet.onChange(listener, signal),
  openCloset: () => void browser.tabs.create({ url: browser.runtime.getURL("/closet.html") }),
  ask: askWorker,
};
