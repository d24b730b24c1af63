/**
 * The words of one language, in the notation of a dictionary: `word` stands alone (a plural or case ending may
 * follow), `-word` may also close a compound ("Sommerkleid"), `word-` may be followed by anything ("camis-").
 * Accents and capitals do not matter. Words that English lends to every language are listed in English only.
 */
export interface Vocabulary {
  /** True where the noun that names the thing comes first ("robe chemise"), false where it comes last ("shirt dress"). */
  readonly headFirst: boolean;
  /** Small words after which nothing names the thing any more: "with", "in", "mit". */
  readonly particles: string;
  readonly slots: readonly [
    top: string,
    bottom: string,
    onePiece: string,
    layer: string,
    legwear: string,
    shoes: string,
    bag: string,
    headwear: string,
    jewellery: string,
    accessory: string,
  ];
  /** The eleven basic terms, each with at least one word. */
  readonly basicColors: readonly [
    black: string,
    white: string,
    grey: string,
    red: string,
    orange: string,
    yellow: string,
    green: string,
    blue: string,
    purple: string,
    pink: string,
    brown: string,
  ];
  /** The trade terms; empty where the language borrows the word from English or French. */
  readonly tradeColors: readonly [
    beige: string,
    cream: string,
    camel: string,
    khaki: string,
    olive: string,
    mint: string,
    teal: string,
    turquoise: string,
    navy: string,
    lavender: string,
    fuchsia: string,
    coral: string,
    peach: string,
    burgundy: string,
    rust: string,
    mustard: string,
    gold: string,
    silver: string,
    copper: string,
  ];
}
