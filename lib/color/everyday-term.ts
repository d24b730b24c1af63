import type { ColorTerm } from "../words/color-term.ts";
import { chromaOf, finite } from "./convert.ts";
import { ISCC_NAMES } from "./data/iscc-names.ts";
import { termOfIscc } from "./iscc-terms.ts";
import { type NamedColor, nearestName, readNames } from "./name-table.ts";
import { isNeutral } from "./neutral.ts";
import type { Oklab } from "./oklab.ts";
import { TERM_ANCHORS } from "./term-anchors.ts";
import { BLACK_BELOW, WHITE_ABOVE } from "./thresholds.ts";

const ISCC = readNames(ISCC_NAMES).map((entry) => ({ ...entry, term: termOfIscc(entry.name) }));

/** What a colour may be called; some of it by the word of a fabric ("taupe") before the term. */
interface TermColor extends NamedColor {
  readonly term: ColorTerm;
  readonly word?: string;
}

const TERMS: readonly TermColor[] = [...ISCC, ...TERM_ANCHORS];

/** The ISCC-NBS name of the nearest centroid, in British spelling. @throws ColorError when a part is not finite. */
export function isccName(c: Oklab): string {
  return nearestName(ISCC, finite(c)).name;
}

/** The nearest colour with a term, for a colour that is not achromatic. @throws ColorError when a part is not finite. */
export function nearestTerm(c: Oklab): Pick<TermColor, "term" | "word"> {
  return nearestName(TERMS, finite(c));
}

/**
 * One plain word for a colour: "red", "navy", "beige". A neutral is black, grey or white by its lightness alone; never a
 * metal, which no picture can tell. @throws ColorError when a part is not finite.
 */
export function everydayTerm(c: Oklab): ColorTerm {
  const lightness = finite(c)[0];
  if (!isNeutral(lightness, chromaOf(c))) return nearestTerm(c).term;
  if (lightness < BLACK_BELOW) return "black";
  return lightness > WHITE_ABOVE ? "white" : "grey";
}
