import type { ClothColor } from "./badge-model.ts";

/** Two colours on the artist's wheel: angles in degrees, red 0, clockwise; null for a neutral. */
export type DialModel = readonly { readonly css: string; readonly angle: number | null }[];

/** An owned piece and what it has to do with the product. */
export interface CardPiece {
  readonly name: string;
  readonly cloth: readonly ClothColor[];
  /** The relation in words. */
  readonly word: string;
  readonly dial: DialModel | null;
  /** One plain sentence, or nothing. */
  readonly why: string;
}

/** Everything a card shows. */
export interface CardModel {
  readonly title: string;
  readonly headline: string;
  readonly cloth: readonly ClothColor[];
  /** What to know before trusting the headline. */
  readonly cautions: readonly string[];
  readonly duplicates: readonly CardPiece[];
  readonly pieces: readonly CardPiece[];
  /** A sentence on the looks it makes possible, or nothing. */
  readonly looks: string;
  readonly wished: boolean;
  readonly owned: boolean;
  /** True when a person has said the colour. */
  readonly corrected: boolean;
  /** Colours to choose from where the shown one is wrong. */
  readonly choices: readonly ClothColor[];
  /** Where it may be worn, to ask before it is added to the closet; empty where that is known. */
  readonly slots: readonly string[];
}

/** What a person may do on a card. A promise that rejects shows its plain sentence on the card. */
export interface CardActions {
  readonly toggleWish: () => Promise<void>;
  /** `slot`: index into the model's slots, null where they are empty. */
  readonly own: (slot: number | null) => Promise<void>;
  /** The picture to point at; rejects where its pixels are out of reach. */
  readonly picture: () => Promise<HTMLCanvasElement>;
  /** The CSS colour of the cloth at a place of that picture, in its pixels. */
  readonly colorAt: (picture: HTMLCanvasElement, x: number, y: number) => string;
  /** The right colour: a place of the picture, or one of the choices by index. */
  readonly pickPlace: (picture: HTMLCanvasElement, x: number, y: number) => Promise<void>;
  readonly pickChoice: (index: number) => Promise<void>;
  /** Forgets what the person said and goes by the picture again. */
  readonly unpick: () => Promise<void>;
}
