import { existsSync } from "node:fs";
import { chromium } from "playwright-core";

const KNOWN_PLACES = [
  process.env.CHROMIUM_PATH,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/snap/bin/chromium",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
];

/** Path of a Chromium that may load extensions, or null where the machine has none. */
export function findChromium(): string | null {
  for (const place of KNOWN_PLACES) if (place && existsSync(place)) return place;
  const own = chromium.executablePath();
  return own && existsSync(own) ? own : null;
}
