import { LANGUAGE_CODES, LANGUAGES, type Language } from "./languages.ts";
import { fold, type Hit, hitsIn, type Sense, tokensOf } from "./lexicon.ts";
import { lexicons } from "./lexicons.ts";
import type { Slot } from "./slot.ts";

/** What separates the name of a thing from a brand, a colour or a store. */
const BREAK = /[|,;:(/\n•·]| [-–—] /;

/** A page's language outweighs a tie and nothing more; a word counts 1. */
const HINT_WEIGHT = 0.5;

/** The slot nouns of one stretch of text up to the first small word behind them, and the language votes of all words. */
function readStretch(stretch: string): {
  readonly hits: readonly Hit<Slot>[];
  readonly votes: Map<Language, number>;
} {
  const { slots, colors, particles } = lexicons();
  const hits: Hit<Slot>[] = [];
  const votes = new Map<Language, number>();
  const vote = (languages: Iterable<Language>) => {
    for (const language of new Set(languages)) votes.set(language, (votes.get(language) ?? 0) + 1);
  };
  const codes = (hit: Hit<unknown>) => hit.senses.map((sense: Sense<unknown>) => sense.language);
  let open = true;
  for (const token of tokensOf(stretch)) {
    const particle = particles.get(token);
    if (particle) {
      vote(particle);
      open &&= hits.length === 0;
    }
    const found = hitsIn(token, slots);
    if (open) hits.push(...found);
    for (const hit of [...found, ...hitsIn(token, colors)]) vote(codes(hit));
  }
  return { hits, votes };
}

/**
 * Where a piece with this title is worn, or null where no word says so. The head noun decides: a "shirt dress" is a
 * dress, a "robe chemise" too. `language` is the page's, as in `lang` ("de-AT"); it settles what the words leave open.
 */
export function readSlot(text: string, language = ""): Slot | null {
  for (const stretch of fold(text).split(BREAK)) {
    const { hits, votes } = readStretch(stretch);
    if (hits.length === 0) continue;
    const weight = (code: Language) =>
      (votes.get(code) ?? 0) + (language.toLowerCase().startsWith(code) ? HINT_WEIGHT : 0);
    const spoken = LANGUAGE_CODES.reduce((best, code) => (weight(code) > weight(best) ? code : best));
    const head = LANGUAGES[spoken].headFirst ? hits[0] : hits.at(-1);
    const sense = head?.senses.find((candidate) => candidate.language === spoken) ?? head?.senses[0];
    return sense?.term ?? null;
  }
  return null;
}
