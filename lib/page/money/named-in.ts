/** The one of some countries that a text names, or "". */
export function namedIn(text: string, countries: Readonly<Record<string, RegExp>>): string {
  const named = Object.keys(countries).filter((code) => countries[code]?.test(text));
  return named.length === 1 ? (named[0] ?? "") : "";
}
