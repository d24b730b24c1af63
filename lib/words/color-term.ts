/**
 * Everyday colour terms a shop prints, independent of language. The first eleven are the basic terms of
 * B. Berlin and P. Kay, "Basic Color Terms" (1969); the rest are trade names with a region of their own.
 */
export const COLOR_TERMS = [
  "black",
  "white",
  "grey",
  "red",
  "orange",
  "yellow",
  "green",
  "blue",
  "purple",
  "pink",
  "brown",
  "beige",
  "cream",
  "camel",
  "khaki",
  "olive",
  "mint",
  "teal",
  "turquoise",
  "navy",
  "lavender",
  "fuchsia",
  "coral",
  "peach",
  "burgundy",
  "rust",
  "mustard",
  "gold",
  "silver",
  "copper",
] as const;

export type ColorTerm = (typeof COLOR_TERMS)[number];
