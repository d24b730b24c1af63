import { parentOf } from "./ancestors.ts";

/** Longest title kept, in characters; a page may send a megabyte. */
const LONGEST_TITLE = 300;

const NAMED: Readonly<Record<string, string>> = {
  amp: "&",
  quot: '"',
  apos: "'",
  lt: "<",
  gt: ">",
  nbsp: " ",
};

/** Entities that a store wrote into data that is not HTML. Unknown ones stay as they are. */
const decodeEntities = (text: string): string =>
  text.replace(/&(?:#(\d{1,7})|#x([\da-f]{1,6})|(\w{2,6}));/gi, (whole, decimal, hex, name) => {
    if (name) return NAMED[name.toLowerCase()] ?? whole;
    const code = decimal ? Number(decimal) : Number.parseInt(hex, 16);
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });

/** White space folded, entities decoded, at most 300 characters; "" for anything that is not text. */
export const plainText = (value: unknown): string =>
  typeof value === "string"
    ? decodeEntities(value.slice(0, 2 * LONGEST_TITLE))
        .replace(/\s+/g, " ")
        .trim()
        .slice(0, LONGEST_TITLE)
    : "";

/** The texts in these elements, each on a line, in at most about `most` characters: in `textContent` words run together. */
export function linesOf(elements: readonly Element[], most: number): string {
  let text = "";
  for (const element of elements) {
    const walker = element.ownerDocument.createTreeWalker(element, 4);
    while (text.length < most && walker.nextNode())
      text += `${walker.currentNode.nodeValue?.slice(0, most).replace(/\s+/g, " ")}\n`;
  }
  return text;
}

/** Whether a line is broken right before a text. */
const breaksBefore = ({ previousSibling }: Node): boolean =>
  previousSibling !== null && /^(BR|HR)$/.test(previousSibling.nodeName);

/** Where a line of Japanese ends within a sentence: no space parts its words. */
const GOES_ON = /\p{Script=Hiragana}$/u;

/** What markup calls the number of an article in a heading, its group or a badge on it. */
const ASIDE_NAME = /(^|[-_ ])(code|sku|ean|category|sticker)([-_ ]|$)/i;
/** The number of an article at the end of a name. */
const CODE = /\s*(\((ean|sku|art|ref|cod|model)\b[^)]*\)|\([A-Z]{1,5}-\d[A-Z\d-]*\)|\[[A-Z\d-]{3,}\])$/i;

/** What says that a name follows. */
const LABEL =
  /^((product|item)( name)?|libellé|désignation|intitulé|produkt|produit|producto|produto|prodotto|ürün( adı)?|name|nombre|nome|naam|品名|商品名|상품명|товар|название|nama (barang|produk)|ชื่อสินค้า|สินค้า|tên sản phẩm)\s*[:：]\s*/i;

/** Whether a text says that it names what is sold. */
export const isLabelledName = (text: string): boolean => LABEL.test(text);

/** A sign that belongs to what would follow a name, or to the markup. */
const LAST_SIGN = /\s*[>|]$|\s+\/$/;

/** A name without the word for one before it and the number of the article at its end. */
export const bareName = (name: string): string =>
  name.replace(LABEL, "").replace(CODE, "").replace(LAST_SIGN, "");

/** Whether a text stands in a part of a heading that is called a number of an article, its group or a badge. */
const isAside = (holder: Element | null, heading: Element): boolean =>
  holder !== null &&
  holder !== heading &&
  (ASIDE_NAME.test(holder.getAttribute("class") ?? "") || isAside(parentOf(holder), heading));

/**
 * The text of a heading, without what is not displayed in one that is, numbers of articles, groups and badges; a word that begins in another element than the one
 * before ended stays apart.
 */
export function headingText(heading: Element): string {
  const walker = heading.ownerDocument.createTreeWalker(heading, 4);
  const displayed = heading.checkVisibility();
  let text = "";
  for (let node = walker.nextNode(); node && text.length < LONGEST_TITLE; node = walker.nextNode()) {
    const holder = parentOf(node);
    if ((displayed && holder?.checkVisibility() === false) || isAside(holder, heading)) continue;
    const piece = node.nodeValue ?? "";
    if (breaksBefore(node) && !GOES_ON.test(text)) text += " ";
    text += /\p{Ll}$/u.test(text) && /^\p{Lu}/u.test(piece) ? ` ${piece}` : piece;
  }
  return bareName(plainText(text));
}

/** What stands between a page's name and its shop's in a title. */
export const TITLE_BREAK = /\s*[|–—_»«·•:]\s*|\s+-\s+/;

/** For comparing names: letters and digits only, lower case. */
export const nameKey = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "");

/** For comparing names with addresses: without the marks of letters. */
export const plainKey = (text: string): string => nameKey(text.normalize("NFKD").replace(/\p{M}/gu, ""));
