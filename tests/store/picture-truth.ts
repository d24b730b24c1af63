import type { Slot } from "../../lib/words/slot.ts";
import type { Recipe, Scene } from "./studio/recipe.ts";

/** A true colour of the photographed piece: the dye before light, and its share of the visible cloth, 0–1. */
export interface TrueSwatch {
  readonly hex: string;
  readonly share: number;
}

/** What lies beside every picture as `<id>.json`. */
export interface PictureTruth {
  readonly id: string;
  readonly slot: Slot;
  readonly cut: Recipe["cut"];
  readonly print: Recipe["cloth"]["print"];
  readonly weave: Recipe["cloth"]["weave"];
  readonly scene: Scene;
  /** Whether the image host lets other sites read the picture (Access-Control-Allow-Origin: *). */
  readonly cors: boolean;
  /** Largest share first; shares sum to 1. */
  readonly swatches: readonly TrueSwatch[];
}
