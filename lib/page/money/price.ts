import { isLetter } from "../dom/letters.ts";
import type { Price } from "../product.ts";
import { remembered } from "../remembered.ts";
import { SOME } from "./amount-mark.ts";
import { meaningsOf } from "./money-signs.ts";
import { parseAmount, THOUSANDTHS } from "./parse-amount.ts";
import { scanMoney } from "./scan-money.ts";

/*
 * These look at lower case (the last at the text as it is), without the flags `i` and `u`: with them a browser
 * takes ten milliseconds to compile each.
 */
const WORD = "a-zà-ž";
const notPrice = (before: string, behind: string): RegExp =>
  new RegExp(
    `(?<![${WORD}]|free |gratis )(?:${before})(?![${WORD}]| (?:gratuit|offert|gr[aá]tis|kostenl)[^\n]*\n)[^%\n${SOME}]*(?:% ?[/(])?\n?[^%\n${SOME}]*${SOME}|${SOME}[^${WORD}${SOME}]{0,2}(?:${behind})(?![${WORD}])`,
  );

/** Words before or right behind an amount, at most a line away, that is no price at all: savings, shipping (unless free), limits, gifts. */
const NO_PRICE = notPrice(
  `sav(?:e|ing|ings)|(?<!% ?)off|off(?!\n)|spar(?:[ae][nr]?|n|s?t)?|diskon|ersparnis|bespaar|économisez|econom[iy][sz][ae]|oszczęd[${WORD}]+|poupe|ahorr[${WORD}]+|risparmi[${WORD}]*|shipping|postage|delivery|versand[${WORD}]*|lieferung|livraison|envío|frete|frakt[${WORD}]*|fragt|over|under|unter|above|m[aá][si]s? de|mehr als|über|plus de|più di|oltre|meer dan|mer än|över|powyżej|ponad|nad|nati|fölött|peste|üzeri|hasta|até|fino a|jusqu.à|tot|upp till|entre|zwischen|mellem|mellan|między|mezi|between|up to|bis zu|donat[${WORD}]+|coupon|gutschein|kupon|cupón|クーポン|ポイント|優惠券|쿠폰|적립|포인트|(?<![ก-๙])ลด|ขั้นต่(?:ำ|ํา)|giảm|tối thiểu|sold for|points? per|spend|бонус[а-я]*|эконом[а-я]+|економ[а-яіїє]+|заощад[а-яіїє]+|выгода|earn|win|worth|salary|prize|raised|배송 ?비용?(?! ?무료)|送料(?!無料|込)|運費|运费|ongkir|spedizion[ei]|verzendkosten|dostaw[ay]|доставк[аи](?! бесплатн)|kargo ücreti|kazanç|phí (?:vận chuyển|ship)`,
  `off|shipping|delivery|versand|rabatt?|discount|korting|remise|sconto|desconto|descuento|zniżki|slevy|kedvezmény|saved|gift|offerts?|d.achat|de (?:réduction|remise|descuento)|gratis|di sconto|and (?:over|under)|(?:[${WORD}]+ )?credit|voucher|coupon|kupon|cupón|gutschein|할인(?! ?(?:기간|판매))|割引|引き|元?减|쿠폰|적립|クーポン|ポイント|優惠券|cashback|bonus|felett|fölött|funded|raised|pledged|gespendet|gesammelt|collectés|récoltés|recaudados|raccolti|arrecadados|opgehaald|insamlat|zebrano|brut`,
);

/** What says right before letters and digits that they are the number of a model: "Model: TK118". */
const MODEL = new RegExp(
  `(?<![${WORD}])(?:mod[eè]l(?:l[eo]?|o)?|r[eé]f(?:erence|érence|erencia)?|sku|code|c[oó]digo|codice)\\.? ?[:：#] ?${SOME}`,
);

/** What says behind an amount that it is with the tax or without. */
const TAXED =
  "(?:su|mit|z|s|con|com|avec|med|met|bez|be|ohne|sin|sans) (?:pvm|mwst|vat|dph|iva|tva|moms|btw|PVM|MwSt|VAT|DPH|IVA|TVA|BTW)";

/** An amount inside a sentence: words on both sides, three behind it, two after a comma, that no price tag says; or a fee. */
const SENTENCE = new RegExp(
  `^[^${SOME}]*[A-Z${WORD}][^${SOME}]*${SOME} (?!(?:a|an|to|per|pro|par|al|por|inc|ink|each|plus|ex|for \\d)[^${WORD}]|${TAXED})[${WORD}]+[^${SOME}]*$|${SOME} (?!inc|ink|per|pro|to |[Oo]ut of|[Ss]old |for \\d)(?:[A-Z${WORD}]+[ ,]+){2}[A-Z${WORD}]|, [${WORD}]+ [${WORD}]+ ${SOME}|(?:[A-Z${WORD}]+ ){2}[${WORD}]+, ${SOME}|${SOME}, [${WORD}]+ [${WORD}]+ |${SOME} per person`,
);

/** An amount on a page as it is written, with what is said around it. */
export interface WrittenAmount {
  readonly amount: number;
  /** Its digits as the page writes them. */
  readonly written: string;
  /** ISO 4217 codes that its sign may mean; null: it has none. */
  readonly meant: readonly string[] | null;
  /** The text it stands in, in lower case, with a mark in place of each amount. */
  readonly said: string;
  /** Which of the marks is this amount's, from 0. */
  readonly at: number;
}

/** The same with its currency, which only all that a page tells can settle. */
export interface Amount extends WrittenAmount, Price {}

/** What a short text says of money. */
export interface Tag {
  /** Every amount, in order. */
  readonly amounts: readonly WrittenAmount[];
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

/** What the words of a tag say, with a mark in place of each amount; tiles repeat them. */
const wordingOf = remembered((rest) => {
  const said = rest.toLowerCase();
  const parts = said.split(SOME);
  return {
    said,
    words: wordsIn(rest),
    /** Of each amount whether they deny that it is a price. */
    denies: parts.slice(1).map((behind, at) => NO_PRICE.test(`${parts[at]}${SOME}${behind}`)),
    deniesAll:
      /^[^\d¤]*\+ ?¤|^(?:[^¤]*\n)?[-−–]¤|^[«“„"]|[^¤]。\s*$|¤、.*¤/.test(rest) ||
      MODEL.test(said) ||
      SENTENCE.test(rest),
  };
});

/** Reads a short text as a price tag. */
export function readTag(text: string): Tag {
  const { found, rest } = scanMoney(text);
  if (found.length === 0) return NO_TAG;
  const { said, words, denies, deniesAll } = wordingOf(rest);
  const read = found.map(([sign, written], at) => {
    const meant = sign === null ? null : meaningsOf(sign);
    return { amount: parseAmount(written, THOUSANDTHS.has(meant?.[0] ?? "")), written, meant, said, at };
  });
  const worth = read.filter(({ amount }) => amount > 0 && Number.isFinite(amount));
  // From nothing to something: the span of a filter.
  const fromZero = worth.length === 1 && read.length === 2;
  const denied = fromZero || denies[0] === true || deniesAll;
  return { amounts: worth.filter(({ at }) => denied || denies[at] !== true), words, denied };
}
