import type { Price } from "../page/product.ts";
import type { Palette, Swatch } from "../sample/palette.ts";
import type { Slot } from "../words/slot.ts";

/** A piece that hangs in the closet. */
export interface Piece {
  readonly id: string;
  readonly name: string;
  readonly slot: Slot;
  /** One to six; the first is the statement swatch, as a rule the one with the largest share. */
  readonly swatches: readonly Swatch[];
  /** Milliseconds since 1970, UTC. */
  readonly addedAt: number;
  /** A small picture as a data: URL, at most 40 kB; absent for a piece added by its colour. */
  readonly picture?: string;
  /** The product key it was bought under, where known: then the page can say "you own this" with certainty. */
  readonly productKey?: string;
}

/** A product saved for later. */
export interface Wish {
  /** The product's key. */
  readonly id: string;
  readonly title: string;
  readonly slot: Slot | null;
  readonly palette: Palette;
  readonly price: Price | null;
  readonly link: string | null;
  /** Host name of the store. */
  readonly store: string;
  readonly savedAt: number;
  readonly picture?: string;
}

/** A person's word on the colour of a product: always wins over the pixels. */
export interface Correction {
  readonly productKey: string;
  readonly swatches: readonly Swatch[];
  readonly correctedAt: number;
}
