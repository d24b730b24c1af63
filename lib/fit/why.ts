import type { SchemeName } from "../color/scheme-name.ts";
import { whyRelation } from "../color/why.ts";
import { namesApart } from "./swatch-name.ts";
import type { Tie } from "./tie.ts";
import { yourName } from "./your-name.ts";

/** Why a candidate goes with an owned piece: the two colours by name, and how they stand on the wheel. */
export function whyTie({ owned, own, its, relating }: Tie): string {
  const [name, itsName] = namesApart(own, its);
  const theirs = `the ${itsName} of ${yourName(owned.piece.name)}`;
  return whyRelation(own.point, its.point, relating, [name, theirs]);
}

const SCHEME_WORDS: Readonly<Record<SchemeName, string>> = {
  matching: "one shade throughout",
  monochromatic: "one hue at several levels",
  analogous: "neighbours on the artist's wheel",
  triadic: "a triad, hues a third of the artist's wheel apart",
  "split-complementary": "a hue and what lies beside its opposite",
  complementary: "opposites on the artist's wheel",
  tetradic: "a tetrad, two pairs of opposites on the artist's wheel",
  "with-neutral": "neutrals, with at most one hue among them",
  none: "no scheme with a name",
};

/** Two hues are never a whole triad. */
const TWO_OF_A_TRIAD = "two of a triad, a third of the artist's wheel apart";

/** Why a candidate makes a look with these owned pieces. */
export function whyLook(ties: readonly Tie[], scheme: SchemeName, whole: boolean): string {
  const pieces = ties.map(({ owned }) => yourName(owned.piece.name)).join(" and ");
  const words = scheme === "triadic" && !whole ? TWO_OF_A_TRIAD : SCHEME_WORDS[scheme];
  return `With ${pieces} it follows one scheme: ${words}.`;
}
