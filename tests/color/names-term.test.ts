import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { everydayTerm } from "../../lib/color/everyday-term.ts";
import { oftenWornAsNeutral } from "../../lib/color/often-worn-as-neutral.ts";
import { parseColor } from "../../lib/color/parse-color.ts";
import { COLOR_TERMS } from "../../lib/words/color-term.ts";
import { anyPoint } from "./arbitraries.ts";
import { CAUS_FABRICS } from "./facts/caus-fabrics.ts";
import { UW_NAMES } from "./facts/uw-names.ts";

/** Terms that are, to most people, kinds of another: what one person calls teal another calls green. Common practice, no source. */
const KINDS: Readonly<Record<string, readonly string[]>> = {
  beige: ["brown"],
  burgundy: ["red", "purple"],
  camel: ["brown", "beige"],
  coral: ["pink", "red", "orange"],
  cream: ["white", "yellow", "beige"],
  fuchsia: ["pink", "purple"],
  khaki: ["green", "brown"],
  lavender: ["purple"],
  mint: ["green"],
  mustard: ["yellow"],
  navy: ["blue"],
  olive: ["green"],
  peach: ["orange", "pink"],
  rust: ["brown", "orange", "red"],
  teal: ["green", "blue", "turquoise"],
  turquoise: ["blue", "green"],
};

function akin(one: string, other: string): boolean {
  const family = [one, ...(KINDS[one] ?? [])];
  return [other, ...(KINDS[other] ?? [])].some((term) => family.includes(term));
}

describe("the everyday term", () => {
  test("is akin to the word of a survey that placed none of it, in more than 95 of 100 names (UW, Kim et al. 2019)", () => {
    const misses = UW_NAMES.filter(([, hex, term]) => !akin(everydayTerm(parseColor(hex)), term));
    expect(UW_NAMES.length).toBeGreaterThan(120);
    expect(misses.length / UW_NAMES.length).toBeLessThan(0.05);
  });

  /** Basic names of fabrics, of which only grey placed any of it. White is left out: the trade's is yellowish (chroma 0.03) and goes by cream. */
  test.each(CAUS_FABRICS.filter(({ basic, name }) => basic && name !== "white"))(
    "of the fabric called $name is that (Centore 2020)",
    ({ name, hex }) => {
      expect(everydayTerm(parseColor(hex))).toBe(name);
    },
  );

  test.each([
    ["red", "red"],
    ["orange", "orange"],
    ["yellow", "yellow"],
    ["green", "green"],
    ["blue", "blue"],
    ["purple", "purple"],
    ["pink", "pink"],
    ["saddlebrown", "brown"],
    ["black", "black"],
    ["white", "white"],
    ["gray", "grey"],
    ["navy", "navy"],
    ["teal", "teal"],
    ["olive", "olive"],
    ["turquoise", "turquoise"],
    ["coral", "coral"],
    ["maroon", "burgundy"],
  ])("of CSS %s is %s", (css, term) => {
    expect(everydayTerm(parseColor(css))).toBe(term);
  });

  test("is always a term, never a metal, and for a neutral black, grey or white", () => {
    fc.assert(
      fc.property(anyPoint, ({ oklab, neutral }) => {
        const term = everydayTerm(oklab);
        expect(COLOR_TERMS).toContain(term);
        expect(["gold", "silver", "copper"]).not.toContain(term);
        if (neutral) expect(["black", "grey", "white"]).toContain(term);
      }),
      { numRuns: 300 },
    );
  });
});

describe("often worn as a neutral", () => {
  /** Common practice, no source; colours of the XKCD survey and of fabrics (Centore 2020). */
  test.each([
    "#01153e",
    "#2e314b",
    "#3b638c",
    "#b09076",
    "#c19a6b",
    "#9d775a",
    "#653700",
    "#e6daa6",
    "#837863",
    "#717d88",
  ])("%s is", (hex) => {
    expect(oftenWornAsNeutral(parseColor(hex))).toBe(true);
  });

  test.each(["red", "#1f9d55", "#0343df", "#ff81c0", "black", "white", "#808080"])("%s is not", (css) => {
    expect(oftenWornAsNeutral(parseColor(css))).toBe(false);
  });
});
