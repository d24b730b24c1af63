import { DYES } from "../../store/dyes.ts";

/** A dye with the word that a shop has for it. */
export interface NamedDye {
  readonly word: string;
  readonly hex: string;
}

const named = (words: readonly (keyof typeof DYES)[]): NamedDye[] =>
  words.map((word) => ({ word, hex: DYES[word] }));

/** All round the wheel, light and dark, neutrals between them: neighbours in the list lie far apart. */
export const WHEEL: readonly NamedDye[] = [
  ...named(["cobalt", "rust", "emerald", "black", "blush", "mustard", "navy", "fuchsia", "camel", "teal"]),
  ...named(["white", "plum", "tangerine", "sky", "olive", "scarlet", "stone", "violet", "chocolate", "mint"]),
  ...named([
    "grey",
    "coral",
    "forest",
    "ivory",
    "denim",
    "burgundy",
    "lime",
    "charcoal",
    "peach",
    "turquoise",
  ]),
  ...named(["rose", "indigo", "butter", "lilac"]),
  { word: "beige", hex: "#d9c4a1" },
  { word: "tan", hex: "#b98d63" },
];

/** Whites and near-whites of cloth. */
export const WHITES: readonly NamedDye[] = [
  { word: "white", hex: "#f4f4f2" },
  { word: "ivory", hex: "#f0e8d8" },
  { word: "off-white", hex: "#ebe8e1" },
  { word: "cream", hex: "#f2e6c9" },
  { word: "white", hex: "#fafafa" },
  { word: "pearl grey", hex: "#dcdcdb" },
];

/** Cloth in the colours of people: nude, blush, beige, camel, brown, near-black. */
export const SKIN_LIKE: readonly NamedDye[] = [
  { word: "blush", hex: "#e3b9a8" },
  { word: "beige", hex: "#d9c4a1" },
  { word: "camel", hex: DYES.camel },
  { word: "brown", hex: "#7a5238" },
  { word: "ecru", hex: "#efe3cf" },
  { word: "chocolate", hex: DYES.chocolate },
];

/** Hair: black, browns, copper, blonds, grey, and one dyed. */
export const HAIRS = [
  { word: "black", hex: "#1c1715" },
  { word: "dark brown", hex: "#3f2a1e" },
  { word: "brown", hex: "#5e3b25" },
  { word: "copper", hex: "#93491f" },
  { word: "light brown", hex: "#8a5a34" },
  { word: "blond", hex: "#c19a62" },
  { word: "fair", hex: "#dcc08c" },
  { word: "grey", hex: "#8b8987" },
] as const;

/** `list[i]`, going round. */
export function round<T>(list: readonly T[], i: number): T {
  const item = list[((i % list.length) + list.length) % list.length];
  if (item === undefined) throw new Error("An empty list has nothing to go round.");
  return item;
}

export const METALS: readonly NamedDye[] = [
  { word: "gold", hex: "#b08d4c" },
  { word: "silver", hex: "#a5a8ad" },
  { word: "copper", hex: "#a5643f" },
];

/** The colour of a dye by its word. */
export function dyeOf(word: string): string {
  const dye = [...WHEEL, ...SKIN_LIKE, ...METALS].find((known) => known.word === word);
  if (!dye) throw new Error(`No dye is called "${word}".`);
  return dye.hex;
}
