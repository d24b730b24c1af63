import type { Amount, WrittenAmount } from "./price.ts";

/** A short piece of text on the page that shows a price, as it is written. */
export interface WrittenPrice {
  readonly element: Element;
  readonly text: string;
  /** The same with the words around it, where they are few. */
  readonly tag: string;
  /** The text without its amounts. */
  readonly words: string;
  readonly amounts: readonly WrittenAmount[];
}

/** The same with its currency. */
export interface PriceLeaf extends WrittenPrice {
  readonly amounts: readonly Amount[];
}
