import type { ColorTerm } from "./color-term.ts";
import { fold, hitsIn, tokensOf } from "./lexicon.ts";
import { lexicons } from "./lexicons.ts";

/** Basic terms that only repeat a trade term beside them: "navy blue" is navy, "vert olive" is olive. */
const WIDER: Partial<Record<ColorTerm, readonly ColorTerm[]>> = {
  cream: ["white"],
  camel: ["brown"],
  khaki: ["green"],
  olive: ["green"],
  mint: ["green"],
  teal: ["green", "blue"],
  turquoise: ["blue", "green"],
  navy: ["blue"],
  lavender: ["purple"],
  fuchsia: ["pink"],
  coral: ["pink", "red", "orange"],
  peach: ["pink", "orange"],
  burgundy: ["red"],
  rust: ["red", "orange", "brown"],
  mustard: ["yellow"],
  gold: ["pink", "yellow"],
};

/** The colour terms that a text names, in any of the ten languages, in order of appearance, each once. */
export function readColorTerms(text: string): readonly ColorTerm[] {
  const { colors } = lexicons();
  const terms: ColorTerm[] = [];
  let before: ColorTerm | undefined;
  for (const token of tokensOf(fold(text))) {
    const found = hitsIn(token, colors).flatMap((hit) => hit.senses[0]?.term ?? []);
    for (const term of found) {
      if (before && WIDER[before]?.includes(term)) continue;
      if (before && WIDER[term]?.includes(before)) terms.pop();
      terms.push(term);
      before = term;
    }
    if (found.length === 0) before = undefined;
  }
  return [...new Set(terms)];
}
