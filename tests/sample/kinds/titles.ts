import type { Cut } from "../../store/studio/recipe.ts";
import { round } from "./dyes.ts";

/** Names of lines, invented; two of them sound like a colour and are none. */
const LINES = ["Marla", "Rosewood Lane", "Linnet", "Harbour", "Heath", "Ember", "Juno", "Cobble"] as const;

/** What a shop's page calls a piece: every second title names its colour. */
export function titleOf(cut: Cut, word: string, i: number): string {
  const piece = cut.replace("-", " ");
  return i % 2 === 0 ? `${round(LINES, i * 5)} ${piece} in ${word}` : `${round(LINES, i * 3)} ${piece}`;
}
