/** A colour as it is drawn; `share` of the cloth 0–1. */
export interface ClothColor {
  readonly css: string;
  readonly share: number;
  readonly name: string;
}

/** What a badge shows. */
export interface BadgeModel {
  /** `reading`: nothing is known yet; `unreadable`: nothing can be known, and `words` says so. */
  readonly state: "reading" | "ready" | "unreadable";
  /** A few words. */
  readonly words: string;
  /** How many pieces or looks the words count; 0 where there is nothing to count. */
  readonly count: number;
  readonly cloth: readonly ClothColor[];
  /** The product's name, for those who do not see what the badge sits on. */
  readonly title: string;
  /** Why a picture cannot be read, or nothing. */
  readonly note: string;
}
