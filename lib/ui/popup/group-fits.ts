import { RELATIONS, type Relation } from "../../color/relation-name.ts";
import type { PieceFit, Verdict } from "../../fit/verdict.ts";
import type { ExplainedVerdict } from "../../link/messages.ts";
import { RELATION_WORDS } from "../words.ts";

/** The owned pieces in one relation to a product, best first. */
export interface FitGroup {
  readonly relation: Relation;
  readonly fits: readonly PieceFit[];
}

/** The pieces of a verdict by relation; groups in the order of the verdict's own best, neutrals after the hues. */
export function groupFits(pieces: Verdict["pieces"]): readonly FitGroup[] {
  const groups = RELATIONS.map((relation) => ({
    relation,
    fits: pieces.filter((fit) => fit.relation === relation),
  })).filter(({ fits }) => fits.length > 0);
  const bestPlace = ({ relation, fits }: FitGroup) =>
    relation === "with-neutral" ? pieces.length : fits[0] ? pieces.indexOf(fits[0]) : pieces.length;
  return groups.toSorted((a, b) => bestPlace(a) - bestPlace(b));
}

/** A word at the head of a line. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** A group in a few words: "Complementary: navy blazer", " and 2 more"; the second part must not be cut off. */
export function glanceAt(
  { relation, fits }: FitGroup,
  pieces: ExplainedVerdict["pieces"],
): readonly [best: string, more: string] {
  const [first, ...others] = fits;
  const name = (first && pieces[first.pieceId]?.name) ?? "one of your pieces";
  const more = others.length > 0 ? ` and ${others.length} more` : "";
  return [`${capital(RELATION_WORDS[relation])}: ${name}`, more];
}
