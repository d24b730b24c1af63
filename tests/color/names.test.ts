import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { EVERYDAY_NAMES } from "../../lib/color/data/everyday-names.ts";
import { ISCC_NAMES } from "../../lib/color/data/iscc-names.ts";
import { deltaE2000 } from "../../lib/color/difference.ts";
import { everydayTerm, isccName } from "../../lib/color/everyday-term.ts";
import { nameColor, tellApart } from "../../lib/color/name-color.ts";
import { oftenWornAsNeutral } from "../../lib/color/often-worn-as-neutral.ts";
import type { Oklab } from "../../lib/color/oklab.ts";
import { parseColor } from "../../lib/color/parse-color.ts";
import { COLOR_TERMS } from "../../lib/words/color-term.ts";
import { anyOklab, anyPoint, pointOf } from "./arbitraries.ts";
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

  /** Basic names of fabrics, which placed none of it either. White and grey are left out: the trade's are yellowish (chroma 0.03). */
  test.each(CAUS_FABRICS.filter(({ basic, name }) => basic && name !== "white" && name !== "grey"))(
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

describe("names", () => {
  test("every ISCC-NBS centroid has its own name, in British spelling", () => {
    const rows = ISCC_NAMES.split("|");
    expect(rows).toHaveLength(267);
    for (const row of rows) {
      expect(isccName(parseColor(`#${row.slice(0, 6)}`))).toBe(row.slice(7));
      expect(row).not.toMatch(/gray|,|see/);
    }
  });

  test("every fabric with a name of its own is called by it or by a kind of it (Centore 2020)", () => {
    const called = CAUS_FABRICS.map(({ name, hex }) => ({
      name,
      everyday: nameColor(parseColor(hex)).everyday,
    }));
    const own = called.filter(({ name, everyday }) => everyday.split(" ").includes(name));
    expect(own.length).toBeGreaterThanOrEqual(22);
  });

  test("agree with the everyday term, and never show a hex", () => {
    const metals: readonly string[] = ["gold", "silver", "copper"];
    expect(Object.keys(EVERYDAY_NAMES)).toEqual(COLOR_TERMS.filter((term) => !metals.includes(term)));
    for (const rows of Object.values(EVERYDAY_NAMES)) {
      for (const row of rows.split("|")) expect(row).toMatch(/^[0-9a-f]{6} [a-z][a-z' ]+$/);
    }
    fc.assert(
      fc.property(anyOklab, (color) => {
        const { everyday, iscc } = nameColor(color);
        expect(EVERYDAY_NAMES[everydayTerm(color) as keyof typeof EVERYDAY_NAMES]).toContain(everyday);
        expect(`${everyday} ${iscc}`).not.toMatch(/#|\d/);
      }),
      { numRuns: 300 },
    );
  });

  test("hold nothing crude", () => {
    const all = Object.values(EVERYDAY_NAMES).join("|");
    expect(all).not.toMatch(
      /\b(poo|poop|shit|puke|vomit|snot|booger|barf|piss|bile|diarrhea|ugly|blood|nasty|sick)/,
    );
  });

  test("of clearly different colours do not share every word", () => {
    const clear = (a: Oklab, b: Oklab) => deltaE2000(pointOfOklab(a), pointOfOklab(b)) > CLEARLY_DIFFERENT;
    const fabrics = CAUS_FABRICS.map(({ hex }) => parseColor(hex));
    expect(collisions(fabrics, clear)).toEqual([]);
    const grid = STEPS.flatMap((r) =>
      STEPS.flatMap((g) => STEPS.map((b) => parseColor(`rgb(${r} ${g} ${b})`))),
    );
    expect(collisions(grid, clear)).toEqual([]);
  });

  test("of two that share the everyday name are told apart by the ISCC-NBS name", () => {
    const one = { everyday: "teal", iscc: "dark bluish green" };
    const other = { everyday: "teal", iscc: "strong bluish green" };
    expect(tellApart(one, other)).toEqual(["teal (dark bluish green)", "teal (strong bluish green)"]);
    expect(tellApart(one, { everyday: "red", iscc: "strong red" })).toEqual(["teal", "red"]);
    expect(tellApart(one, one)).toEqual(["teal", "teal"]);
  });

  test("refuse what is no colour", () => {
    for (const use of [nameColor, everydayTerm, isccName])
      expect(() => use([Number.NaN, 0, 0])).toThrow("NaN 0 0");
  });
});

/** CIEDE2000: nobody takes two such colours for one. ISCC-NBS blocks are up to this wide. */
const CLEARLY_DIFFERENT = 20;
const STEPS = [0, 51, 102, 153, 204, 255];

function pointOfOklab(color: Oklab) {
  return pointOf(`oklab(${color.join(" ")})`);
}

function collisions(colors: readonly Oklab[], different: (a: Oklab, b: Oklab) => boolean): readonly string[] {
  const byWords = new Map<string, Oklab[]>();
  for (const color of colors) {
    const words = Object.values(nameColor(color)).join(", ");
    byWords.set(words, [...(byWords.get(words) ?? []), color]);
  }
  return [...byWords].flatMap(([words, same]) =>
    same.some((one) => same.some((other) => different(one, other))) ? [words] : [],
  );
}

describe("often worn as a neutral", () => {
  /** Common practice, no source; colours of the XKCD survey and of fabrics (Centore 2020). */
  test.each(["#01153e", "#2e314b", "#3b638c", "#b09076", "#c19a6b", "#9d775a", "#653700", "#e6daa6"])(
    "%s is",
    (hex) => {
      expect(oftenWornAsNeutral(parseColor(hex))).toBe(true);
    },
  );

  test.each(["red", "#1f9d55", "#0343df", "#ff81c0", "black", "white", "#808080"])("%s is not", (css) => {
    expect(oftenWornAsNeutral(parseColor(css))).toBe(false);
  });
});
