import { findFirefox } from "./find-firefox.ts";
import { installPackage } from "./install-package.ts";

/**
 * Path of a Firefox: one already on the machine, else Debian's long-term one where that may be installed.
 * Throws with advice where none can be had.
 */
export function ensureFirefox(): string {
  const present = findFirefox();
  if (present) return present;
  installPackage("firefox-esr");
  const installed = findFirefox();
  if (installed) return installed;
  throw new Error("No Firefox could be installed. Install one and set FIREFOX_PATH to its program.");
}
