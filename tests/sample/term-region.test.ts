import { describe, expect, it } from "vitest";
import { chromaOf, hueOf } from "../../lib/color/convert.ts";
import { ISCC_NAMES } from "../../lib/color/data/iscc-names.ts";
import { bestFit, TERM_REGIONS, termFit } from "../../lib/sample/term-region.ts";
import { COLOR_TERMS, type ColorTerm } from "../../lib/words/color-term.ts";
import { oklabOf } from "./color-distance.ts";
import type { Paint } from "./painted.ts";

const paintOf = (hex: string): Paint => [
  Number.parseInt(hex.slice(0, 2), 16),
  Number.parseInt(hex.slice(2, 4), 16),
  Number.parseInt(hex.slice(4, 6), 16),
];

/**
 * ISCC-NBS centroids whose name ends in one of the terms (K. L. Kelly, D. B. Judd, NBS Special Publication 440, 1976; the
 * copy and its licence are named beside the data).
 */
const ISCC = ISCC_NAMES.split("|").flatMap((row) => {
  const name = row.slice(7);
  const term = COLOR_TERMS.find((known) => name.split(" ").at(-1) === known);
  return term ? [{ name, term, color: oklabOf(paintOf(row.slice(0, 6))) }] : [];
});
/** Greyish, blackish, pale and very dark colours are seldom sold by the bare hue: they may lie outside. */
const FAINT = /ish |pale|very (dark|light|deep)/;

/** CSS Color 4 named colours whose name is the term's own word. */
const CSS: Partial<Record<ColorTerm, string>> = {
  black: "000000",
  white: "ffffff",
  grey: "808080",
  orange: "ffa500",
  yellow: "ffff00",
  green: "008000",
  blue: "0000ff",
  purple: "800080",
  pink: "ffc0cb",
  brown: "a52a2a",
  beige: "f5f5dc",
  olive: "808000",
  teal: "008080",
  turquoise: "40e0d0",
  navy: "000080",
  coral: "ff7f50",
  silver: "c0c0c0",
};

/** 1/e: one soft width outside its region. */
const FITS = 0.36;

describe("the region of a colour term", () => {
  it.each(Object.entries(CSS) as [ColorTerm, string][])("%s holds #%s", (term, hex) => {
    const [l, a, b] = oklabOf(paintOf(hex));
    expect(termFit(term, l, a, b)).toBeGreaterThan(FITS);
  });

  it("holds the ISCC-NBS colours of its name, and every one that is not faint", () => {
    const held = ISCC.filter(({ term, color }) => termFit(term, ...color) > FITS);
    expect(ISCC.length).toBeGreaterThan(200);
    expect(held.length / ISCC.length).toBeGreaterThan(0.88);
    const left = ISCC.filter((row) => !held.includes(row) && !FAINT.test(row.name));
    expect(left.map(({ name }) => name)).toEqual([]);
  });

  it("is there for every term, and holds its own middle", () => {
    for (const term of COLOR_TERMS) {
      const [darkest, lightest, dullest, strongest, hue] = TERM_REGIONS[term];
      const chroma = (dullest + strongest) / 2;
      const angle = (hue * Math.PI) / 180;
      const fit = termFit(term, (darkest + lightest) / 2, chroma * Math.cos(angle), chroma * Math.sin(angle));
      expect(fit, term).toBeCloseTo(1, 6);
    }
  });

  it("does not hold the opposite hue or the other end of the greys", () => {
    for (const term of COLOR_TERMS) {
      const [darkest, lightest, dullest, strongest, hue, around] = TERM_REGIONS[term];
      const middle = (darkest + lightest) / 2;
      const chroma = around < 180 ? Math.max(0.08, (dullest + strongest) / 2) : 0;
      const angle = ((hue + 180) * Math.PI) / 180;
      const l = around < 180 ? middle : middle > 0.5 ? 0.05 : 0.98;
      const other = [l, chroma * Math.cos(angle), chroma * Math.sin(angle)] as const;
      expect(
        termFit(term, ...other),
        `${term} at hue ${hueOf(other)}, chroma ${chromaOf(other)}`,
      ).toBeLessThan(0.1);
    }
  });

  it("takes the best of several terms, and nothing of none", () => {
    const [l, a, b] = oklabOf(paintOf("be0032"));
    expect(bestFit(["green", "red"], l, a, b)).toBe(termFit("red", l, a, b));
    expect(bestFit([], l, a, b)).toBe(0);
  });
});
