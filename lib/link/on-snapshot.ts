import { browser } from "wxt/browser";
import { type ScreenView, SNAPSHOT_PORT, type SnapshotWord } from "./messages.ts";

/** A page that holds still for one snapshot. */
export interface Sitting {
  /** What there is to take, once it is drawn with nothing of ours before it. */
  readonly views: Promise<readonly ScreenView[]>;
  readonly hear: (word: SnapshotWord) => void;
  /** Ends it, whatever has become of the snapshot; may be called more than once. */
  readonly end: () => void;
}

/** Has the page hold still each time that a popup is about to take a snapshot, at most until that popup closes. */
export function onSnapshot(sit: () => Sitting, signal: AbortSignal): void {
  const opened = (port: ReturnType<typeof browser.runtime.connect>) => {
    if (port.name !== SNAPSHOT_PORT) return;
    const { views, hear, end } = sit();
    port.onMessage.addListener(hear);
    port.onDisconnect.addListener(end);
    void views.then((all) => port.postMessage(all)).catch(end);
  };
  browser.runtime.onConnect.addListener(opened);
  signal.addEventListener("abort", () => browser.runtime.onConnect.removeListener(opened), { once: true });
}
