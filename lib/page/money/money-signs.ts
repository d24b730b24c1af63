import { isLetter } from "../dom/letters.ts";

/**
 * Signs of money, each with the ISO 4217 codes it may mean, likeliest first; "?" first: never guessed without a hint.
 * A bare "$" with no hint at all is read as USD: elsewhere stores that write "$" say so in their language, their
 * address or their data, which all come first; in Spanish it may be any of a dozen. IRT, ten Iranian rials, has no code in
 * the standard: shops use this one. Common practice, no source.
 */
const SIGNS = new Map<string, readonly string[]>(
  (
    "€ EUR|£ GBP EGP|$ USD CAD AUD NZD SGD HKD MXN ARS CLP COP DOP UYU TWD|¥ JPY CNY|円 JPY|元 CNY|₹ INR|₩ KRW|₽ RUB|₴ UAH|₺ TRY|" +
    "₪ ILS|₫ VND|đ VND|vnđ VND|n NGN|฿ THB|₱ PHP|₦ NGN|৳ BDT|₸ KZT|kr ? SEK NOK DKK ISK|zł PLN|zl PLN|kč CZK|ft HUF|lei RON|лв BGN|руб RUB BYN|" +
    "грн UAH|tl TRY|cfa XOF XAF|fcfa XOF XAF|rp IDR|rm MYR|rs INR PKR LKR NPR|r ZAR|r$ BRL|us$ USD|a$ AUD|au$ AUD|c$ CAD|" +
    "ca$ CAD|nz$ NZD|s$ SGD|hk$ HKD|nt$ TWD|nt TWD|mx$ MXN|s/ PEN|sfr CHF|fr CHF|frs CHF XOF XAF|ksh KES|gh₵ GHS|ر.س SAR|رس SAR|د.إ AED|د.ك KWD|د.ب BHD|" +
    "ر.ع OMR|ر.ق QAR|ج.م EGP|د.م MAD|د.ا JOD|د.أ JOD|dhs AED MAD|" +
    "ريال SAR QAR OMR YER|درهم AED MAD|دينار ? KWD BHD JOD LYD IQD DZD TND|د ? KWD BHD JOD LYD IQD DZD TND|جنيه EGP|원 KRW|บาท THB|l.e EGP|tk BDT|nis ILS|dh MAD AED|dt TND|sr SAR|qr QAR|kd KWD|jd JOD|bs BOB VES|₡ CRC|₲ PYG|gs PYG|rd$ DOP|u$s USD|р RUB BYN|тг KZT|сум UZS|₾ GEL|֏ AMD|₼ AZN|₵ GHS|د.ج DZD|د.ت TND|tdn TND|د.ع IQD|ریال IRR|تومان IRT|toman IRT|euro EUR|euros EUR|dkr DKK|nkr NOK|skr SEK|:- SEK|/- INR PKR LKR NPR KES|ден MKD|din RSD|рублей RUB BYN|рубля RUB BYN|гривень UAH|гривен UAH|тенге KZT|манат AZN|лари GEL|драм AMD|pesos MXN ARS COP CLP UYU|soles PEN|reais BRL|rupiah IDR|دولار USD|يورو EUR|ليرة TRY SYP LBP|d VND|da DZD|fbu BIF|ل.س SYP|ل.ل LBP|د.ل LYD|br ETB BYN|៛ KHR|₭ LAK|₮ MNT|ks MMK|kz AOA|mt MZN|tsh TZS|ush UGX|j$ JMD|؋ AFN|сом KGS|so'm UZS|so‘m UZS|soʻm UZS|дин RSD|km BAM|lek ALL|lps HNL|რ GEL|₨ INR PKR LKR NPR"
  )
    .split("|")
    .map((entry) => {
      const [sign = "", ...codes] = entry.split(" ");
      return [sign, codes];
    }),
);

SIGNS.set("f cfa", ["XOF", "XAF"]);
for (const code of [...SIGNS.values()]
  .flat()
  .concat("MDL UYU GTQ RWF XPF NAD BWP ZMW MUR MGA BND FJD TTD XCD".split(" ")))
  if (code !== "?") SIGNS.set(code.toLowerCase(), [code]);

/** What signs begin and end with: most texts beside a number are told by one character. */
const FIRST = new Set([...SIGNS.keys()].map((sign) => sign[0]));
const LAST = new Set([...SIGNS.keys()].map((sign) => sign.at(-1)));

/** Characters of the longest sign. */
export const LONGEST_SIGN = 7;

/** What is said of the tax right behind a sign, in a script that parts no words. */
const TAX = "税";

/**
 * The sign or code of money at the start (or the end) of a text, in lower case, or null. One that runs on as a word
 * is none: "r" in "air 90".
 */
export function signAt(text: string, atEnd: boolean): string | null {
  if (!(atEnd ? LAST : FIRST).has(text.at(atEnd ? -1 : 0) ?? "")) return null;
  for (let length = Math.min(LONGEST_SIGN, text.length); length > 0; length--) {
    const sign = atEnd ? text.slice(-length) : text.slice(0, length);
    if (!SIGNS.has(sign)) continue;
    const border = atEnd ? text.length - length : length;
    const runsOn = isLetter(text, border - 1) && isLetter(text, border);
    if (text.length === length || !runsOn || (sign === "円" && text.startsWith(TAX, border))) return sign;
  }
  return null;
}

/** Whether a code behind an amount tells which of its currencies the sign before it means: "$45.99 CAD". */
export const tellsWhich = (sign: string, code: string): boolean =>
  SIGNS.get(sign)?.includes(code.toUpperCase()) === true;

/** The ISO 4217 codes that a sign in lower case may mean, likeliest first; "?" first: never guessed. */
export const meaningsOf = (sign: string): readonly string[] => SIGNS.get(sign) ?? [];
