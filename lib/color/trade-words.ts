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
  beige: {
    tail: () => "",
    said: { "yellowish grey": "light", "greyish yellowish pink": "pinkish", "dark greyish": "dark" },
  },
  burgundy: {
    tail: () => "red",
    said: {
      "deep purplish red": "deep purplish",
      "dark purplish red": "purplish",
      "very deep purplish red": "dark purplish",
      "very dark purplish red": "dark purplish",
      "deep red": "deep",
      "deep reddish brown": "dark",
      "very deep": "dark",
      "very dark": "dark",
      greyish: "dusty",
    },
  },
  camel: { tail: () => "brown", said: { moderate: "dark" } },
  coral: { tail: () => "pink", said: { deep: "deep", dark: "dusty", moderate: "soft", greyish: "dusty" } },
  cream: { tail: (block) => (block.endsWith("yellow") ? "yellow" : "white"), said: {} },
  fuchsia: {
    tail: (block) => (/purple$|violet$/.test(block) ? "purple" : "pink"),
    said: {
      vivid: "vivid",
      brilliant: "bright",
      deep: "deep",
      "deep purplish pink": "light",
      dark: "dark",
      moderate: "soft",
      light: "light",
    },
  },
  khaki: {
    tail: (block) => (/greenish|olive/.test(block) ? "green" : "brown"),
    said: { "dark greyish": "dark", "light greyish olive": "dark" },
  },
  lavender: {
    tail: () => "purple",
    said: {
      "light violet": "bluish",
      "pale reddish purple": "pinkish",
      pale: "soft",
      "very pale": "pale",
      "very light": "light",
      moderate: "deep",
      greyish: "dusty",
      brilliant: "bright",
    },
  },
  mint: {
    tail: () => "green",
    said: {
      "very light yellowish green": "yellowish",
      "very light bluish green": "bluish",
      "very pale": "pale",
    },
  },
  mustard: {
    tail: (block) => (block.endsWith("brown") ? "brown" : "yellow"),
    said: {
      "strong orange yellow": "bright",
      "deep orange yellow": "deep",
      moderate: "soft",
      "dark yellow": "dark",
    },
  },
  navy: {
    tail: () => "blue",
    said: { "deep purplish blue": "deep purplish", deep: "deep", "very dark": "dark", blackish: "dark" },
  },
  olive: {
    tail: (block) => /brown$|yellow$/.exec(block)?.[0] ?? "green",
    said: {
      light: "light",
      dark: "dark",
      "moderate greenish yellow": "light",
      "deep greenish yellow": "deep",
      "dark greenish yellow": "",
      strong: "deep",
      deep: "very deep",
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
    said: { "strong reddish brown": "deep", "brownish orange": "light", moderate: "soft" },
  },
  teal: {
    tail: greenOrBlue,
    said: {
      vivid: "vivid",
      strong: "bright",
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
