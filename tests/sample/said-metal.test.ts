import { expect, test } from "vitest";
import { parseColor } from "../../lib/color/parse-color.ts";
import { saidMetal } from "../../lib/sample/said-metal.ts";
import { samplePixels } from "../../lib/sample/sample-pixels.ts";
import { readColorTerms } from "../../lib/words/read-words.ts";

/** Of the CAUS fabrics (P. Centore, JAIC 25, 2020) the one called gold; CSS silver; copper after the XKCD survey (2010; CC0), from memory. */
const GOLD = "#c79549";
const SILVER = "#c0c0c0";
const COPPER = "#b66325";

test.each([
  ["Gold clutch", GOLD, "gold"],
  ["Sandalen, silber", SILVER, "silver"],
  ["Copper belt", COPPER, "copper"],
  ["Mustard clutch", GOLD, null],
  ["Grey belt with silver buckle", SILVER, null],
  ["Black blazer, gold buttons", "#1a1a1c", null],
  ["Gold clutch", "#2a55b8", null],
  ["", GOLD, null],
] as const)("%j makes %s %s", (text, hex, metal) => {
  expect(saidMetal(readColorTerms(text), parseColor(hex))).toBe(metal);
});

/** A square of one colour in the middle of white. */
function square([r, g, b]: readonly [number, number, number]): Uint8ClampedArray {
  const data = new Uint8ClampedArray(96 * 96 * 4).fill(255);
  for (let y = 24; y < 72; y++) {
    for (let x = 24; x < 72; x++) data.set([r, g, b, 255], (y * 96 + x) * 4);
  }
  return data;
}

test("a sampled swatch is a metal with the words, and none without them", () => {
  const gold = square([0xc7, 0x95, 0x49]);
  const [said] = samplePixels(gold, 96, 96, { slot: "bag", text: "Clutch in gold" }).swatches;
  const [plain] = samplePixels(gold, 96, 96).swatches;
  expect(said?.finish).toBe("gold");
  expect(plain).toMatchObject({ share: 1 });
  expect(plain).not.toHaveProperty("finish");
});
