import { chromaOf } from "./convert.ts";
import { everydayTerm, isccName } from "./everyday-term.ts";
import { isNeutral } from "./neutral.ts";
import type { Oklab } from "./oklab.ts";
import { spokenName } from "./spoken-name.ts";
import { DARK_GREY_BELOW, LIGHT_GREY_ABOVE } from "./thresholds.ts";

/** What people call a colour ("dusty pink", "navy blue"), and its exact ISCC-NBS name in British spelling. */
export interface ColorName {
  readonly everyday: string;
  readonly iscc: string;
}

/** Names a colour: in everyday words, among them its everyday term, and by its ISCC-NBS block. @throws ColorError when a part is not finite. */
export function nameColor(c: Oklab): ColorName {
  const term = everydayTerm(c);
  const iscc = isccName(c);
  if (!isNeutral(c[0], chromaOf(c))) return { everyday: spokenName(c, term, iscc), iscc };
  return { everyday: term === "grey" ? greyName(c[0]) : term, iscc };
}

function greyName(lightness: number): string {
  if (lightness < DARK_GREY_BELOW) return "dark grey";
  return lightness > LIGHT_GREY_ABOVE ? "light grey" : "grey";
}

/**
 * What to call two colours that are spoken of together: their everyday names, or with the ISCC-NBS name in brackets where those
 * alone would not tell them apart.
 */
export function tellApart(a: ColorName, b: ColorName): readonly [a: string, b: string] {
  if (a.everyday !== b.everyday || a.iscc === b.iscc) return [a.everyday, b.everyday];
  return [`${a.everyday} (${a.iscc})`, `${b.everyday} (${b.iscc})`];
}
