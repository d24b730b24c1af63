import { SOME } from "./amount-mark.ts";
import { LONGEST_SIGN, signAt, tellsWhich } from "./money-signs.ts";

const NUMBER =
  /\d{1,3}(?:[., '’٬/]\d{3})+(?:[.,٫]\d{1,2})?(?!\d)|\d{1,2}(?:,\d{2})+,\d{3}(?:\.\d+)?|\d+(?:[.,٫]\d{1,3})?/g;

/** Short words and marks that are signs of money behind amounts alone. */
const BEHIND = new Set([":-", "/-", "d", "da", "br", "ks", "km", "mt", "lek", "د"]);

/** Codes of money that are words as well. */
const WORDS = new Set(["gel", "try", "pen", "all", "mad", "bam", "br"]);

/** Whether a code is a word as it is written: "Gel 8" is a name, "GEL 8" money; "67 Br" is money, "67.1 BR" a model. */
const isWord = (sign: string, written: string): boolean =>
  WORDS.has(sign) && (written === sign.toUpperCase()) === (sign === "br");

/** A sign behind a number that belongs to the number after it, which has none behind; in so many characters. */
const SIGN_OF_NEXT = /^(?:\s*\n\s*([^\s\d]{1,5}) ?|\s+([^\s\d]{1,3}))\d[\d.,]*(?![\d.,]|\s?(?:\1\2))/;
const MOST_BEHIND = 24;
/** Spaces between an amount and its sign. */
const GAP = 2;

/** Parts of gold or silver in a thousand, as jewellers write them before what it is: "585/- Gelbgold". Common practice, no source. */
const FINENESS = /^(333|375|585|750|800|835|900|925|950|999)$/;

/** Digits of the scripts that prices are written in, for a class of characters: plain, wide, Arabic, Persian, Devanagari, Bengali, Thai. */
export const DIGITS = "\\d０-９٠-٩۰-۹०-९০-৯๐-๙";
export const FIGURE = new RegExp(`[${DIGITS}]`);

/** Other scripts' digits, wide forms and spaces of any width in the plain ones; Arabic and Thai digits end in their value, Indian ones in six more. */
const plainDigits = (text: string): string =>
  /^[ -~€£]*$/.test(text)
    ? text
    : text
        .normalize("NFKC")
        .replace(/[٠-٩۰-۹๐-๙]/g, (digit) => String(digit.charCodeAt(0) & 15))
        .replace(/[०-९০-৯]/g, (digit) => String((digit.charCodeAt(0) - 6) & 15))
        .replace(/[\u200e\u200f\u202a-\u202e\u2066-\u2069]/g, "");

interface Scan {
  /** Sign (null: none, but written as money) and number of each amount, in order. */
  readonly found: readonly (readonly [sign: string | null, number: string])[];
  /** The text with a mark where amounts were. */
  readonly rest: string;
}

/** The end of a span of amounts: "3,675〜4,200 円". */
const SPAN_END = /^\s?[〜～~–—-]\s?\d[\d.,]*/;

/** The sign behind the second of two amounts that have one sign: "75.00 99.00 kr", the second struck, or the end of a span. */
function sharedSign(number: string, behind: string): string | null {
  const cents = /[.,]\d\d$/.test(number) ? /^\s+\d[\d.,]*[.,]\d\d(?!\d)/.exec(behind) : null;
  const second = (cents ?? SPAN_END.exec(behind))?.[0];
  const rest = behind.slice(second?.length);
  const sign = second && !SIGN_OF_NEXT.test(rest) ? signAt(rest.trimStart(), false) : null;
  // Short words are no sign for more than the number before them: "A5 - 3D".
  return sign && /^[a-z]{1,2}$/.test(sign) && sign !== "kr" ? null : sign;
}

/** Numbers with a sign of money before or behind them, or written as money is ("49,-"). */
export function scanMoney(written: string): Scan {
  const text = plainDigits(written);
  const lower = text.toLowerCase();
  const found: (readonly [string | null, string])[] = [];
  let rest = "";
  let from = 0;
  for (const { 0: number, index } of text.matchAll(NUMBER)) {
    let end = index + number.length;
    if (index < from) continue;
    const before = lower
      .slice(from, index)
      .trimEnd()
      .replace(/\.$| ?:$/, "");
    let sign = signAt(before, true);
    // "N25,000" is in naira, "N95" a mask; others stand behind amounts alone.
    if ((sign === "n" && !number.includes(",")) || BEHIND.has(sign ?? "")) sign = null;
    // "R450" is in rand, "R16" a model; so is "NT2".
    if ((sign === "r" || sign === "nt") && /^\d\d?$/.test(number) && before === lower.slice(from, index))
      sign = null;
    let start = sign ? from + before.length - sign.length : index;
    if (sign && isWord(sign, text.slice(start, start + sign.length))) {
      sign = null;
      start = index;
    }
    const behind = lower.slice(end, end + LONGEST_SIGN + GAP);
    if (sign) {
      const code = signAt(behind.trimStart(), false);
      if (code && tellsWhich(sign, code)) {
        sign = code;
        end += behind.length - behind.trimStart().length + code.length;
      }
    } else {
      // In "7–8 £14" the sign belongs to what follows.
      const next = lower.slice(end, end + MOST_BEHIND);
      sign = SIGN_OF_NEXT.test(next) ? null : signAt(behind.trimStart(), false);
      // The first stand before amounts alone: "26R" are points; the last behind thousands: "100d" are days, "6 ks" pieces, "10 ft" feet, "2da" second.
      if (
        /^(r|n|nt)$/.test(sign ?? "") ||
        (/^(d|ks)$/.test(sign ?? "") && !/[.,]\d{3}$/.test(number)) ||
        (/^(ft|da)$/.test(sign ?? "") && /^\d\d?$/.test(number)) ||
        (sign === "/-" && FINENESS.test(number) && /^\/- ?(?!only|each|per)[a-z]/.test(behind))
      )
        sign = null;
      if (sign && isWord(sign, text.slice(end).trimStart().slice(0, sign.length))) sign = null;
      const dashed = /^[.,:][-–—]/.test(behind);
      if (sign) end += behind.length - behind.trimStart().length + sign.length;
      else if (dashed) {
        end += 2;
        // "10,- €"
        const late = lower.slice(end, end + LONGEST_SIGN + GAP);
        const last = signAt(late.trimStart(), false);
        if (last && (last === "kr" || !/^[a-z]{1,2}$/.test(last))) {
          sign = last;
          end += late.length - late.trimStart().length + last.length;
        }
      } else sign = sharedSign(number, next);
      if (!sign && !dashed) continue;
    }
    found.push([sign, number]);
    rest += text.slice(from, start) + SOME;
    from = end;
  }
  return { found, rest: rest + text.slice(from) };
}

/** Whether a text names an amount of money. */
export const namesMoney = (text: string): boolean => scanMoney(text).found.length > 0;
