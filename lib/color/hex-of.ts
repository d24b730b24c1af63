import { rgb8FromOklab } from "./convert.ts";
import type { Oklab } from "./oklab.ts";

/** `#rrggbb` of a colour, for files, colour inputs and commands; the interface itself shows names. @throws ColorError when a part is not finite. */
export function hexOf(c: Oklab): string {
  return `#${rgb8FromOklab(c)
    .map((part) => part.toString(16).padStart(2, "0"))
    .join("")}`;
}
