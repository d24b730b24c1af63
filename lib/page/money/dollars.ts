import { linesOf } from "../dom/plain-text.ts";
import { namedIn } from "./named-in.ts";

/** Countries that count in dollars of their own, by which a shop is named that a page's title ends in. */
const DOLLARS: Readonly<Record<string, RegExp>> = {
  AU: /australia$/i,
  NZ: /new zealand\b.{0,20}$/i,
  CA: /canada$/i,
  SG: /singapore$/i,
  HK: /hong kong$/i,
};

/** The same in lower case as a line of a postal address or the last part of one, or their states before postal codes. From memory. */
const ADDRESSED: Readonly<Record<string, RegExp>> = {
  AU: /(^|,\s*|\d\s+)australia\W*$|\b(nsw|vic|qld|tas|act) \d{4}\b|\baustralia[- ]wide\b/m,
  NZ: /(^|,\s*|\d\s+)(new zealand|aotearoa)\W*$/m,
  CA: /(^|,\s*|\d\s+)canada\W*$|\b(on|bc|ab|qc|ns|mb|sk),? [a-z]\d[a-z] \d[a-z]\d\b/m,
  SG: /(^|,\s*)singapore( \d{6})?\W*$/m,
  HK: /(^|,\s*)hong kong\W*$/m,
  US: /(^|,\s*|\d\s+)(usa|u\.s\.a?|united states( of america)?)\W*$|, [a-z]{2} \d{5}\b/m,
};

/** Where a shop writes its postal address, and characters read there. */
const ADDRESSES = 'footer,address,[class*="footer" i],[id*="footer" i]';
const MOST_FOOT = 3000;
/** Of so many such places the last: tiles have feet as well. */
const MOST_PLACES = 8;

/** The last part of a page's title: what its shop is called. */
const shopIn = ({ title }: Document): string =>
  title
    .split(/ [-–—|·:] /)
    .at(-1)
    ?.trim() ?? "";

/** The country, in dollars of its own, of an English page: the one that its shop is named by, or that its postal address ends in; else "". */
export function dollarsOf(doc: Document): string {
  const lines = linesOf([...doc.querySelectorAll(ADDRESSES)].slice(-MOST_PLACES), MOST_FOOT).toLowerCase();
  return namedIn(shopIn(doc), DOLLARS) || namedIn(lines, ADDRESSED);
}
