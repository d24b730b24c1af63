import { type Browser, chromium } from "playwright-core";
import { findChromium } from "./find-chromium.ts";

/** Flags that keep a test browser from talking to anything but the test's own servers. */
export const QUIET_FLAGS = [
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--disable-quic",
  "--disable-gpu",
];

/** A plain headless Chromium without the extension. Throws with advice where there is none. */
export async function openBrowser(): Promise<Browser> {
  const executablePath = findChromium();
  if (!executablePath) throw new Error("No Chromium found. Run `npm test` once, or set CHROMIUM_PATH.");
  return chromium.launch({ executablePath, args: QUIET_FLAGS, chromiumSandbox: false });
}
