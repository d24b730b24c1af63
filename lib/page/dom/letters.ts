/** The last code of the plain Latin characters, which need no table of all scripts to be told. */
const LAST_PLAIN = 0x7f;

/** Whether a character is a letter of any script; outside the basic plane, none is. */
export function isLetter(text: string, at = 0): boolean {
  const code = text.charCodeAt(at);
  const folded = code | 32;
  return code > LAST_PLAIN ? /\p{L}/u.test(text.charAt(at)) : folded >= 97 && folded <= 122;
}

/** How many letters a text has. */
export function letters(text: string): number {
  let count = 0;
  for (let at = 0; at < text.length; at++) if (isLetter(text, at)) count++;
  return count;
}

const WORD = /\p{L}{3}|([\p{Script=Han}\p{Script=Hangul}\p{Script=Hiragana}\p{Script=Katakana}] ?){2}/u;

/** Whether a text says more than a measure: three letters of a word, or two signs that are words or syllables. */
export const hasWord = (text: string): boolean => WORD.test(text);
