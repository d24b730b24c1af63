import type { Relation } from "../color/relation-name.ts";
import type { SchemeName } from "../color/scheme-name.ts";
import type { Slot } from "../words/slot.ts";

/** How a relation is said of two colours. Two colours are never a whole triad, so that word is hedged. */
export const RELATION_WORDS: Readonly<Record<Relation, string>> = {
  matching: "matching",
  monochromatic: "monochromatic",
  analogous: "analogous",
  triadic: "two of a triad",
  "split-complementary": "split-complementary",
  complementary: "complementary",
  "with-neutral": "with a neutral",
  none: "no named relation",
};

/** How the scheme of a look is said; `whole` is false where it lacks a hue. */
export function schemeText(scheme: SchemeName, whole: boolean): string {
  if (scheme === "tetradic") return "a tetrad";
  return scheme === "triadic" && whole ? "a triad" : RELATION_WORDS[scheme];
}

/** A slot as a label. */
export const SLOT_WORDS: Readonly<Record<Slot, string>> = {
  top: "Top",
  bottom: "Bottom",
  "one-piece": "One-piece",
  layer: "Layer",
  legwear: "Legwear",
  shoes: "Shoes",
  bag: "Bag",
  headwear: "Headwear",
  jewellery: "Jewellery",
  accessory: "Accessory",
};

/** Names said at most for one pair; the rest of a wide doubt adds words, not knowledge. */
const MOST_NAMES = 2;

/** A relation with the nearest other name that an edge leaves open: "analogous, or two of a triad". */
export function relationText(relation: Relation, alternatives: readonly Relation[]): string {
  const others = alternatives.filter((name) => name !== "none");
  return [relation, ...others]
    .slice(0, MOST_NAMES)
    .map((name) => RELATION_WORDS[name])
    .join(", or ");
}

/** Said of a pair that this person may take for one shade, though most people tell it apart. */
export const LOOK_ALIKE = "may look alike to you";

/** "1 piece", "9 pieces". */
export function countOf(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
