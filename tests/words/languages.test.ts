import { describe, expect, it } from "vitest";
import { COLOR_TERMS } from "../../lib/words/color-term.ts";
import { LANGUAGE_CODES, LANGUAGES } from "../../lib/words/languages.ts";
import { readColorTerms, readSlot } from "../../lib/words/read-words.ts";
import { SLOTS } from "../../lib/words/slot.ts";

/** The eleven basic colour terms of Berlin and Kay (1969). */
const BASIC = 11;

const wordsOf = (entry: string): readonly string[] =>
  entry.split(" ").map((word) => word.replaceAll("-", ""));

describe.each(LANGUAGE_CODES)("words in %s", (code) => {
  const language = LANGUAGES[code];

  it("has a word for every slot, and reads each of them as that slot", () => {
    for (const [i, slot] of SLOTS.entries()) {
      const words = wordsOf(language.slots[i] ?? "");
      expect(words[0], slot).toMatch(/\p{L}/u);
      for (const word of words) expect(`${word}: ${readSlot(word, code)}`).toBe(`${word}: ${slot}`);
    }
  });

  it("has a word for every basic colour, and reads every colour word as its colour", () => {
    const all = [...language.basicColors, ...language.tradeColors];
    expect(all).toHaveLength(COLOR_TERMS.length);
    for (const [i, term] of COLOR_TERMS.entries()) {
      const entry = all[i] ?? "";
      if (i < BASIC) expect(entry, term).toMatch(/\p{L}/u);
      if (!entry) continue;
      for (const word of wordsOf(entry)) expect(`${word}: ${readColorTerms(word)}`).toBe(`${word}: ${term}`);
    }
  });
});
