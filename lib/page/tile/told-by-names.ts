import { remembered } from "../remembered.ts";

/** What markup calls a name, and what else it calls short texts of a tile. Common practice, no source. */
const TITLE_NAME =
  /title|name|heading|caption|ttl|nome|nombre|naam|namn|nazwa|titre|titulo|judul|naziv|nazev|baslik|(^|[\s_-])nom([\s_-]|$)/i;
const OTHER_NAME =
  /sub-?(title|head)|brand|vendor|badge|label|price|rating|review|star|sku|colou?r|swatch|size|categor|btn|button|tag\b|count|hidden|sr-only|quick|wish|stock|sale|(^|[\s_-])(marke|marque|marca|merk)([\s_-]|$)/i;
/** Names of descriptions, unless they name a part of one. */
const DESCRIPTION_NAME = /desc|excerpt/i;

/** Class names that say how a thing looks and not what it is: "transition-colors", "hover:text-label". */
const LOOKS =
  /\S*:\S*|(^|\s)((transition|text|bg|font|border|ring|line|tracking|leading)-|colou?r-(black|white|gr[ae]y|red|dark|light|primary|secondary|main))\S*/g;

/** What class names and properties say of a text, but that it is something else. */
const told = remembered((wording) => {
  const names = wording.replace(LOOKS, " ");
  if (OTHER_NAME.test(names)) return null;
  return TITLE_NAME.test(names) ? 1 : DESCRIPTION_NAME.test(names) ? -1 : 0;
});

/** What markup says of a text. 2: a heading, 1: a name, -1: something else, 0: not told. */
export function toldByNames(element: Element): number {
  const names = told(`${element.getAttribute("class") ?? ""} ${element.getAttribute("itemprop") ?? ""}`);
  return names === null ? -1 : /^H[1-6]$/.test(element.tagName) ? 2 : names;
}
