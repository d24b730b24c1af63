import { readFileSync } from "node:fs";
import { differenceCiede2000, modeLab65, modeRgb, parse, useMode } from "culori/fn";
import { expect, it } from "vitest";
import { colorPoint } from "../../lib/color/color-point.ts";
import { parseColor } from "../../lib/color/parse-color.ts";
import { relate } from "../../lib/color/relate.ts";
import { RELATIONS } from "../../lib/color/relation-name.ts";
import { CATALOGUE } from "./catalogue.ts";

useMode(modeRgb);
useMode(modeLab65);

interface Owned {
  readonly name: string;
  readonly slot: string;
  readonly swatches: readonly { readonly hex: string; readonly share: number }[];
}

const closet: { hueward: number; pieces: Owned[] } = JSON.parse(
  readFileSync(new URL("./demo-closet.json", import.meta.url), "utf8"),
);
const difference = differenceCiede2000();
/** CIEDE2000 by culori, an open library checked against the pairs of Sharma, Wu and Dalal (2005). */
const apart = (a: string, b: string): number => difference(parse(a) ?? "black", parse(b) ?? "white");
/** Two colours of a photo nearer than this share a dictionary name (nearest ISCC-NBS centroids lie 5.4 apart in the median). */
const SAME_SHADE = 5;

/** Pairs of a piece and a product whose first dyes are the same shade. */
const twins = closet.pieces.flatMap((piece) =>
  CATALOGUE.filter((product) => {
    const [mine, theirs] = [piece.swatches[0]?.hex ?? "", product.variants[0].dyes[0] ?? ""];
    return (
      product.variants[0].dyes.length === 1 && piece.swatches.length === 1 && apart(mine, theirs) < SAME_SHADE
    );
  }).map((product) => ({ piece, product })),
);

it("is a file of version 1 with fourteen pieces whose shares sum to one", () => {
  expect(closet.hueward).toBe(1);
  expect(closet.pieces).toHaveLength(14);
  for (const { name, swatches } of closet.pieces)
    expect(
      swatches.reduce((sum, { share }) => sum + share, 0),
      name,
    ).toBeCloseTo(1, 6);
});

it("repeats some products of the listing and makes a set with others", () => {
  const repeats = twins.filter(({ piece, product }) => piece.slot === product.slot);
  const sets = twins.filter(({ piece, product }) => piece.slot !== product.slot);
  expect(repeats.map(({ product }) => product.id)).toContain("pleated-midi-skirt-in-scarlet");
  expect(repeats.length).toBeGreaterThanOrEqual(4);
  expect(sets.map(({ product }) => product.id)).toContain("marla-wrap-dress-in-cobalt");
  expect(sets.length).toBeGreaterThanOrEqual(6);
});

it("owns a print that holds the colour of a plain product, and plain pieces that a printed product holds", () => {
  const prints = closet.pieces.filter(({ swatches }) => swatches.length > 1);
  const plain = CATALOGUE.filter(({ variants }) => variants[0].dyes.length === 1);
  const ties = prints.flatMap(({ swatches }) =>
    plain.filter(({ variants }) =>
      swatches.some(({ hex }) => apart(hex, variants[0].dyes[0] ?? "") < SAME_SHADE),
    ),
  );
  expect(ties.length).toBeGreaterThanOrEqual(3);
  const printed = CATALOGUE.filter(({ variants }) => variants[0].dyes.length > 1);
  const held = closet.pieces.filter(
    ({ swatches }) =>
      swatches.length === 1 &&
      printed.some(({ variants }) =>
        variants[0].dyes.some((dye) => apart(dye, swatches[0]?.hex ?? "") < SAME_SHADE),
      ),
  );
  expect(held.length).toBeGreaterThanOrEqual(3);
});

it("stands in every relation to something on the listing, and leaves some products to neutrals alone", () => {
  const relationsOf = (dye: string) =>
    closet.pieces.map(
      ({ swatches }) =>
        relate(colorPoint(parseColor(swatches[0]?.hex ?? "")), colorPoint(parseColor(dye))).relation,
    );
  const perProduct = CATALOGUE.map(({ variants }) => relationsOf(variants[0].dyes[0] ?? ""));
  expect(new Set(perProduct.flat())).toEqual(new Set(RELATIONS));
  const quiet = perProduct.filter((relations) =>
    relations.every((name) => name === "with-neutral" || name === "matching"),
  );
  expect(quiet.length).toBeGreaterThanOrEqual(3);
});
