import { findChromium } from "./find-chromium.ts";
import { installPackage, run, say } from "./install-package.ts";

/**
 * Path of a Chromium that may load extensions: one already on the machine, else playwright's, else Debian's package
 * where that may be installed. Says in one line what it is doing. Throws with advice where none can be had.
 */
export function ensureChromium(): string {
  const present = findChromium();
  if (present) return present;
  say("No Chromium here yet: downloading playwright's, about 170 MB.");
  run(process.execPath, ["node_modules/playwright-core/cli.js", "install", "chromium"], {
    PLAYWRIGHT_DOWNLOAD_CONNECTION_TIMEOUT: "20000",
  });
  const downloaded = findChromium();
  if (downloaded) return downloaded;
  installPackage("chromium");
  const installed = findChromium();
  if (installed) return installed;
  throw new Error("No Chromium could be installed. Install one and set CHROMIUM_PATH to its program.");
}
