import type { ColorTerm } from "../words/color-term.ts";

/** How a trade term is spoken. */
interface TradeWord {
  /** The basic term that follows ("navy blue"), by the ISCC-NBS block and the OKLCH hue in degrees. */
  readonly tail: (block: string, hue: number) => string;
  /** What is said before it, by an ISCC-NBS block or modifier; nothing of the others, for the term implies its level. */
  readonly said: Readonly<Record<string, string>>;
}

/** OKLCH hue in degrees that parts green from blue: blue-green of four published lists, as on the artist's wheel (wheel.ts). */
const BLUE_GREEN_HUE = 194;

const greenOrBlue = (_: string, hue: number): string => (hue < BLUE_GREEN_HUE ? "green" : "blue");

/** The trade terms and the words beside them. Common practice, no source; beige stands alone, for no basic term goes with it. */
export const TRADE_WORDS: Readonly<Partial<Record<ColorTerm, TradeWord>>> = {
  beige: { tail: () => "", said: { "yellowish grey": "light", "dark greyish": "dark" } },
  burgundy: { tail: () => "red", said: { "very deep": "dark", "very dark": "dark", greyish: "dusty" } },
  camel: { tail: () => "brown", said: {} },
  coral: { tail: () => "pink", said: { moderate: "soft", greyish: "dusty" } },
  cream: { tail: (block) => (block.endsWith("yellow") ? "yellow" : "white"), said: {} },
  fuchsia: {
    tail: (block) => (/purple$|violet$/.test(block) ? "purple" : "pink"),
    said: {
      vivid: "vivid",
      brilliant: "bright",
      deep: "deep",
      "deep purplish pink": "",
      dark: "dark",
      moderate: "soft",
      light: "light",
    },
  },
  khaki: {
    tail: (block) => (/greenish|olive/.test(block) ? "green" : "brown"),
    said: { "dark greyish": "dark" },
  },
  lavender: {
    tail: () => "purple",
    said: {
      "very pale": "pale",
      "very light": "light",
      moderate: "deep",
      greyish: "dusty",
      brilliant: "bright",
    },
  },
  mint: { tail: () => "green", said: { "very pale": "pale" } },
  mustard: {
    tail: (block) => (block.endsWith("brown") ? "brown" : "yellow"),
    said: { "strong orange yellow": "bright", moderate: "soft", "dark yellow": "dark" },
  },
  navy: { tail: () => "blue", said: { "very dark": "dark", blackish: "dark" } },
  olive: {
    tail: (block) => (block.endsWith("brown") ? "brown" : "green"),
    said: {
      light: "light",
      dark: "dark",
      "dark greenish yellow": "",
      greyish: "dusty",
      "dark greyish": "smoky",
    },
  },
  peach: {
    tail: (block) => (block.endsWith("pink") ? "pink" : "orange"),
    said: { vivid: "bright", pale: "pale", dark: "dusty", greyish: "dusty" },
  },
  rust: {
    tail: (block) =>
      /brown|dark/.test(block) ? "brown" : /red$|deep reddish/.test(block) ? "red" : "orange",
    said: { moderate: "soft" },
  },
  teal: {
    tail: greenOrBlue,
    said: {
      vivid: "vivid",
      deep: "deep",
      "very dark": "dark",
      moderate: "soft",
      greyish: "dusty",
      "dark greyish": "smoky",
    },
  },
  turquoise: {
    tail: greenOrBlue,
    said: { vivid: "vivid", brilliant: "bright", moderate: "soft", pale: "pale", "very light": "light" },
  },
};
