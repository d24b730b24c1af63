import { SOME } from "./amount-mark.ts";
import { currencyOf, type MoneyHint, THOUSANDTHS } from "./currency.ts";
import { isLetter } from "./letters.ts";
import type { Price } from "./product.ts";
import { scanMoney } from "./scan-money.ts";

/*
 * These look at lower case (the last at the text as it is), without the flags `i` and `u`: with them a browser
 * takes ten milliseconds to compile each.
 */
const WORD = "a-zà-ž";
const notPrice = (before: string, behind: string): RegExp =>
  new RegExp(
    `(?<![${WORD}]|free |gratis )(?:${before})(?![${WORD}]| (?:gratuit|offert|gr[aá]tis|kostenl)[^\n]*\n)[^%\n${SOME}]*\n?[^%\n${SOME}]*${SOME}|${SOME}[^${WORD}${SOME}]{0,2}(?:${behind})(?![${WORD}])`,
  );

/** Words before or right behind an amount, at most a line away, that is no price at all: savings, shipping (unless free), limits, gifts. */
const NO_PRICE = notPrice(
  `sav(?:e|ing|ings)|off|spar[ae]?n?|ersparnis|bespaar|économisez|oszczęd[${WORD}]+|poupe|ahorr[${WORD}]+|risparmi[${WORD}]*|shipping|postage|delivery|versand[${WORD}]*|lieferung|livraison|envío|frete|frakt[${WORD}]*|fragt|over|under|unter|above|m[aá][si]s? de|mehr als|über|plus de|più di|oltre|meer dan|mer än|över|powyżej|ponad|nad|nati|fölött|peste|üzeri|hasta|até|fino a|jusqu.à|tot|upp till|entre|zwischen|mellem|mellan|między|mezi|between|up to|bis zu|donat[${WORD}]+|coupon|gutschein|kupon|cupón|クーポン|ポイント|優惠券|쿠폰|적립|포인트|ลด|ขั้นต่(?:ำ|ํา)|giảm|tối thiểu|sold for|points? per|spend|earn|win|worth|salary|prize`,
  `off|shipping|delivery|versand|rabatt|discount|saved|gift|offerts?|d.achat|de (?:réduction|remise|descuento)|gratis|di sconto|and (?:over|under)|(?:[${WORD}]+ )?credit|voucher|coupon|kupon|cupón|gutschein|할인|割引|引き|元?减|쿠폰|적립|クーポン|ポイント|優惠券|cashback|bonus|felett|fölött|funded|raised|pledged|gespendet|gesammelt|collectés|récoltés|recaudados|raccolti|arrecadados|opgehaald|insamlat|zebrano|brut`,
);

/** An amount inside a sentence: words on both sides, three behind it, two after a comma, that no price tag says; or a fee. */
const SENTENCE = new RegExp(
  `^[^${SOME}]*[A-Z${WORD}][^${SOME}]*${SOME} (?!(?:a|an|to|per|pro|par|al|por|inc|ink|each|plus|ex|for \\d)[^${WORD}])[${WORD}]+[^${SOME}]*$|${SOME} (?!inc|ink|per|pro|to |for \\d)(?:[A-Z${WORD}]+[ ,]+){2}[A-Z${WORD}]|, [${WORD}]+ [${WORD}]+ ${SOME}|(?:[A-Z${WORD}]+ ){2}[${WORD}]+, ${SOME}|${SOME}, [${WORD}]+ [${WORD}]+ |${SOME} per person`,
);

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

/** An amount on a page, with what is said around it. */
export interface Amount extends Price {
  /** The text it stands in, in lower case, with a mark in place of each amount. */
  readonly said: string;
  /** Which of the marks is this amount's, from 0. */
  readonly at: number;
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

/** The text between amounts without the marks around it; a bracket that closes belongs to a word. */
function wordsIn(rest: string): string {
  const text = rest.replaceAll(SOME, "");
  const tells = (at: number) => isLetter(text, at) || /\d/.test(text.charAt(at));
  let [start, end] = [0, text.length];
  while (start < end && !tells(start)) start++;
  while (end > start && !tells(end - 1) && text.charAt(end - 1) !== ")") end--;
  return text.slice(start, end);
}

const NO_TAG: Tag = { amounts: [], words: "", denied: false };

/** Reads a short text as a price tag. */
export function readTag(text: string, hint: MoneyHint): Tag {
  const { found, rest } = scanMoney(text);
  if (found.length === 0) return NO_TAG;
  const said = rest.toLowerCase();
  const parts = said.split(SOME);
  const read = found.map(([sign, number], at) => {
    const currency = currencyOf(sign, hint);
    const denied = NO_PRICE.test(`${parts[at]}${SOME}${parts[at + 1]}`);
    return { amount: parseAmount(number, currency), currency, said, at, denied };
  });
  const worth = read.filter(({ amount }) => amount > 0 && Number.isFinite(amount));
  // From nothing to something: the span of a filter.
  const fromZero = worth.length === 1 && read.length === 2;
  const extra = /^[^\d¤]*\+ ?¤|^[-−–]¤|^[«“„"]/.test(rest);
  const denied = fromZero || extra || read[0]?.denied === true || SENTENCE.test(rest);
  const amounts = worth
    .filter((one) => denied || !one.denied)
    .map(({ amount, currency, said, at }) => ({ amount, currency, said, at }));
  return { amounts, words: wordsIn(rest), denied };
}
