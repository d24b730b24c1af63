import type { ChangeBell } from "./closet.ts";

/** As much of the extension storage API as a bell needs; `browser.storage` in product. */
export interface BellStorage {
  readonly local: { set(items: Record<string, unknown>): Promise<void> };
  readonly onChanged: {
    addListener(listener: (changes: Record<string, unknown>, area: string) => void): void;
    removeListener(listener: (changes: Record<string, unknown>, area: string) => void): void;
  };
}

const BELL_KEY = "closet-changed";

/** A bell that every context of the extension hears: the storage event of one small value that is new each time. */
export function browserBell(storage: BellStorage): ChangeBell {
  return {
    ring: () => storage.local.set({ [BELL_KEY]: crypto.randomUUID() }),
    onRing: (listener, signal) => {
      const heard = (changes: Record<string, unknown>, area: string) => {
        if (area === "local" && BELL_KEY in changes) listener();
      };
      storage.onChanged.addListener(heard);
      signal.addEventListener("abort", () => storage.onChanged.removeListener(heard), { once: true });
    },
  };
}
