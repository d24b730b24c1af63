import type { ColorTerm } from "../words/color-term.ts";
import { everydayTerm, isccName } from "./everyday-term.ts";
import type { Oklab } from "./oklab.ts";

/** Chromatic terms that are worn as a neutral is. Common practice, no source. */
const WORN_AS_NEUTRAL: readonly ColorTerm[] = ["beige", "brown", "camel", "cream", "khaki", "navy"];

/** ISCC-NBS blocks of washed and raw denim. Common practice, no source. */
const DENIM = [
  "moderate blue",
  "greyish blue",
  "dark greyish blue",
  "moderate purplish blue",
  "greyish purplish blue",
];

/**
 * Whether people often wear a colour as they wear black or grey (navy, denim, camel, beige, …). It says nothing about chroma: such a
 * colour keeps its hue relations. False for an achromatic colour. @throws ColorError when a part is not finite.
 */
export function oftenWornAsNeutral(c: Oklab): boolean {
  const term = everydayTerm(c);
  return WORN_AS_NEUTRAL.includes(term) || (term === "blue" && DENIM.includes(isccName(c)));
}
