import { assert, constantFrom, double, property, tuple } from "fast-check";
import { describe, expect, it } from "vitest";
import { CLOTH_COLORS } from "../../lib/closet/cloth-colors.ts";
import { RELATIONS } from "../../lib/color/relation-name.ts";
import { photoName, plainName } from "../../lib/ui/closet-page/photo-name.ts";
import { namedSwatches, namesText } from "../../lib/ui/named-swatches.ts";
import { priceText } from "../../lib/ui/price-text.ts";
import { countOf, RELATION_WORDS, relationText, SLOT_WORDS } from "../../lib/ui/words.ts";
import { SLOTS } from "../../lib/words/slot.ts";

it.each([
  ["green_wool-skirt.jpg", "Green wool skirt"],
  ["IMG_2034.HEIC", ""],
  ["DSC01234.jpg", ""],
  ["PXL_20260102_101112.jpg", ""],
  ["20260102.png", ""],
  ["my blazer 2.jpeg", "My blazer 2"],
])("takes from the file %s the name “%s”", (file, name) => {
  expect(photoName(file)).toBe(name);
});

it("names a piece plainly where the file does not", () => {
  const navy = [{ oklab: CLOTH_COLORS.navy, share: 1 }];
  expect(plainName(navy, "top")).toBe("Navy blue top");
  expect(plainName(navy, null)).toBe("Navy blue piece");
});

describe("words", () => {
  it("has a word for every slot and relation, and hedges the triad of two", () => {
    expect(SLOTS.map((slot) => SLOT_WORDS[slot]).every((word) => word.length > 0)).toBe(true);
    expect(new Set(RELATIONS.map((relation) => RELATION_WORDS[relation])).size).toBe(RELATIONS.length);
    expect(relationText("analogous", ["triadic", "none"])).toBe("analogous, or two of a triad");
    expect(relationText("analogous", ["none"])).toBe("analogous");
  });

  it("counts", () => {
    expect([countOf(1, "wish", "wishes"), countOf(2, "wish", "wishes"), countOf(0, "piece")]).toEqual([
      "1 wish",
      "2 wishes",
      "0 pieces",
    ]);
  });

  it("lists colour names once each, and calls a metal a metal", () => {
    const { red, navy } = CLOTH_COLORS;
    const named = namedSwatches([red, red, navy].map((oklab) => ({ oklab, share: 1 / 3 })));
    expect(namesText(named)).toBe("vivid red and navy blue");
    expect(namesText([])).toBe("no colour");
    expect(namedSwatches([{ oklab: red, share: 1, finish: "copper" }])[0]?.name).toBe("copper");
  });
});

describe("prices", () => {
  it("are written as the reader's language writes them (CLDR, by Intl)", () => {
    expect(priceText({ amount: 89.5, currency: "EUR" }, "en-GB")).toBe("€89.50");
    expect(priceText({ amount: 4900, currency: "JPY" }, "en-GB")).toBe("JP¥4,900");
    expect(priceText({ amount: 1299, currency: "SEK" }, "sv-SE").replaceAll("\u00a0", " ")).toBe(
      "1 299,00 kr",
    );
  });

  it("stay a bare number where the page named no currency, and keep a code that is none", () => {
    expect(priceText({ amount: 12.5, currency: null }, "en-GB")).toBe("12.50");
    expect(priceText({ amount: 12, currency: null }, "en-GB")).toBe("12");
    expect(priceText({ amount: 12, currency: "EURO" }, "en-GB")).toBe("12 EURO");
  });

  it("never throw", () => {
    const prices = tuple(
      double({ min: 0, max: 1e9, noNaN: true }),
      constantFrom("EUR", "XXX", "", "€", null),
    );
    assert(property(prices, ([amount, currency]) => priceText({ amount, currency }, "en-GB").length > 0));
  });
});
