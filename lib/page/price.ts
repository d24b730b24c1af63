import { currencyOf, type MoneyHint, SIGN_SOURCE, THOUSANDTHS } from "./currency.ts";
import type { Price } from "./product.ts";

const NUMBER =
  "\\d{1,3}(?:[., '’٬]\\d{3})+(?:[.,٫]\\d{1,2})?(?!\\d)|\\d{1,2}(?:,\\d{2})+,\\d{3}(?:\\.\\d+)?|\\d+(?:[.,٫]\\d{1,3})?";

const MONEY = new RegExp(
  `(?<!\\p{L}(?=\\p{L}))(${SIGN_SOURCE})[. ]?\\s?(${NUMBER})|(${NUMBER})\\s?(${SIGN_SOURCE})(?!(?<=\\p{L})\\p{L})|(${NUMBER})[.,:][-–—]`,
  "giu",
);

/** What stands beside an amount that is a part of the price: instalments, months, measures; or a price that was. */
const ASIDE =
  /\b(instal\w+|payments?|cuotas|raten?|parcelas?|was|rrp|msrp|uvp)\b|\d ?[x×] |\/ ?(mo|month|monat|mois|mes|kg|100|l)\b/i;

/** What stands beside an amount that is no price at all: savings, shipping, limits, gifts. */
const NO_PRICE =
  /\b(sav(e|ing)|off|sparen?|ersparnis|économisez|ahorr\w+|risparmi\w*|shipping|versand\w*|livraison|envío|frete|frakt\w*|over|under|unter|up to|donat\w+)\b/i;

/** Whether the words of a short text deny that its amount is a price. */
export const deniesPrice = (text: string): boolean => NO_PRICE.test(text);

/** Other scripts' digits and wide forms in the plain ones. */
const plainDigits = (text: string): string => (/^[ -~€£]*$/.test(text) ? text : foreignDigits(text));

const foreignDigits = (text: string): string =>
  text
    .normalize("NFKC")
    .replace(/[٠-٩]/g, (digit) => String(digit.charCodeAt(0) - 0x660))
    .replace(/[۰-۹]/g, (digit) => String(digit.charCodeAt(0) - 0x6f0))
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

/** Every amount of money in a text, in order. */
export function amountsIn(text: string, hint: MoneyHint): readonly Amount[] {
  const aside = ASIDE.test(text);
  return [...plainDigits(text).matchAll(MONEY)].flatMap((match) => {
    const currency = currencyOf(match[1] ?? match[4] ?? null, hint);
    const amount = parseAmount(match[2] ?? match[3] ?? match[5] ?? "", currency);
    return amount > 0 && Number.isFinite(amount) ? { amount, currency, aside } : [];
  });
}

/** The price to pay now: the lowest of several (a sale beside a struck price, the start of a range). */
export function lowestPrice(amounts: readonly Amount[]): Price | null {
  const plain = amounts.filter((price) => !price.aside);
  let best: Price | null = null;
  for (const { amount, currency } of plain.length > 0 ? plain : amounts)
    if (!best || amount < best.amount) best = { amount, currency };
  return best;
}
