import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inSrgb, intoSrgb } from "../../lib/color/convert.ts";
import { ISCC_NAMES } from "../../lib/color/data/iscc-names.ts";
import { deltaE2000 } from "../../lib/color/difference.ts";
import { howTheyDiffer } from "../../lib/color/how-they-differ.ts";
import { type ColorName, lookDifferent, nameColor, tellApart } from "../../lib/color/name-color.ts";
import type { Oklab } from "../../lib/color/oklab.ts";
import { parseColor } from "../../lib/color/parse-color.ts";
import { nameSwatch, swatchName, swatchNames } from "../../lib/color/swatch-name.ts";
import { anyOklab, pointOf } from "./arbitraries.ts";
import { CAUS_FABRICS } from "./facts/caus-fabrics.ts";

/** Of all pairs of these colours, those that look different and yet share a name: as a list, and as a share of all pairs. */
function collisions(
  colors: readonly Oklab[],
  nameOf: (name: ColorName) => string,
  different: (one: ColorName, other: ColorName) => boolean = lookDifferent,
) {
  const byName = new Map<string, ColorName[]>();
  for (const name of colors.map(nameColor))
    byName.set(nameOf(name), [...(byName.get(nameOf(name)) ?? []), name]);
  const pairs = [...byName].flatMap(([words, group]) =>
    group.flatMap((one, at) =>
      group.slice(at + 1).flatMap((other) => (different(one, other) ? [words] : [])),
    ),
  );
  return { pairs, share: pairs.length / ((colors.length * (colors.length - 1)) / 2) };
}

const everyday = (name: ColorName) => name.everyday;
const everyWord = (name: ColorName) => `${name.everyday}, ${name.iscc}`;

/** Colours about the 30 fabric centroids, as far apart as one dye lot is from the next and one wash from another: a choice, no source. */
function clothAboutFabrics(): readonly Oklab[] {
  const colors: Oklab[] = [];
  for (const [lightness, a, b] of CAUS_FABRICS.map(({ hex }) => parseColor(hex)))
    for (const lighter of [-0.12, -0.06, 0, 0.06, 0.12])
      for (const redder of [-0.03, 0, 0.03])
        for (const yellower of [-0.03, 0, 0.03]) {
          const color: Oklab = [lightness + lighter, a + redder, b + yellower];
          if (inSrgb(color)) colors.push(color);
        }
  return colors;
}

describe("how often two colours that look different share their names", () => {
  test("never on the table of fabrics (Centore 2020): none of its 435 pairs, not even the everyday name alone", () => {
    const fabrics = CAUS_FABRICS.map(({ hex }) => parseColor(hex));
    expect(fabrics).toHaveLength(30);
    expect(collisions(fabrics, everyday).pairs).toEqual([]);
    expect(collisions(fabrics, everyWord).pairs).toEqual([]);
  });

  test("never on the ISCC-NBS centroids (Kelly & Judd 1976), and the everyday name alone in 2 of 1,000 pairs", () => {
    const centroids = ISCC_NAMES.split("|").map((row) => parseColor(`#${row.slice(0, 6)}`));
    expect(collisions(centroids, everyWord).pairs).toEqual([]);
    expect(collisions(centroids, everyday).share).toBeLessThan(0.002);
  });

  test("seldom in cloth about those fabrics", () => {
    const cloth = clothAboutFabrics();
    expect(cloth.length).toBeGreaterThan(1000);
    expect(collisions(cloth, everyWord).share).toBeLessThan(0.003);
    expect(collisions(cloth, everyday).share).toBeLessThan(0.006);
  });
});

/** Two colours of which the second is near the first, so that they often share their names. */
const anyNeighbours = fc
  .tuple(anyOklab, ...[0.1, 0.03, 0.03].map((most) => fc.double({ min: -most, max: most, noNaN: true })))
  .map(([color, ...by]) => {
    const [l = 0, a = 0, b = 0] = by;
    return [color, intoSrgb([color[0] + l, color[1] + a, color[2] + b])] as const;
  });

/** CIEDE2000: nobody takes two such colours for one. ISCC-NBS blocks are up to this wide. */
const CLEARLY_DIFFERENT = 20;
const STEPS = [0, 51, 102, 153, 204, 255];

test("colours of the screen that nobody takes for one do not share every word", () => {
  const point = ({ oklab }: ColorName) => pointOf(`oklab(${oklab.join(" ")})`);
  const grid = STEPS.flatMap((r) =>
    STEPS.flatMap((g) => STEPS.map((b) => parseColor(`rgb(${r} ${g} ${b})`))),
  );
  const clearly = (one: ColorName, other: ColorName) =>
    deltaE2000(point(one), point(other)) > CLEARLY_DIFFERENT;
  expect(collisions(grid, everyWord, clearly).pairs).toEqual([]);
});

describe("two colours that are spoken of together", () => {
  test("are told apart wherever they look different, in either order, and keep one name where they do not", () => {
    let shared = 0;
    fc.assert(
      fc.property(anyNeighbours, ([one, other]) => {
        const [a, b] = [nameColor(one), nameColor(other)];
        const [first, second] = tellApart(a, b);
        expect(tellApart(b, a)).toEqual([second, first]);
        if (lookDifferent(a, b)) expect(first).not.toBe(second);
        else expect([first, second]).toEqual([a.everyday, b.everyday]);
        if (first !== a.everyday) shared += 1;
      }),
      { numRuns: 3000 },
    );
    expect(shared).toBeGreaterThan(20);
  });

  test.each([
    ["#00304e", "#252440", "navy blue (dark blue)", "navy blue (dark purplish blue)"],
    ["#313855", "#151227", "navy blue (the lighter)", "navy blue (the darker)"],
    ["#a64f29", "#924540", "rust brown (the yellower)", "rust brown (the redder)"],
    ["#bb5b54", "#934151", "red (the lighter)", "red (the darker)"],
    ["#0067a5", "#00629b", "rich blue", "rich blue"],
    ["#c8102e", "#1f50c2", "vivid red", "rich purplish blue"],
  ])("of %s and %s are %s, %s", (one, other, first, second) => {
    expect(tellApart(nameColor(parseColor(one)), nameColor(parseColor(other)))).toEqual([first, second]);
  });
});

describe("how two colours differ", () => {
  /** The words of instrument reports in the textile trade: lighter or darker, stronger or greyer, and the hue it leans to. */
  test.each<[string, Oklab, Oklab, string, string]>([
    ["lightness", [0.7, 0.02, 0.03], [0.6, 0.02, 0.03], "the lighter", "the darker"],
    ["chroma", [0.6, 0.03, 0.02], [0.6, 0.12, 0.08], "the greyer", "the stronger"],
    ["reds", [0.55, 0.13, 0], [0.55, 0.12, 0.07], "the bluer", "the redder"],
    ["oranges", [0.65, 0.1, 0.08], [0.65, 0.07, 0.11], "the redder", "the yellower"],
    ["yellows", [0.8, -0.01, 0.12], [0.8, -0.07, 0.1], "the yellower", "the greener"],
    ["greens", [0.6, -0.08, 0.1], [0.6, -0.12, 0.03], "the yellower", "the greener"],
    ["teals", [0.6, -0.1, 0.065], [0.6, -0.11, -0.03], "the greener", "the bluer"],
    ["blues", [0.5, -0.08, -0.07], [0.5, -0.01, -0.11], "the greener", "the bluer"],
    ["purples", [0.45, 0.06, -0.1], [0.45, 0.1, -0.06], "the bluer", "the redder"],
    ["greys", [0.6, 0.005, 0.018], [0.6, -0.005, -0.018], "the yellower", "the bluer"],
  ])("in %s", (_, one, other, first, second) => {
    expect(howTheyDiffer(one, other)).toEqual([first, second]);
    expect(howTheyDiffer(other, one)).toEqual([second, first]);
  });
});

describe("the name of a swatch", () => {
  const swatch = (css: string, finish?: "gold" | "silver") => ({
    oklab: parseColor(css),
    share: 1,
    ...(finish && { finish }),
  });

  test("is its metal where it has one, and never a metal without", () => {
    expect(swatchName(swatch("#c9a227", "gold"))).toBe("gold");
    expect(nameSwatch(swatch("#c9a227", "gold"))).toMatchObject({ everyday: "gold", iscc: "strong yellow" });
    expect(swatchName(swatch("#c9a227"))).not.toContain("gold");
    expect(swatchName(swatch("#c0c0c0"))).not.toContain("silver");
  });

  test("is told apart from those it stands beside only where they look different", () => {
    const told = (...colors: readonly string[]) => swatchNames(colors.map((css) => swatch(css)));
    expect(told("#7a7a7a", "#9a9a9a", "navy")).toEqual([
      "grey (the darker)",
      "grey (the lighter)",
      "navy blue",
    ]);
    expect(told("#848484", "#868686")).toEqual(["grey", "grey"]);
    expect(told("#747474", "#848484", "#9c9c9c")).toEqual([
      "grey (the darkest)",
      "grey (the second lightest)",
      "grey (the lightest)",
    ]);
    expect(swatchNames([swatch("#c9a227", "gold"), swatch("#e8d27a", "gold")])).toEqual([
      "gold (strong yellow)",
      "gold (light yellow)",
    ]);
    expect(told()).toEqual([]);
  });
});
