/**
 * Signs of money, each with the ISO 4217 codes it may mean, likeliest first; "?" first: never guessed without a hint.
 * A bare "$" with no hint at all is read as USD: elsewhere stores that write "$" say so in their language, their
 * address or their data, which all come first. Common practice, no source.
 */
const SIGNS: ReadonlyMap<string, readonly string[]> = new Map(
  (
    "€ EUR|£ GBP EGP|$ USD CAD AUD NZD SGD HKD MXN ARS CLP COP TWD|¥ JPY CNY|円 JPY|元 CNY|₹ INR|₩ KRW|₽ RUB|₴ UAH|₺ TRY|" +
    "₪ ILS|₫ VND|đ VND|฿ THB|₱ PHP|₦ NGN|৳ BDT|₸ KZT|kr ? SEK NOK DKK ISK|zł PLN|kč CZK|ft HUF|lei RON|лв BGN|руб RUB|" +
    "грн UAH|tl TRY|cfa XOF XAF|fcfa XOF XAF|rp IDR|rm MYR|rs INR PKR LKR NPR|r ZAR|r$ BRL|us$ USD|a$ AUD|au$ AUD|c$ CAD|" +
    "ca$ CAD|nz$ NZD|s$ SGD|hk$ HKD|nt$ TWD|mx$ MXN|s/ PEN|sfr CHF|fr CHF|ksh KES|gh₵ GHS|ر.س SAR|د.إ AED|د.ك KWD|د.ب BHD|" +
    "ر.ع OMR|ر.ق QAR|ج.م EGP|د.م MAD|د.ا JOD|dhs AED MAD"
  )
    .split("|")
    .map((entry) => {
      const [sign = "", ...codes] = entry.split(" ");
      return [sign, codes];
    }),
);

const CODES: ReadonlySet<string> = new Set([...SIGNS.values()].flat().concat("TND", "LBP", "GEL", "RSD"));

/** Currencies whose smallest part is a thousandth (ISO 4217): there "12.500" is twelve and a half. */
export const THOUSANDTHS: ReadonlySet<string> = new Set(["KWD", "BHD", "OMR", "JOD", "TND"]);

/** A sign or code of money as a regular expression's source; to be used with the flags `iu`. */
export const SIGN_SOURCE = [...SIGNS.keys()]
  .sort((a, b) => b.length - a.length)
  .concat(...CODES)
  .filter((sign) => sign !== "?")
  .map((sign) => sign.replace(/[.$/]/g, "\\$&"))
  .join("|");

/** What a page tells about its money besides the sign at a price. */
export interface MoneyHint {
  /** ISO 4217 codes that the page declares, first declared first. */
  readonly codes: readonly string[];
  /** ISO 3166 codes of the countries that its language and address point at. */
  readonly regions: readonly string[];
}

/** A well-formed ISO 4217 code, or null. */
export const currencyCode = (value: unknown): string | null => {
  const code = typeof value === "string" ? value.trim().toUpperCase() : "";
  return /^[A-Z]{3}$/.test(code) ? code : null;
};

/** The currency that a sign (or code; null: none was written) means on a page with this hint. */
export function currencyOf(sign: string | null, { codes, regions }: MoneyHint): string | null {
  if (sign === null) return codes[0] ?? null;
  const meant = SIGNS.get(sign.toLowerCase());
  if (!meant) return currencyCode(sign);
  const code =
    codes.find((declared) => meant.includes(declared)) ??
    // An ISO 4217 code begins with the ISO 3166 code of its country.
    meant.find((one) => regions.some((region) => one.startsWith(region))) ??
    meant[0];
  return code === "?" ? null : (code ?? null);
}
