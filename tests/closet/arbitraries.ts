import fc from "fast-check";
import type { Correction, Piece, Wish } from "../../lib/closet/piece.ts";
import { EVIDENCE, FINISHES, type Palette, type Swatch } from "../../lib/sample/palette.ts";
import { SLOTS } from "../../lib/words/slot.ts";

const axis = fc.double({ min: -0.5, max: 0.5, noNaN: true }).map((value) => value + 0);
const lightness = fc.double({ min: 0, max: 1, noNaN: true }).map((value) => value + 0);
const time = fc.integer({ min: 0, max: 4_000_000_000_000 });
const key = fc.string({ minLength: 1, maxLength: 40, unit: "binary" });

/** A name as a person types it: something to see, no white space at the ends or twice. */
export const nameArbitrary = fc
  .string({ minLength: 1, maxLength: 60, unit: "grapheme" })
  .map((raw) => raw.replace(/\s+/g, " ").trim())
  .filter((name) => name !== "");

const finish = fc.option(fc.constantFrom(...FINISHES), { nil: undefined });

/** One to six swatches in order, shares summing to 1. */
export const swatchesArbitrary: fc.Arbitrary<readonly Swatch[]> = fc
  .array(
    fc.record({ oklab: fc.tuple(lightness, axis, axis), weight: fc.integer({ min: 1, max: 100 }), finish }),
    {
      minLength: 1,
      maxLength: 6,
    },
  )
  .map((parts) => {
    const sum = parts.reduce((total, part) => total + part.weight, 0);
    return parts
      .toSorted((one, other) => other.weight - one.weight)
      .map(({ oklab, weight, finish: metal }) => ({
        oklab,
        share: weight / sum,
        ...(metal && { finish: metal }),
      }));
  });

export const paletteArbitrary: fc.Arbitrary<Palette> = fc.record({
  swatches: fc.oneof(swatchesArbitrary, fc.constant([])),
  confidence: lightness,
  evidence: fc.subarray([...EVIDENCE]),
});

const picture = fc
  .uint8Array({ minLength: 1, maxLength: 60 })
  .map((bytes) => `data:image/png;base64,${Buffer.from(bytes).toString("base64")}`);

export const pieceArbitrary: fc.Arbitrary<Piece> = fc.record(
  {
    id: key,
    name: nameArbitrary,
    slot: fc.constantFrom(...SLOTS),
    swatches: swatchesArbitrary,
    addedAt: time,
    picture,
    productKey: key,
  },
  { requiredKeys: ["id", "name", "slot", "swatches", "addedAt"] },
);

export const wishArbitrary: fc.Arbitrary<Wish> = fc.record(
  {
    id: key,
    title: nameArbitrary,
    slot: fc.option(fc.constantFrom(...SLOTS)),
    palette: paletteArbitrary,
    price: fc.option(
      fc.record({
        amount: fc.integer({ min: 0, max: 1e7 }),
        currency: fc.option(fc.constantFrom("EUR", "JPY")),
      }),
    ),
    link: fc.option(fc.webUrl({ validSchemes: ["https"] })),
    store: fc.domain(),
    savedAt: time,
    picture,
  },
  { requiredKeys: ["id", "title", "slot", "palette", "price", "link", "store", "savedAt"] },
);

export const correctionArbitrary: fc.Arbitrary<Correction> = fc.record({
  productKey: key,
  swatches: swatchesArbitrary,
  correctedAt: time,
});
