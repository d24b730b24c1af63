import fc from "fast-check";
import * as v from "valibot";
import { describe, expect, it } from "vitest";
import * as schemas from "../../lib/closet/schemas.ts";
import { correctionArbitrary, paletteArbitrary, pieceArbitrary, wishArbitrary } from "./arbitraries.ts";

const swatch = { oklab: [0.5, 0.1, 0.1], share: 1 };
const piece = { id: "p1", name: "Skirt", slot: "bottom", swatches: [swatch], addedAt: 1 };
const palette = { swatches: [swatch], confidence: 0.9, evidence: ["pixels"] };
const wish = {
  id: "w1",
  title: "Skirt",
  slot: null,
  palette,
  price: { amount: 12.5, currency: "EUR" },
  link: "https://shop.example/skirt",
  store: "shop.example",
  savedAt: 1,
};

/** The message of a refusal; fails where nothing was refused. */
function refusal(schema: v.GenericSchema<unknown, unknown>, input: unknown): string {
  const read = v.safeParse(schema, input);
  expect(read.success, JSON.stringify(input)).toBe(false);
  return read.issues?.[0]?.message ?? "";
}

describe("schemas", () => {
  it("leave every valid record as it is", () => {
    const stays = <T>(schema: v.GenericSchema<unknown, T>, records: fc.Arbitrary<T>) =>
      fc.assert(
        fc.property(records, (record) => {
          expect(v.parse(schema, record)).toEqual(record);
        }),
      );
    stays(schemas.pieceSchema, pieceArbitrary);
    stays(schemas.wishSchema, wishArbitrary);
    stays(schemas.paletteSchema, paletteArbitrary);
    stays(schemas.correctionSchema, correctionArbitrary);
  });

  it.each([
    [{ ...piece, name: "  " }, "The name is missing"],
    [{ ...piece, name: "x".repeat(301) }, "more than 300"],
    [{ ...piece, slot: "hat" }, "The slot must be one of: top, bottom"],
    [{ ...piece, swatches: [] }, "At least one swatch."],
    [{ ...piece, swatches: Array(7).fill(swatch) }, "At most 6 swatches."],
    [{ ...piece, swatches: [{ oklab: [Number.NaN, 0, 0], share: 1 }] }, "lightness"],
    [{ ...piece, swatches: [{ oklab: [1.01, 0, 0], share: 1 }] }, "lightness"],
    [{ ...piece, swatches: [{ oklab: [0.5, 0.51, 0], share: 1 }] }, "a and b"],
    [{ ...piece, swatches: [{ oklab: [0.5, 0, Number.NEGATIVE_INFINITY], share: 1 }] }, "a and b"],
    [{ ...piece, swatches: [{ oklab: [0.5, 0, 0, 0], share: 1 }] }, "three numbers"],
    [{ ...piece, swatches: [{ oklab: [0.5, 0, 0], share: -0.1 }] }, "share"],
    [{ ...piece, swatches: [{ ...swatch, finish: "tin" }] }, "finish"],
    [{ ...piece, addedAt: 1.5 }, "whole milliseconds"],
    [{ ...piece, id: "" }, "key is missing"],
    [{ ...piece, id: "x".repeat(513) }, "512"],
    [{ ...piece, picture: "https://shop.example/a.jpg" }, "data: address"],
    [{ ...piece, picture: "data:image/svg+xml;base64,PHN2Zy8+" }, "data: address"],
    [{ ...piece, picture: `data:image/png;base64,${"A".repeat(60_000)}` }, "60 kB"],
    [null, "A piece has a name"],
  ])("refuse a broken piece with a plain sentence (%#)", (input, message) => {
    expect(refusal(schemas.pieceSchema, input)).toContain(message);
  });

  it.each([
    [{ ...wish, price: { amount: -1, currency: null } }, "price"],
    [{ ...wish, price: { amount: 1, currency: "eur" } }, "ISO 4217"],
    [{ ...wish, link: "javascript:alert(1)" }, "http"],
    [{ ...wish, palette: { ...palette, confidence: 1.1 } }, "confidence"],
    [{ ...wish, palette: { ...palette, evidence: ["magic"] } }, "evidence"],
    [{ ...wish, store: "" }, "store"],
  ])("refuse a broken wish with a plain sentence (%#)", (input, message) => {
    expect(refusal(schemas.wishSchema, input)).toContain(message);
  });

  it("keep the statement swatch first and make shares sum to 1", () => {
    const read = v.parse(schemas.swatchesSchema, [
      { oklab: [0.1, 0, 0], share: 0.2 },
      { oklab: [0.9, 0, 0], share: 0.6 },
    ]);
    expect(read.map(({ share }) => share)).toEqual([expect.closeTo(0.25, 12), expect.closeTo(0.75, 12)]);
    expect(read[0]?.oklab).toEqual([0.1, 0, 0]);
    const even = v.parse(schemas.swatchesSchema, [
      { oklab: [0.1, 0, 0], share: 0 },
      { oklab: [0.9, 0, 0], share: 0 },
    ]);
    expect(even.map(({ share }) => share)).toEqual([0.5, 0.5]);
  });

  it("drop what they do not know", () => {
    const candidate = { key: "k", title: "A  red\nskirt", slot: "bottom", palette, owner: "page" };
    expect(v.parse(schemas.candidateSchema, candidate)).toEqual({
      key: "k",
      title: "A red skirt",
      slot: "bottom",
      palette,
    });
  });
});
