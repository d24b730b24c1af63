import type { Relation } from "../color/relation-name.ts";
import { whyRelation } from "../color/why.ts";
import { swatchName } from "./swatch-name.ts";
import type { Tie } from "./tie.ts";
import { yourName } from "./your-name.ts";

/** Why a candidate goes with an owned piece: the two colours by name, and how they stand on the wheel. */
export function whyTie({ owned, own, its, relating }: Tie): string {
  const theirs = `the ${swatchName(its)} of ${yourName(owned.piece.name)}`;
  return whyRelation(own.point, its.point, relating, [swatchName(own), theirs]);
}

const SCHEME_WORDS: Readonly<Record<Relation, string>> = {
  matching: "one shade throughout",
  monochromatic: "one hue at several levels",
  analogous: "neighbours on the artist's wheel",
  triadic: "hues a third of the artist's wheel apart",
  "split-complementary": "a hue and what lies beside its opposite",
  complementary: "opposites on the artist's wheel",
  "with-neutral": "neutrals, with at most one hue among them",
  none: "no scheme with a name",
};

/** Why a candidate makes a look with these owned pieces. */
export function whyLook(ties: readonly Tie[], scheme: Relation): string {
  const pieces = ties.map(({ owned }) => yourName(owned.piece.name)).join(" and ");
  return `With ${pieces} it follows one scheme: ${SCHEME_WORDS[scheme]}.`;
}
