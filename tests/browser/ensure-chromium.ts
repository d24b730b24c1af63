import { spawnSync } from "node:child_process";
import { findChromium } from "./find-chromium.ts";

const say = (line: string) => process.stderr.write(`${line}\n`);

function run(program: string, args: readonly string[], env: Record<string, string>): boolean {
  const done = spawnSync(program, args, {
    stdio: ["ignore", process.stderr, process.stderr],
    env: { ...process.env, ...env },
  });
  return done.status === 0;
}

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
  if (process.getuid?.() === 0) {
    say("That did not work: installing Debian's chromium package instead.");
    const quiet = { DEBIAN_FRONTEND: "noninteractive" };
    run("apt-get", ["update", "-qq"], quiet);
    run("apt-get", ["install", "-y", "-qq", "chromium"], quiet);
  }
  const installed = findChromium();
  if (installed) return installed;
  throw new Error("No Chromium could be installed. Install one and set CHROMIUM_PATH to its program.");
}
