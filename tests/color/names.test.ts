import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CLOTH_COLORS } from "../../lib/closet/cloth-colors.ts";
import { QUICK_PIECES, quickPiece } from "../../lib/closet/quick-start.ts";
import { ISCC_NAMES } from "../../lib/color/data/iscc-names.ts";
import { everydayTerm, isccName } from "../../lib/color/everyday-term.ts";
import { nameColor } from "../../lib/color/name-color.ts";
import { parseColor } from "../../lib/color/parse-color.ts";
import { COLOR_TERMS } from "../../lib/words/color-term.ts";
import { readColorTerms } from "../../lib/words/read-words.ts";
import { anyOklab } from "./arbitraries.ts";
import { CAUS_FABRICS } from "./facts/caus-fabrics.ts";

/** Names of fabrics and the terms they are of, as in term-anchors.ts. */
const TRADE_KIN: Readonly<Record<string, string>> = {
  aqua: "turquoise",
  gold: "mustard",
  lilac: "lavender",
  magenta: "fuchsia",
  mauve: "purple",
  rose: "pink",
  sand: "beige",
  tan: "camel",
  taupe: "brown",
  violet: "purple",
  wine: "burgundy",
};

/** The eleven basic terms (Berlin & Kay, 1969), and the one trade term that stands without. */
const BASIC_OR_BEIGE: readonly string[] = [...COLOR_TERMS.slice(0, 11), "beige"];

describe("names", () => {
  test("every ISCC-NBS centroid has its own name, in British spelling", () => {
    const rows = ISCC_NAMES.split("|");
    expect(rows).toHaveLength(267);
    for (const row of rows) {
      expect(isccName(parseColor(`#${row.slice(0, 6)}`))).toBe(row.slice(7));
      expect(row).not.toMatch(/gray|,|see/);
    }
  });

  test("every fabric with a name of its own is called by a word that its name is of (Centore 2020)", () => {
    const named = CAUS_FABRICS.filter(({ name }) => name !== "white");
    const other = named.filter(({ name, hex }) => {
      const term = TRADE_KIN[name] ?? name;
      return !nameColor(parseColor(hex)).everyday.split(" ").includes(term);
    });
    expect(named).toHaveLength(29);
    expect(other).toEqual([]);
  });

  test.each(Object.entries(CLOTH_COLORS))("the cloth colour %s is called by its own word", (word, oklab) => {
    const terms = word === "denim" ? ["blue"] : readColorTerms(word);
    expect(terms).toHaveLength(1);
    expect([everydayTerm(oklab)]).toEqual(terms);
    expect(nameColor(oklab).everyday.split(" ")).toEqual(expect.arrayContaining([...terms]));
  });

  test("a quick start's pieces are called by the colour that stands in their own names", () => {
    for (const piece of QUICK_PIECES.filter(({ color }) => color !== "denim")) {
      const { name, swatches } = quickPiece(piece, 1);
      const terms = swatches.map(({ oklab }) => everydayTerm(oklab));
      expect(terms.slice(0, 1), name).toEqual(readColorTerms(name));
    }
  });

  /** What a person who has only the basic terms of Berlin and Kay (1969) would call the fabric. Common practice, no source. */
  test.each([
    ["#c6202e", "red"],
    ["#0e8854", "green"],
    ["#ea7124", "orange"],
    ["#1f50c2", "blue"],
    ["#5e3c9b", "purple"],
    ["#ecbdc3", "pink"],
    ["#50352a", "brown"],
    ["#6c1932", "red"],
    ["#1e2848", "blue"],
    ["#d09d22", "yellow"],
    ["#6b6b37", "green"],
    ["#a8dabe", "green"],
    ["#b88a55", "brown"],
    ["#eee6d3", "white"],
    ["#2aaeb1", "blue"],
  ])("say the basic term of %s, which is %s", (hex, basic) => {
    expect(nameColor(parseColor(hex)).everyday).toMatch(new RegExp(`\\b${basic}$`));
  });

  /** How the parts of a name are put together: Kelly & Judd's modifiers in the words of cloth. Common practice, no source. */
  test.each([
    ["#808080", "grey"],
    ["#2e2e2e", "soft black"],
    ["#444548", "charcoal grey"],
    ["#5e5e5e", "dark grey"],
    ["#b0b0b0", "light grey"],
    ["#c4c4c4", "pale grey"],
    ["#dcdcda", "off white"],
    ["#f4f3ef", "white"],
    ["#717d88", "bluish grey"],
    ["#202428", "black"],
    ["#eee3c8", "cream white"],
    ["#f3e5ab", "cream yellow"],
    ["#dea5a4", "soft pink"],
    ["#ad8884", "dusty pink"],
    ["#3a4b47", "smoky green"],
    ["#00515f", "teal blue"],
    ["#1e2321", "black"],
    ["#fada5e", "bright yellow"],
    ["#f8de7e", "light yellow"],
    ["#5c0923", "dark burgundy red"],
    ["#ab4e52", "red"],
    ["#a1caf1", "very light blue"],
    ["#79443b", "reddish brown"],
    ["#545aa7", "rich purplish blue"],
    ["#604e81", "soft bluish purple"],
    ["#c4aead", "light dusty pink"],
    ["#b9b459", "light olive yellow"],
    ["#b3616e", "rose pink"],
    ["#7f6f68", "taupe brown"],
    ["#837863", "warm grey"],
    ["#917386", "mauve purple"],
  ])("of %s is %s", (hex, name) => {
    expect(nameColor(parseColor(hex)).everyday).toBe(name);
  });

  test("say the everyday term, and a basic term or beige, in one to four plain words", () => {
    fc.assert(
      fc.property(anyOklab, (color) => {
        const { everyday } = nameColor(color);
        const said = everyday.split(" ");
        expect(said).toContain(everydayTerm(color));
        expect(BASIC_OR_BEIGE).toContain(said.at(-1));
        expect(everyday).toMatch(/^[a-z]+( [a-z]+){0,3}$/);
        expect(new Set(said).size).toBe(said.length);
      }),
      { numRuns: 3000 },
    );
  });

  test("refuse what is no colour", () => {
    for (const use of [nameColor, everydayTerm, isccName])
      expect(() => use([Number.NaN, 0, 0])).toThrow("NaN 0 0");
  });
});
