import type { GrantBrowser } from "./grant-browser.ts";
import { reconcileStores, switchStoreOff } from "./stores.ts";

/** Switching of stores, one step after the other: the browser's events come in bursts and must not overtake each other. */
export function keepStores(browser: GrantBrowser, now: () => number) {
  let last: Promise<void> = Promise.resolve();
  const queue = (step: () => Promise<void>): Promise<void> => {
    const next = last.then(step);
    // A failed step is told to its own caller and must not stop the next.
    last = next.catch(() => undefined);
    return next;
  };
  return {
    /** Makes scripts agree with grants, and starts at once in tabs that show a newly granted store. */
    reconcile: () =>
      queue(async () => {
        for (const origin of await reconcileStores(browser, now())) await browser.runInOpenTabs(origin);
      }),
    switchOff: (origin: string) => queue(() => switchStoreOff(browser, origin)),
  };
}
