import type { Oklab } from "../color/oklab.ts";
import type { ColorTerm } from "../words/color-term.ts";
import { FINISHES, type Finish } from "./palette.ts";
import { bestFit, termFit } from "./term-region.ts";

/** Fit, 0–1, of a colour with a metal's region from which the page's word is taken to mean it. Proposal: half. */
const MEANT = 0.5;

/**
 * The metal that the page's words call a colour: one of them that fits it better than all the other words do. Null where
 * they name none, for pixels never tell gold from yellow or silver from grey.
 */
export function saidMetal(terms: readonly ColorTerm[], [l, a, b]: Oklab): Finish | null {
  const isMetal = (term: ColorTerm) => FINISHES.some((finish) => finish === term);
  let best = Math.max(
    MEANT,
    bestFit(
      terms.filter((term) => !isMetal(term)),
      l,
      a,
      b,
    ),
  );
  let said: Finish | null = null;
  for (const finish of FINISHES) {
    const fit = terms.includes(finish) ? termFit(finish, l, a, b) : 0;
    if (fit > best) {
      best = fit;
      said = finish;
    }
  }
  return said;
}
