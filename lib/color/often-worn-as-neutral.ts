import type { ColorTerm } from "../words/color-term.ts";
import { chromaOf } from "./convert.ts";
import { everydayTerm, isccName } from "./everyday-term.ts";
import { isNeutral } from "./neutral.ts";
import type { Oklab } from "./oklab.ts";

/** Terms that are worn as a neutral is, though the colour has a hue. Common practice, no source. */
const WORN_AS_NEUTRAL: readonly ColorTerm[] = [
  "beige",
  "black",
  "brown",
  "camel",
  "cream",
  "grey",
  "khaki",
  "navy",
  "white",
];

/** ISCC-NBS blocks of washed and raw denim. Common practice, no source. */
const DENIM = [
  "moderate blue",
  "greyish blue",
  "dark greyish blue",
  "moderate purplish blue",
  "greyish purplish blue",
];

/**
 * Whether people often wear a colour as they wear black or grey (navy, denim, camel, warm grey, …). It says nothing about chroma: such a
 * colour keeps its hue relations. False for an achromatic colour, which is a neutral. @throws ColorError when a part is not finite.
 */
export function oftenWornAsNeutral(c: Oklab): boolean {
  const term = everydayTerm(c);
  if (isNeutral(c[0], chromaOf(c))) return false;
  return WORN_AS_NEUTRAL.includes(term) || (term === "blue" && DENIM.includes(isccName(c)));
}
