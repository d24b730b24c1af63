import type { Badge } from "../badge/badge.ts";
import type { Candidate } from "../fit/verdict.ts";
import type { FoundProduct } from "../page/product.ts";
import type { PictureSource } from "../pixels/picture-reader.ts";
import type { Swatch } from "../sample/palette.ts";
import { badgeModelOf } from "./badge-model-of.ts";
import { candidateOf, type Tracked } from "./tracked.ts";

/** A product as a card needs it; functions, because a page may change it while the card is open. */
export interface CardSubject {
  /** The badge's button. */
  readonly button: HTMLButtonElement;
  readonly product: () => FoundProduct;
  readonly source: () => PictureSource;
  readonly candidate: () => Candidate;
  /** Takes a person's word on the colour, or forgets it where there are no swatches; resolves once compared again. */
  readonly correct: (swatches: readonly Swatch[]) => Promise<void>;
  /** Says on the badge why no card opens. */
  readonly fail: (reason: string) => void;
}

export type OpenCard = (subject: CardSubject) => void;

/** A tracked product for its card. */
export function cardSubjectOf(tracked: Tracked, badge: Badge, correct: CardSubject["correct"]): CardSubject {
  return {
    button: badge.button,
    product: () => tracked.product,
    source: () => tracked.source,
    candidate: () => candidateOf(tracked),
    correct,
    fail: (reason) =>
      badge.show({ ...badgeModelOf(tracked), words: "Can't open now", note: reason, count: 0 }),
  };
}
