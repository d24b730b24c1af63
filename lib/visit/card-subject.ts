import type { Candidate } from "../fit/verdict.ts";
import type { FoundProduct } from "../page/product.ts";
import type { PictureSource } from "../pixels/picture-reader.ts";
import type { Swatch } from "../sample/palette.ts";

/** A product as a card needs it; functions, because a page may change it while the card is open. */
export interface CardSubject {
  /** The badge's button. */
  readonly button: HTMLButtonElement;
  readonly product: () => FoundProduct;
  readonly source: () => PictureSource;
  readonly candidate: () => Candidate;
  /** Takes a person's word on the colour, or forgets it where there are no swatches; resolves once compared again. */
  readonly correct: (swatches: readonly Swatch[]) => Promise<void>;
}

export type OpenCard = (subject: CardSubject) => void;
