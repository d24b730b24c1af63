import { spawn } from "node:child_process";
import { join } from "node:path";
import { type BrowserContext, chromium } from "playwright-core";
import { findChromium } from "./find-chromium.ts";
import { QUIET_FLAGS } from "./open-browser.ts";
import { BUILT_EXTENSION } from "./open-extension.ts";

/** How long Chromium may take to start before the test fails; ms. */
const START_MS = 60_000;

/** A Chromium as a person starts it. */
export interface PlainChromium {
  readonly context: BrowserContext;
  close(): Promise<void>;
}

/**
 * Starts Chromium with the built extension on a profile, without what the driver changes where it starts it itself: pages
 * gone by are remembered, and a tab behind another is hidden.
 */
export async function startChromium(profile: string): Promise<PlainChromium> {
  const built = join(process.cwd(), BUILT_EXTENSION);
  const extension = [`--disable-extensions-except=${built}`, `--load-extension=${built}`];
  const args = ["--headless=new", "--no-sandbox", "--remote-debugging-port=0", `--user-data-dir=${profile}`];
  const program = spawn(findChromium() ?? "", [...args, ...QUIET_FLAGS, ...extension, "about:blank"], {
    stdio: ["ignore", "ignore", "pipe"],
  });
  const gone = new Promise<void>((ended) => program.once("exit", () => ended()));
  const address = await new Promise<string>((told, failed) => {
    let said = "";
    const timer = setTimeout(() => failed(new Error(`Chromium did not start:\n${said}`)), START_MS);
    program.stderr.on("data", (data) => {
      said += data;
      const [, found] = /DevTools listening on (ws:\S+)/.exec(said) ?? [];
      if (!found) return;
      clearTimeout(timer);
      told(found);
    });
  });
  const browser = await chromium.connectOverCDP(address, { noDefaults: true });
  const [context] = browser.contexts();
  if (!context) throw new Error("This Chromium has no window.");
  return {
    context,
    close: async () => {
      const session = await browser.newBrowserCDPSession();
      await session.send("Browser.close").catch(() => undefined);
      await gone;
    },
  };
}
