/** Stands for the country of a page in a language of many countries whose money has the same sign. */
export const ANY_COUNTRY = "*";

/** What a page tells about its money besides the sign at a price. */
export interface MoneyHint {
  /** ISO 4217 codes that the page declares, first declared first. */
  readonly codes: Iterable<string>;
  /** ISO 3166 codes of the countries that its language and address point at. */
  readonly regions: readonly string[];
}

/** A well-formed ISO 4217 code, or null. */
export const currencyCode = (value: unknown): string | null => {
  const code = typeof value === "string" ? value.trim().toUpperCase() : "";
  return /^[A-Z]{3}$/.test(code) ? code : null;
};

/** Countries that count in euros. ISO 3166, from memory. */
const IN_EUROS = "AT BE DE EE ES FI FR GR HR IE IT LT LU LV NL PT SI SK".split(" ");

/** Money of one country each, whose ISO 4217 code begins with its ISO 3166 code; from memory. Dollars of English-speaking countries are left out: pages of all countries say that they are in their English. */
const OF_ONE =
  "SEK NOK DKK ISK PLN CZK HUF RON BGN TRY UAH RUB BYN ILS JPY KRW CNY THB VND IDR INR CHF GBP BRL ARS CLP COP MXN PEN MAD TND DZD EGP SAR AED PKR BDT LKR NPR NGN KES GHS ZAR KZT RSD MKD ALL TWD MYR PHP GEL AMD AZN".split(
    " ",
  );

/** What amounts without a sign are in, where a page's language or address tells its country. */
const OWN: Readonly<Record<string, string>> = Object.fromEntries([
  ...IN_EUROS.map((country) => [country, "EUR"]),
  ...OF_ONE.map((code) => [code.slice(0, 2), code]),
]);

/** The currency that a sign with these meanings (null: none was written) stands for on a page with this hint. */
export function currencyOf(
  meant: readonly string[] | null,
  { codes: declared, regions }: MoneyHint,
): string | null {
  const codes = [...declared];
  if (meant === null) return codes[0] ?? regions.map((region) => OWN[region]).find(Boolean) ?? null;
  const code =
    codes.find((code) => meant.includes(code)) ??
    // An ISO 4217 code begins with the ISO 3166 code of its country.
    meant.find((one) => regions.some((region) => one.startsWith(region))) ??
    (regions.includes(ANY_COUNTRY) && meant.length > 1 ? null : meant[0]);
  return code && code !== "?" ? code : null;
}
