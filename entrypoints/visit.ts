import { browser } from "wxt/browser";
import { defineUnlistedScript } from "wxt/utils/define-unlisted-script";
import { browserBell } from "../lib/closet/browser-bell.ts";
import { askWorker } from "../lib/link/ask-worker.ts";
import { onStop, publishSummaries } from "../lib/link/listen.ts";
import { oneVisit } from "../lib/visit/one-visit.ts";
import { cardOnDemand } from "../lib/visit/parts.ts";
import { startVisit } from "../lib/visit/start-visit.ts";

/** The script on a store page; injected when its store is switched on, or once from the popup. */
export default defineUnlistedScript(() => {
  const end = oneVisit(() => Boolean(browser.runtime?.id));
  if (!end) return;
  const { signal } = end;
  onStop(document.URL, () => end.abort(), signal);
  void startVisit({
    ask: askWorker,
    publish: publishSummaries(signal),
    onClosetChange: browserBell(browser.storage).onRing,
    openCard: cardOnDemand(askWorker, signal),
    signal,
  });
});
