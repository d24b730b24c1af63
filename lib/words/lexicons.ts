import { COLOR_TERMS, type ColorTerm } from "./color-term.ts";
import { LANGUAGE_CODES, LANGUAGES, type Language } from "./languages.ts";
import { addWords, emptyLexicon, fold, type Lexicon } from "./lexicon.ts";
import { SLOTS, type Slot } from "./slot.ts";

/** All languages in one index each, so that a title needs no language to be read. */
export interface Lexicons {
  readonly slots: Lexicon<Slot>;
  readonly colors: Lexicon<ColorTerm>;
  readonly particles: ReadonlyMap<string, readonly Language[]>;
}

function build(): Lexicons {
  const slots = emptyLexicon<Slot>();
  const colors = emptyLexicon<ColorTerm>();
  const particles = new Map<string, Language[]>();
  for (const code of LANGUAGE_CODES) {
    const language = LANGUAGES[code];
    addWords(slots, code, SLOTS, language.slots);
    addWords(colors, code, COLOR_TERMS, [...language.basicColors, ...language.tradeColors]);
    for (const word of fold(language.particles).split(" "))
      particles.set(word, [...(particles.get(word) ?? []), code]);
  }
  return { slots, colors, particles };
}

let built: Lexicons | undefined;

/** Built once, on the first use: a page without products pays nothing. */
export function lexicons(): Lexicons {
  built ??= build();
  return built;
}
