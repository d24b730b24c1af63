import { NO_VISIBLE_DIFFERENCE } from "../color/thresholds.ts";
import type { Slot } from "../words/slot.ts";
import type { ShownSwatch } from "./prepared-piece.ts";
import { plainWord } from "./swatch-name.ts";
import type { Tie } from "./tie.ts";
import type { Duplicate, Verdict } from "./verdict.ts";
import { isOptional } from "./wearable-together.ts";
import { yourName } from "./your-name.ts";

/** Confidence, 0–1, below which the first swatch is more likely not the cloth; then the words are hedged. */
export const SURE_FROM = 0.5;

/** Neutrals that a headline names; more are called "your neutrals". Our choice, from the width of a badge. */
const NEUTRALS_NAMED = 2;

/** What a headline rests on. */
export interface Findings {
  readonly slot: Slot | null;
  readonly confidence: number;
  /** The candidate's swatches that count. */
  readonly shown: readonly ShownSwatch[];
  /** In order, best first. */
  readonly duplicates: readonly Duplicate[];
  /** In any order. */
  readonly ties: readonly Tie[];
  readonly looks: number;
  /** A piece that is often worn as a neutral and may be worn with it; asked for only where there is no tie at all. */
  readonly wornAsNeutral: () => string | undefined;
}

type Headline = Pick<Verdict, "headline" | "kind" | "count">;

/** The few words of a verdict: the strongest finding, worded no more surely than the picture allows. */
export function headlineOf(found: Findings): Headline {
  return (
    ofDuplicates(found) ??
    ofSets(found) ??
    ofNeutralsOnly(found) ??
    ofLooks(found) ??
    ofTies(found) ??
    ofNothing(found)
  );
}

function isSure({ confidence }: Findings): boolean {
  return confidence >= SURE_FROM;
}

function ofDuplicates(found: Findings): Headline | null {
  const [first] = found.duplicates;
  const [statement] = found.shown;
  if (!first || !statement) return null;
  const count = found.duplicates.length;
  if (first.samePiece) return { kind: "owned", headline: "You own this piece", count };
  const color = found.shown.length > 1 ? "print" : plainWord(statement);
  const exact = isSure(found) && first.deltaE2000 <= NO_VISIBLE_DIFFERENCE;
  const headline = exact ? `You own this ${color}` : `Close to ${withArticle(color)} you own`;
  return { kind: "duplicate", headline, count };
}

function ofSets(found: Findings): Headline | null {
  const sets = found.ties.filter((tie) => isSet(found.slot, tie));
  const [first] = sets;
  if (!first) return null;
  const count = sets.length;
  const nearest = Math.min(...sets.map(({ relating }) => relating.deltaE2000));
  const exact = isSure(found) && nearest <= NO_VISIBLE_DIFFERENCE;
  const whose = count === 1 ? yourName(first.owned.piece.name) : `${count} of yours`;
  const how = found.slot === null ? SAME_SHADE_WORDS : SET_WORDS;
  return { kind: "set", headline: `${exact ? how.exact : how.near} ${whose}`, count };
}

const SET_WORDS = { exact: "A set with", near: "Nearly a set with" };

/** For a product that may be of the same slot, so that a set is more than can be known. */
const SAME_SHADE_WORDS = { exact: "Same shade as", near: "Close in shade to" };

/**
 * Whether two pieces read as a set: one shade over the most of both. Black shoes with black trousers do not:
 * neutrals make a set only among the garments themselves (common practice, no source).
 */
function isSet(slot: Slot | null, { owned, own, its, relating }: Tie): boolean {
  if (relating.relation !== "matching" || own.index + its.index > 0) return false;
  const chromatic = !own.point.neutral && !its.point.neutral;
  return chromatic || slot === null || (isGarment(slot) && isGarment(owned.piece.slot));
}

function isGarment(slot: Slot): boolean {
  return slot === "layer" || !isOptional(slot);
}

function ofNeutralsOnly({ ties, shown }: Findings): Headline | null {
  const chromatic = shown.some(({ point }) => !point.neutral);
  const only = ties.length > 0 && ties.every(({ relating }) => relating.relation === "with-neutral");
  if (!chromatic || !only) return null;
  const neutrals = [...new Set(ties.map(({ its }) => plainWord(its)))].sort();
  const named = neutrals.length <= NEUTRALS_NAMED ? neutrals.join(" and ") : "your neutrals";
  return { kind: "neutral-only", headline: `Only goes with ${named}`, count: ties.length };
}

function ofLooks(found: Findings): Headline | null {
  if (found.looks === 0) return null;
  const looks = found.looks === 1 ? "1 look" : `${found.looks} looks`;
  return {
    kind: "looks",
    headline: `${isSure(found) ? "Finishes" : "May finish"} ${looks}`,
    count: found.looks,
  };
}

function ofTies(found: Findings): Headline | null {
  const count = found.ties.length;
  if (count === 0) return null;
  return { kind: "goes", headline: `${isSure(found) ? "Goes" : "May go"} with ${count} of yours`, count };
}

/** Denim or camel goes where the wheel has no name for the pair (common practice, no source); it is said, not counted. */
function ofNothing({ wornAsNeutral }: Findings): Headline {
  const name = wornAsNeutral();
  const headline = name ? `Nothing yet but ${yourName(name)}` : "Nothing to wear it with yet";
  return { kind: "nothing", headline, count: 0 };
}

function withArticle(word: string): string {
  return `${/^[aeiou]/.test(word) ? "an" : "a"} ${word}`;
}
