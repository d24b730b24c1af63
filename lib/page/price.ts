import { currencyOf, type MoneyHint, signAt, THOUSANDTHS } from "./currency.ts";
import type { Price } from "./product.ts";

const NUMBER =
  /\d{1,3}(?:[., '’٬]\d{3})+(?:[.,٫]\d{1,2})?(?!\d)|\d{1,2}(?:,\d{2})+,\d{3}(?:\.\d+)?|\d+(?:[.,٫]\d{1,3})?/g;

/** What stands beside an amount that is a part of the price: instalments, months, measures, deposits; or a price that was. */
const ASIDE =
  /\b(instal\w+|payments?|cuotas|raten?|parcelas?|was|rrp|msrp|uvp|deposit|kaution|members?|grundpreis|monthly)\b|\d ?[x×]\s|(\/|per|pro|par) ?(mo|month|monat|mois|mes|week|kg|100|l)\b/;

/** Letters beside an amount that a price tag has room for ("Regular price"); with more it is a remark on the price. */
const MOST_BESIDE = 16;

/** What stands where an amount was. */
const SOME = "¤";

/*
 * These look at lower case (the last at the text as it is), without the flags `i` and `u`: with them a browser
 * takes ten milliseconds to compile each.
 */
const WORD = "a-zà-ž";
const notPrice = (before: string, behind: string): RegExp =>
  new RegExp(
    `(?<![${WORD}])(?:${before})(?![${WORD}])[^%${SOME}]*${SOME}|${SOME}[^${WORD}${SOME}]{0,2}(?:${behind})(?![${WORD}])`,
  );

/** Words before or right behind an amount that is no price at all: savings, shipping, limits, gifts. */
const NO_PRICE = notPrice(
  `sav(?:e|ing|ings)|off|spare?n?|ersparnis|économisez|ahorr[${WORD}]+|risparmi[${WORD}]*|shipping|delivery|versand[${WORD}]*|lieferung|livraison|envío|frete|frakt[${WORD}]*|fragt|over|under|unter|above|up to|bis zu|donat[${WORD}]+`,
  "off|shipping|delivery|versand|rabatt|discount|saved|gift|offerts?|d.achat|de (?:réduction|remise|descuento)|gratis|di sconto|and (?:over|under)",
);

/** An amount inside a sentence: words on both sides, three behind it, two after a comma, that no price tag says; or a fee. */
const SENTENCE = new RegExp(
  `^[^${SOME}]*[A-Z${WORD}][^${SOME}]*${SOME} (?!(?:a|an|to|per|pro|par|al|por|inc|ink|each|plus|ex|for \\d)[^${WORD}])[${WORD}]+[^${SOME}]*$|${SOME} (?!inc|ink|per|pro|to |for \\d)(?:[A-Z${WORD}]+[ ,]+){2}[A-Z${WORD}]|, [${WORD}]+ [${WORD}]+ ${SOME}|(?:[A-Z${WORD}]+ ){2}[${WORD}]+, ${SOME}|${SOME}, [${WORD}]+ [${WORD}]+ |${SOME} per person`,
);

interface Scan {
  /** Sign (null: none, but written as money) and number of each amount, in order. */
  readonly found: readonly (readonly [sign: string | null, number: string])[];
  /** The text with a mark where amounts were. */
  readonly rest: string;
}

/** Numbers with a sign of money before or behind them, or written as money is ("49,-"). */
function scan(written: string): Scan {
  const text = plainDigits(written);
  const lower = text.toLowerCase();
  const found: (readonly [string | null, string])[] = [];
  let rest = "";
  let from = 0;
  for (const { 0: number, index } of text.matchAll(NUMBER)) {
    let end = index + number.length;
    if (index < from) continue;
    const before = lower.slice(from, index).trimEnd().replace(/\.$/, "");
    let sign = signAt(before, true);
    let start = index;
    if (sign) start = from + before.length - sign.length;
    else {
      const behind = lower.slice(end, end + 6);
      sign = signAt(behind.trimStart(), false);
      const dashed = /^[.,:][-–—]/.test(behind);
      if (!sign && !dashed) continue;
      end += sign ? behind.length - behind.trimStart().length + sign.length : 2;
    }
    found.push([sign, number]);
    rest += text.slice(from, start) + SOME;
    from = end;
  }
  return { found, rest: rest + text.slice(from) };
}

/** Whether a text names an amount of money. */
export const namesMoney = (text: string): boolean => scan(text).found.length > 0;

/** How many letters a text has. */
export const letters = (text: string): number => text.match(/\p{L}/gu)?.length ?? 0;

/** Other scripts' digits and wide forms in the plain ones; Arabic digits end in their value. */
const plainDigits = (text: string): string =>
  /^[ -~\xa0€£]*$/.test(text)
    ? text
    : text
        .normalize("NFKC")
        .replace(/[٠-٩۰-۹]/g, (digit) => String(digit.charCodeAt(0) & 15))
        .replace(/[\u200e\u200f\u202a-\u202e\u2066-\u2069]/g, "");

/**
 * The value of a number as a price tag writes it: "1.299,00", "1,24,999", "1’299.00", "10000,00". A single
 * separator before exactly three digits parts thousands, unless the currency counts in thousandths.
 */
export function parseAmount(written: string, currency: string | null = null): number {
  const text = written.replace(/[ '’٬]/g, "").replaceAll("٫", ".");
  const last = Math.max(text.lastIndexOf("."), text.lastIndexOf(","));
  if (last < 0) return Number(text);
  const fraction = text.slice(last + 1);
  const whole = text.slice(0, last);
  const marks = new Set(text.replace(/\d/g, ""));
  const many = text.replace(/\d/g, "").length > 1;
  const thousands =
    fraction.length === 3 &&
    (many ? marks.size === 1 : !/^0?$/.test(whole) && !THOUSANDTHS.has(currency ?? ""));
  const digits = whole.replace(/[.,]/g, "");
  return Number(thousands ? digits + fraction : `${digits}.${fraction}`);
}

/** An amount on a page; `aside` where the words around it say that it is not the price to pay. */
export interface Amount extends Price {
  readonly aside: boolean;
}

/** What a short text says of money. */
export interface Tag {
  /** Every amount, in order. */
  readonly amounts: readonly Amount[];
  /** What it says besides. */
  readonly words: string;
  /** True where its words deny that the amount is a price. */
  readonly denied: boolean;
}

const NO_TAG: Tag = { amounts: [], words: "", denied: false };

/** Reads a short text as a price tag. */
export function readTag(text: string, hint: MoneyHint): Tag {
  const { found, rest } = scan(text);
  if (found.length === 0) return NO_TAG;
  const lower = rest.toLowerCase();
  const aside = ASIDE.test(lower) || letters(rest) > MOST_BESIDE;
  const amounts = found.flatMap(([sign, number]) => {
    const currency = currencyOf(sign, hint);
    const amount = parseAmount(number, currency);
    return amount > 0 && Number.isFinite(amount) ? { amount, currency, aside } : [];
  });
  const words = rest.replaceAll(SOME, "").replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N})]+$/gu, "");
  return { amounts, words, denied: NO_PRICE.test(lower) || SENTENCE.test(rest) };
}

/** The price to pay now: the lowest of several (a sale beside a struck price, the start of a range). */
export function lowestPrice(amounts: readonly Amount[]): Price | null {
  const plain = amounts.filter((price) => !price.aside);
  let best: Price | null = null;
  for (const { amount, currency } of plain.length > 0 ? plain : amounts)
    if (!best || amount < best.amount) best = { amount, currency };
  return best;
}
