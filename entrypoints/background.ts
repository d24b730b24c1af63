import { browser } from "wxt/browser";
import { defineBackground } from "wxt/utils/define-background";
import { browserBell } from "../lib/closet/browser-bell.ts";
import { openCloset } from "../lib/closet/open-closet.ts";
import { createServer } from "../lib/link/serve.ts";
import { createHandlers } from "../lib/worker/create-handlers.ts";
import { grantBrowser, PART_SCRIPTS } from "../lib/worker/grant-browser.ts";
import { keepStores } from "../lib/worker/keep-stores.ts";
import { pictureDesk } from "../lib/worker/picture-desk.ts";

export default defineBackground(() => {
  const { signal } = new AbortController();
  const stores = keepStores(grantBrowser, Date.now);
  const handlers = createHandlers({
    closet: openCloset(browserBell(browser.storage)),
    pictures: pictureDesk(grantBrowser.isGranted, signal),
    switchOff: stores.switchOff,
    runPart: async (name, tabId, frameId) => {
      const target = { tabId, frameIds: [frameId] };
      await browser.scripting.executeScript({ target, files: [PART_SCRIPTS[name]] });
    },
    now: Date.now,
    signal,
  });
  const answer = createServer(handlers, {
    id: browser.runtime.id,
    origin: new URL(browser.runtime.getURL("/")).origin,
  });
  browser.runtime.onMessage.addListener((message: unknown, sender, respond) => {
    const reply = answer(message, sender);
    reply?.then(respond);
    return reply !== null;
  });
  grantBrowser.onStoresChange(() => void stores.reconcile());
  browser.permissions.onAdded.addListener(() => void stores.reconcile());
  browser.permissions.onRemoved.addListener(() => void stores.reconcile());
  browser.runtime.onStartup.addListener(() => void stores.reconcile());
  browser.runtime.onInstalled.addListener(() => void stores.reconcile());
  void stores.reconcile();
});
