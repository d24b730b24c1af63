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

/** What amounts without a sign are in, where a page's language or address tells its country. ISO 3166 to ISO 4217, from memory: those that count in euros first. */
const OWN: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    "AT BE DE EE ES FI FR GR HR IE IT LT LU LV NL PT SI SK".split(" ").map((country) => [country, "EUR"]),
  ),
  SE: "SEK",
  NO: "NOK",
  DK: "DKK",
  IS: "ISK",
  PL: "PLN",
  CZ: "CZK",
  HU: "HUF",
  RO: "RON",
  BG: "BGN",
  TR: "TRY",
  UA: "UAH",
  RU: "RUB",
  BY: "BYN",
  IL: "ILS",
  JP: "JPY",
  KR: "KRW",
  CN: "CNY",
  TH: "THB",
  VN: "VND",
  ID: "IDR",
  IN: "INR",
  CH: "CHF",
  GB: "GBP",
};

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
