import { expect, it } from "vitest";
import { SLOTS } from "../../lib/words/slot.ts";
import { CATALOGUE, PICTURES } from "./catalogue.ts";
import { DYES } from "./dyes.ts";
import { readCatalogue } from "./read-catalogue.ts";
import { BACKDROPS, POSES, PRINTS, WEAVES } from "./studio/recipe.ts";

it("has 48 products with names and pictures of their own", () => {
  expect(CATALOGUE).toHaveLength(48);
  expect(new Set(CATALOGUE.map(({ id }) => id)).size).toBe(48);
  expect(new Set(PICTURES.map(({ id }) => id)).size).toBe(PICTURES.length);
});

it("covers every slot, weave, print, pose, backdrop and all ten Monk tones", () => {
  expect(new Set(CATALOGUE.map(({ slot }) => slot))).toEqual(new Set(SLOTS));
  expect(new Set(PICTURES.map(({ cloth }) => cloth.weave))).toEqual(new Set(WEAVES));
  expect(new Set(PICTURES.map(({ cloth }) => cloth.print))).toEqual(new Set(PRINTS));
  expect(new Set(PICTURES.map(({ scene }) => scene.pose))).toEqual(new Set(POSES));
  expect(new Set(PICTURES.map(({ scene }) => scene.backdrop))).toEqual(new Set(BACKDROPS));
  const tones = PICTURES.flatMap(({ scene }) => scene.skin ?? []);
  expect([...new Set(tones)].sort((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
});

it("shows a skin tone on a model and on nobody else", () => {
  for (const { id, scene } of PICTURES) expect(scene.skin !== null, id).toBe(scene.pose === "model");
});

it("has sales, variants, pictures closed to other sites, and titles with and without a colour word", () => {
  expect(CATALOGUE.filter(({ was, price }) => was !== null && was > price).length).toBeGreaterThanOrEqual(5);
  expect(CATALOGUE.filter(({ variants }) => variants.length > 1).length).toBeGreaterThanOrEqual(12);
  const closed = PICTURES.filter(({ cors }) => !cors).length / PICTURES.length;
  expect(closed).toBeGreaterThan(0.2);
  expect(closed).toBeLessThan(0.5);
  const words = Object.keys(DYES);
  const coloured = CATALOGUE.filter(({ title }) =>
    words.some((word) => title.toLowerCase().split(/\W/).includes(word)),
  );
  expect(coloured.length / CATALOGUE.length).toBeGreaterThan(0.4);
  expect(coloured.length / CATALOGUE.length).toBeLessThan(0.6);
});

it("refuses a word that it does not know, and names the line", () => {
  const line = "Odd hat | fez | wool plain | navy | 20 | still white | |";
  expect(() => readCatalogue(line)).toThrow(/"fez".*Odd hat/);
});
