import { browser } from "wxt/browser";
import { type PageSummary, type StopPage, SUMMARY_PORT } from "./messages.ts";
import { originOf } from "./origin-of.ts";

const isStop = (message: unknown): message is StopPage =>
  typeof message === "object" &&
  message !== null &&
  "to" in message &&
  message.to === "page" &&
  "stop" in message;

/** Calls `stop` when the extension says that this page's origin is switched off. */
export function onStop(pageUrl: string, stop: () => void, signal: AbortSignal): void {
  const heard = (message: unknown) => {
    if (isStop(message) && message.stop === originOf(pageUrl)) stop();
  };
  browser.runtime.onMessage.addListener(heard);
  signal.addEventListener("abort", () => browser.runtime.onMessage.removeListener(heard), { once: true });
}

/**
 * Sends the newest summary to every popup that listens: at once when it opens, then at each call of the function
 * that is returned.
 */
export function publishSummaries(signal: AbortSignal): (summary: PageSummary) => void {
  const ports = new Set<{ postMessage(message: unknown): void }>();
  let newest: PageSummary | null = null;
  const opened = (port: ReturnType<typeof browser.runtime.connect>) => {
    if (port.name !== SUMMARY_PORT) return;
    ports.add(port);
    port.onDisconnect.addListener(() => ports.delete(port));
    if (newest) port.postMessage(newest);
  };
  browser.runtime.onConnect.addListener(opened);
  signal.addEventListener("abort", () => browser.runtime.onConnect.removeListener(opened), { once: true });
  return (summary) => {
    newest = summary;
    for (const port of ports) port.postMessage(summary);
  };
}
