import { swatchName } from "../../color/swatch-name.ts";
import type { Swatch } from "../../sample/palette.ts";
import type { Slot } from "../../words/slot.ts";
import { SLOT_WORDS } from "../words.ts";

/** What cameras and messengers call their files: a few capitals, then counters and dates. */
const CAMERA_NAME =
  /^(?:img|dsc[nf]?|pxl|mvimg|photo|image|picture|screenshot|wa|p|foto|bild)?[\s\d]*(?:wa|at)?[\s\d.]*$/i;

/** Longest name kept from a file, characters. */
const LONGEST = 80;

/** A name for a piece from its file: the words in it, or nothing where the camera named it. */
export function photoName(fileName: string): string {
  const words = fileName
    .replace(/\.[a-z0-9]{1,5}$/i, "")
    .replace(/[_\-\s]+/g, " ")
    .trim();
  if (CAMERA_NAME.test(words)) return "";
  return words.charAt(0).toUpperCase() + words.slice(1, LONGEST);
}

/** "Navy top": a name from what is seen, for a piece that has no better one. */
export function plainName([first]: readonly Swatch[], slot: Slot | null): string {
  const what = slot === null ? "piece" : SLOT_WORDS[slot].toLowerCase();
  const name = `${first === undefined ? "New" : swatchName(first)} ${what}`;
  return name.charAt(0).toUpperCase() + name.slice(1);
}
