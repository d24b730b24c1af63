import { RELATIONS } from "../color/relation-name.ts";
import { SATURATION_AGREES_WITHIN } from "../color/thresholds.ts";
import { rankOf, type Tie } from "./tie.ts";

/**
 * Orders ties, best first: one shade, then hues, then neutrals; clear relations before hedged ones; similar saturation
 * before unlike, for it reads as belonging together, while one hue works whatever the saturation (common practice, no source).
 * The rest only makes the order certain: relation, difference, id.
 */
export function compareTies(one: Tie, other: Tie): number {
  return (
    rankOf(one.relating) - rankOf(other.relating) ||
    Number(isHedged(one)) - Number(isHedged(other)) ||
    Number(isUnlike(one)) - Number(isUnlike(other)) ||
    RELATIONS.indexOf(one.relating.relation) - RELATIONS.indexOf(other.relating.relation) ||
    one.relating.deltaE2000 - other.relating.deltaE2000 ||
    (one.owned.piece.id < other.owned.piece.id ? -1 : 1)
  );
}

/** Whether two hues differ so much in saturation that they do not read as belonging together. */
function isUnlike({ own, its, relating }: Tie): boolean {
  return (
    rankOf(relating) === 1 &&
    relating.relation !== "monochromatic" &&
    Math.abs(own.point.saturation - its.point.saturation) > SATURATION_AGREES_WITHIN
  );
}

/** Whether other names are open too. */
function isHedged({ relating }: Tie): boolean {
  return relating.alternatives.length > 0;
}
