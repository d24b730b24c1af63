import type { ColorTerm } from "../words/color-term.ts";

/**
 * Which ISCC-NBS blocks a shop would call by a trade word of its own. Common practice, no source, except that the fabric
 * centroids of P. Centore (JAIC 25, 2020) fall where they say. All other blocks go by their own hue word.
 */
const TRADE_TERMS: Readonly<Partial<Record<ColorTerm, readonly string[]>>> = {
  burgundy: [
    "deep red",
    "very deep red",
    "dark red",
    "very dark red",
    "deep purplish red",
    "very deep purplish red",
    "dark purplish red",
    "very dark purplish red",
    "deep reddish brown",
  ],
  pink: ["light greyish red", "light greyish purplish red", "greyish purplish red", "moderate purplish red"],
  orange: ["vivid orange yellow"],
  fuchsia: [
    "vivid reddish purple",
    "vivid purplish red",
    "strong purplish red",
    "deep purplish pink",
    "strong reddish purple",
    "deep reddish purple",
  ],
  coral: ["strong yellowish pink", "deep yellowish pink", "dark yellowish pink"],
  peach: ["vivid yellowish pink", "light orange", "pale yellowish pink"],
  rust: [
    "deep reddish orange",
    "dark reddish orange",
    "strong reddish brown",
    "deep orange",
    "moderate reddish orange",
    "brownish orange",
  ],
  brown: ["dark greyish red", "greyish reddish orange", "moderate olive brown", "brownish black"],
  beige: ["brownish pink", "greyish yellowish pink", "light greyish yellowish brown", "yellowish grey"],
  camel: ["light yellowish brown"],
  cream: ["pale orange yellow", "pale yellow", "yellowish white"],
  khaki: ["greyish yellow", "dark greyish yellow", "greyish greenish yellow", "light greyish olive"],
  mustard: [
    "strong orange yellow",
    "deep orange yellow",
    "moderate orange yellow",
    "dark orange yellow",
    "deep yellow",
    "dark yellow",
    "light olive brown",
  ],
  olive: [
    "dark greenish yellow",
    "deep greenish yellow",
    "moderate greenish yellow",
    "strong olive green",
    "deep olive green",
    "moderate olive green",
    "dark olive green",
    "greyish olive green",
    "dark greyish olive green",
    "dark olive brown",
  ],
  mint: ["very light green", "very pale green", "very light bluish green", "very light yellowish green"],
  turquoise: [
    "brilliant bluish green",
    "light bluish green",
    "brilliant greenish blue",
    "light greenish blue",
  ],
  teal: [
    "vivid bluish green",
    "strong bluish green",
    "deep bluish green",
    "moderate bluish green",
    "dark bluish green",
    "very dark bluish green",
    "strong greenish blue",
    "deep greenish blue",
    "moderate greenish blue",
    "dark greenish blue",
    "very dark greenish blue",
  ],
  navy: ["dark blue", "deep blue", "dark purplish blue", "deep purplish blue"],
  black: ["blackish blue", "blackish green", "blackish red", "blackish purple"],
  lavender: [
    "very light violet",
    "light violet",
    "very pale violet",
    "pale violet",
    "very light purple",
    "light purple",
    "very pale purple",
    "pale purple",
    "pale reddish purple",
  ],
};

/** The hue words that end an ISCC-NBS name, and what people say for them. */
const HUE_TERMS: readonly (readonly [ending: string, term: ColorTerm])[] = [
  ["orange yellow", "yellow"],
  ["yellow green", "green"],
  ["olive green", "green"],
  ["olive brown", "brown"],
  ["violet", "purple"],
  ...(["pink", "red", "orange", "brown", "yellow", "olive", "green", "blue", "purple"] as const).map(
    (word) => [word, word] as const,
  ),
  ["white", "white"],
  ["grey", "grey"],
  ["black", "black"],
];

const TERM_OF = new Map<string, ColorTerm>(
  Object.entries(TRADE_TERMS).flatMap(([term, names]) =>
    names.map((name) => [name, term as ColorTerm] as const),
  ),
);

/** The everyday term for an ISCC-NBS name in British spelling ("dark greyish blue"). */
export function termOfIscc(name: string): ColorTerm {
  return TERM_OF.get(name) ?? HUE_TERMS.find(([ending]) => name.endsWith(ending))?.[1] ?? "grey";
}
