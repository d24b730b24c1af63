import { existsSync } from "node:fs";

const KNOWN_PLACES = [
  process.env.FIREFOX_PATH,
  "/usr/bin/firefox-esr",
  "/usr/bin/firefox",
  "/snap/bin/firefox",
  "/Applications/Firefox.app/Contents/MacOS/firefox",
  "C:\\Program Files\\Mozilla Firefox\\firefox.exe",
];

/** Path of a Firefox, the long-term one first, or null where the machine has none. */
export function findFirefox(): string | null {
  return KNOWN_PLACES.find((place) => place && existsSync(place)) ?? null;
}
