import type { ColorTerm } from "../words/color-term.ts";
import { hueOf } from "./convert.ts";
import type { Oklab } from "./oklab.ts";
import { TRADE_WORDS } from "./trade-words.ts";

/** The modifiers of ISCC-NBS names (K. L. Kelly, D. B. Judd, 1976), as they stand before the hue word. */
const MODIFIER =
  /^(?:vivid|brilliant|strong|moderate|(?:light |dark )?greyish|(?:very )?(?:light|pale|deep|dark)|blackish)(?= )/;

/** What is said of cloth where it is not the ISCC-NBS modifier itself; strong is what most colour words mean by themselves. */
const SPOKEN: Readonly<Record<string, string>> = {
  brilliant: "bright",
  strong: "",
  moderate: "soft",
  greyish: "dusty",
  "light greyish": "light dusty",
  "dark greyish": "smoky",
  blackish: "very dark",
};

/**
 * The terms whose fabrics are moderate at their centre, so that their bare word means that (P. Centore, JAIC 25, 2020). Of the
 * red ones, strong and moderate are one shade.
 */
const MODERATE_ON_CLOTH: readonly ColorTerm[] = ["red", "orange", "green", "blue", "brown"];
const STRONG_ON_CLOTH: Readonly<Partial<Record<ColorTerm, string>>> = {
  green: "rich",
  blue: "rich",
  brown: "rich",
};

/**
 * Where a term lies in another's blocks, the block's modifier is not the term's: a moderate red that is called pink is a deep
 * pink. By the term, the modifier ("" for none) and the last word of the block.
 */
const SPOKEN_ACROSS: Readonly<Record<string, string>> = {
  "pink greyish pink": "light dusty",
  "pink light greyish red": "dusty",
  "pink greyish red": "dark dusty",
  "pink moderate red": "deep",
  "pink strong red": "deep",
  "red deep pink": "bright",
  "brown greyish orange": "light",
  "brown  black": "very dark",
};

/** Hues that people name between two terms, by the term and the end of the block's name. */
const BETWEEN: readonly (readonly [term: ColorTerm, block: RegExp, words: string])[] = [
  ["green", /yellow green$|yellow$/, "yellow green"],
  ["yellow", /orange yellow$/, "golden yellow"],
  ["brown", /olive brown$/, "olive brown"],
];

/** To which side of its term a hue leans, by the term and the block; as the block says it, but for violet, which is no plain word. */
const LEANINGS: readonly (readonly [term: ColorTerm, block: RegExp, word: string])[] = [
  ["orange", /reddish orange$/, "reddish"],
  ["orange", /yellow$/, "yellowish"],
  ["yellow", /greenish yellow$/, "greenish"],
  ["green", /yellowish green$/, "yellowish"],
  ["green", /bluish green$/, "bluish"],
  ["blue", /greenish blue$/, "greenish"],
  ["blue", /purplish blue$/, "purplish"],
  ["purple", /violet$/, "bluish"],
  ["purple", /reddish purple$/, "reddish"],
  ["pink", /purplish (?:pink|red)$/, "purplish"],
  ["red", /purplish red$/, "purplish"],
  ["brown", /reddish (?:brown|orange)$/, "reddish"],
  ["brown", /yellowish brown$/, "yellowish"],
];

/** The everyday name ("dusty pink", "navy blue", "bluish grey") of a colour that is not achromatic, by its term and its nearest ISCC-NBS block. */
export function spokenName(c: Oklab, term: ColorTerm, iscc: string): string {
  if (term === "black" || term === "grey" || term === "white") return tinted(term, iscc);
  const modifier = MODIFIER.exec(iscc)?.[0] ?? "";
  const trade = TRADE_WORDS[term];
  if (trade) {
    return words(trade.said[iscc] ?? trade.said[modifier], term, trade.tail(iscc, hueOf(c)));
  }
  const last = iscc.slice(iscc.lastIndexOf(" ") + 1);
  const said = SPOKEN_ACROSS[`${term} ${modifier} ${last}`] ?? onCloth(modifier, term) ?? modifier;
  const between = wordFor(BETWEEN, term, iscc);
  return between ? words(said, between) : words(said, wordFor(LEANINGS, term, iscc), term);
}

function onCloth(modifier: string, term: ColorTerm): string | undefined {
  if (modifier === "moderate" && MODERATE_ON_CLOTH.includes(term)) return "";
  return (modifier === "strong" ? STRONG_ON_CLOTH[term] : undefined) ?? SPOKEN[modifier];
}

function wordFor(
  table: readonly (readonly [term: ColorTerm, block: RegExp, word: string])[],
  term: ColorTerm,
  iscc: string,
): string | undefined {
  return table.find(([of, block]) => of === term && block.test(iscc))?.[2];
}

/** How a hue is said of a black that it tints. */
const TINTS: Readonly<Record<string, string>> = {
  red: "reddish",
  green: "greenish",
  blue: "bluish",
  purple: "purplish",
};

/** "light bluish grey", "pinkish white", "bluish black"; the bare term where the block is of another. */
function tinted(term: ColorTerm, iscc: string): string {
  const hue = /^blackish (\w+)$/.exec(iscc)?.[1];
  if (term === "black" && hue) return words(TINTS[hue], term);
  return iscc.endsWith(term) ? iscc.replace("medium ", "") : term;
}

function words(...parts: readonly (string | undefined)[]): string {
  return parts.filter(Boolean).join(" ");
}
