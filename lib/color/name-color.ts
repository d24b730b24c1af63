import type { ColorTerm } from "../words/color-term.ts";
import { finite } from "./convert.ts";
import { EVERYDAY_NAMES } from "./data/everyday-names.ts";
import { everydayTerm, isccName } from "./everyday-term.ts";
import { labFromOklab } from "./lab.ts";
import { nearestName, readNames } from "./name-table.ts";
import type { Oklab } from "./oklab.ts";

/** What people call a colour ("deep teal", "dusty pink"), and its exact ISCC-NBS name in British spelling. */
export interface ColorName {
  readonly everyday: string;
  readonly iscc: string;
}

/** Names a colour by the nearest entry of two published lists; the everyday name agrees with its everyday term. @throws ColorError when a part is not finite. */
export function nameColor(c: Oklab): ColorName {
  const names = EVERYDAY.get(everydayTerm(finite(c))) ?? [];
  return { everyday: nearestName(names, labFromOklab(c)).name, iscc: isccName(c) };
}

/**
 * What to call two colours that are spoken of together: their everyday names, or with the ISCC-NBS name in brackets where those
 * alone would not tell them apart.
 */
export function tellApart(a: ColorName, b: ColorName): readonly [a: string, b: string] {
  if (a.everyday !== b.everyday || a.iscc === b.iscc) return [a.everyday, b.everyday];
  return [`${a.everyday} (${a.iscc})`, `${b.everyday} (${b.iscc})`];
}

/** The survey's names by the term their own colour has. */
const EVERYDAY = new Map(
  Object.entries(EVERYDAY_NAMES).map(([term, rows]) => [term as ColorTerm, readNames(rows)]),
);
