import type { Language } from "./languages.ts";

/** One meaning of a word, in one language. */
export interface Sense<T> {
  readonly term: T;
  readonly language: Language;
  /** May close a compound. */
  readonly closes: boolean;
  /** May be followed by anything. */
  readonly open: boolean;
}

/** The words of all languages, and the tokens looked up before: titles of one store repeat them. */
export interface Lexicon<T> {
  readonly words: Map<string, Sense<T>[]>;
  readonly seen: Map<string, readonly Hit<T>[]>;
}

/** Tokens remembered; then the memory starts afresh. */
const MOST_SEEN = 3000;

export const emptyLexicon = <T>(): Lexicon<T> => ({ words: new Map(), seen: new Map() });

/** A word found in a text: its meanings in every language that has it. */
export interface Hit<T> {
  readonly senses: readonly Sense<T>[];
}

/** Plurals, cases and genders that may follow a word: -s, -es, -en, -er, -ar, -i, -ow, -je … */
const ENDING = /^j?[aeiouy]?[nrstxw]?[aeiny]?$/;

/** Longest ending that `ENDING` accepts, in letters. */
const LONGEST_ENDING = 4;

/** A compound needs this many letters before its last word: "that" is no hat, "address" no dress. */
const SHORTEST_PREFIX = 3;

/** Kana and ideographs, written without spaces between words. */
const UNSPACED = /[\u3040-\u30ff\u4e00-\u9fff]/;

/** Titles longer than this are cut, in letters. */
const LONGEST_TEXT = 400;

/** Lower case without accents, so that "Gürtel", "GÜRTEL" and "gurtel" are one. */
export const fold = (text: string): string =>
  text
    .slice(0, LONGEST_TEXT)
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replaceAll("ł", "l")
    .replaceAll("ß", "ss");

/** The runs of letters in a folded text, in any script. */
export const tokensOf = (folded: string): readonly string[] => folded.match(/[\p{L}\p{M}ー]+/gu) ?? [];

/** Adds the words of one language to a lexicon; `words[i]` are those that mean `terms[i]`. */
export function addWords<T>(
  { words: known }: Lexicon<T>,
  language: Language,
  terms: readonly T[],
  words: readonly string[],
): void {
  terms.forEach((term, i) => {
    for (const entry of fold(words[i] ?? "").split(" ")) {
      const stem = entry.replaceAll("-", "");
      if (!stem) continue;
      const unspaced = UNSPACED.test(stem);
      const sense = {
        term,
        language,
        closes: unspaced || entry[0] === "-",
        open: unspaced || entry.endsWith("-"),
      };
      known.set(stem, [...(known.get(stem) ?? []), sense]);
    }
  });
}

/** The words of one token, left to right; at each place the longest wins. A token in spaced script holds at most one. */
export function hitsIn<T>(token: string, { words, seen }: Lexicon<T>): readonly Hit<T>[] {
  let hits = seen.get(token);
  if (!hits) {
    if (seen.size > MOST_SEEN) seen.clear();
    hits = search(token, words);
    seen.set(token, hits);
  }
  return hits;
}

function search<T>(token: string, words: Lexicon<T>["words"]): readonly Hit<T>[] {
  const hits: Hit<T>[] = [];
  const unspaced = UNSPACED.test(token);
  for (let at = 0; at < token.length; at++) {
    for (let end = token.length; end > at; end--) {
      const rest = token.slice(end);
      const senses = words
        .get(token.slice(at, end))
        ?.filter(
          (sense) =>
            (at === 0 || (sense.closes && (unspaced || at >= SHORTEST_PREFIX))) &&
            (sense.open || (rest.length <= LONGEST_ENDING && ENDING.test(rest))),
        );
      if (!senses?.length) continue;
      hits.push({ senses });
      if (!unspaced) return hits;
      at = end - 1;
      break;
    }
  }
  return hits;
}
