import { describe, expect, it } from "vitest";
import { readColorTerms } from "../../lib/words/read-words.ts";

const TEXTS: readonly (readonly [text: string, terms: string])[] = [
  ["Light blue shirt", "blue"],
  ["hellblaues Hemd", "blue"],
  ["Navy blue", "navy"],
  ["Marineblau", "navy"],
  ["bleu marine", "navy"],
  ["azul marino", "navy"],
  ["granatowa sukienka", "navy"],
  ["Olive green", "olive"],
  ["vert olive", "olive"],
  ["olivgrün", "olive"],
  ["Mint", "mint"],
  ["rose gold", "gold"],
  ["Black/White", "black white"],
  ["White, black and white", "white black"],
  ["dunkelrot", "red"],
  ["Weinrot", "burgundy"],
  ["Mörkblå klänning", "blue"],
  ["Zwarte jurk", "black"],
  ["donkergroen", "green"],
  ["lichtgrijze", "grey"],
  ["camicia bianca", "white"],
  ["Sapatos pretos", "black"],
  ["różowy", "pink"],
  ["赤いスカート", "red"],
  ["ネイビー×ホワイト", "navy white"],
  ["Golden hour", "gold"],
  ["tailored carrot fit", ""],
  ["Pretty platform nerd", ""],
  ["", ""],
];

describe("readColorTerms", () => {
  it.each(TEXTS)("%s: %s", (text, terms) => {
    expect(readColorTerms(text).join(" ")).toBe(terms);
  });
});
