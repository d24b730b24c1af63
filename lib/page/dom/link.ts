import { within } from "./ancestors.ts";
import { letters } from "./letters.ts";

/** Links of a tile that lead elsewhere: to a basket, a list, a picture file or the page that shows it large, a script. */
const ELSEWHERE =
  /\.(jpe?g|png|webp|gif|avif)(\?|$)|[/?&]((cart|basket)(?!\/([\w/]*\/)?(product|item|goods)[-_]?(detail|view|info|show))|wishlist|login|account|compare|add-to-cart|quick-?view|(popup[-_]?|view[-_]?|big[-_]?)image|image[-_]?(view|popup|zoom))\b/i;

/** Links to a whole group of products. */
const GROUP =
  /\/(product-)?(categor\w*|collections?|kategorie\w*|c|cat|blogs?|journal|lp|stories|news|magazine|articles?|events?|workshops?)\/[^/]*\/?([?#]|$)|-c-\d+(\.html?)?([?#]|$)/i;

/** Links to a list of products. */
const COLLECTION = /\/(product-)?(categor(y|ies)|collections?|kategorien?)\/[^/]+\/?([?#]|$)/i;

/** Whether a link leads, by its wording, to a list of products. */
export const leadsToCollection = (link: string): boolean => COLLECTION.test(link);

/** Links to a script that shows one product, told by its number. */
const PRODUCT_SCRIPT =
  /\/(product|produkt|produit|produto|producto|prodotto|produs|proizvod|vyrobek|tovar|termek|tuote|urun|goods|item|chi-?tiet|san-?pham)(?!s(?![a-z]))[-_]?(detail\w*|page|view|info|single|servlet|detay\w*|san-?pham)?(\.\w+)?\?(.*&)?(\w*(prod|item|goods)\w*|\w{0,2}id|sku|no|code|slug)=/i;

/** The same where one script shows all pages. */
const PRODUCT_ROUTE =
  /[?&]\w+=(product|goods|item)s?([_/-](info|details?|product|view|show))?&(.*&)?(\w*(prod|item|goods)\w*|\w{0,2}id)=/i;

/** The same with any script, where the number is called that of a product: "shopDetail.sh?goodsId=7". */
const PRODUCT_NUMBER =
  /[?&](goods|prod(uct)?|item|produit|producto|produto|prodotto|produkt|urun|sku)[-_]?(id|no|num|code|idx|seq)=/i;

/** Links to one product; a list may lie in the same folder. */
const PRODUCT_PATH =
  /\/(products?([-_]?details?)?|produk(te?|ty)?|produits?|producto?s?|produtos?|prodott[oi]|produse?|proizvod[ai]?|termek(ek)?|vyrobek|urun(ler)?|san-pham|tovary?|tuote|item|p|dp)\/(?!(list|index|search|categor\w*|all|new|best)([./?#]|$))[^/]+/i;

/** Whether a link leads, by its wording, to one product. */
export const leadsToProduct = (link: string): boolean =>
  [PRODUCT_PATH, PRODUCT_SCRIPT, PRODUCT_ROUTE, PRODUCT_NUMBER].some((one) => one.test(link));

/** Names of the file or script that shows one product. */
const PRODUCT_FILE =
  /\/((ver|view|show|single|shop|fiche|ficha|detail|detalle|chi-?tiet)[-_]?)?(product|produkt|produit|produto|producto|prodotto|produs|proizvod|vyrobek|tovar|termek|tuote|urun|item|goods|detail|single|san-?pham)([-_]?(details?|detay|page|view|info|single|show|\d+)|_(?!list|grid|search|categor|all|index|compare|cart|archive|new|sale|gallery|review|form|add|edit|delete|upload|manage|image|type|brand|range)[a-z]+)?(\.\w+|\/\d+)?\/?([?#]|$)/i;

/** Whether the address of a page is what that of one product's page is called. */
export const isCalledProduct = (address: string): boolean => PRODUCT_FILE.test(address);

/** Names of the file or script that shows one of something; with a button that buys, it is a product. */
const DETAIL_FILE = /\/\w*-?details?(page|view)?(\.\w+|\/\d+)?\/?([?#]|$)/i;

/** Whether the address of a page is what that of one thing among others is called. */
export const isCalledDetail = (address: string): boolean => DETAIL_FILE.test(address);

/** Whether a link leads to a category or a journal instead of one product. */
export const leadsToGroup = (link: string): boolean => GROUP.test(link);

/** Links looked at in one product. */
const MOST_ANCHORS = 40;

/** The address a link leads to, or null where it leads nowhere a product could be. */
export function linkUrl(anchor: Element): string | null {
  const written = anchor.getAttribute("href")?.trim() ?? "";
  if (!written || written.startsWith("#") || written.length > 2000) return null;
  // An anchor resolves its own address far faster than a URL does.
  const address = "href" in anchor ? String(anchor.href) : "";
  return /^https?:/.test(address) && !ELSEWHERE.test(address) ? address : null;
}

/** A place on a page. */
const HASH = /#.*/;

/** The address of the other page that a picture leads to, or null; the page's own without what it was asked for opens a window. */
export function linkAway(picture: Element): string | null {
  const anchor = picture.closest("a[href]");
  const link = anchor && linkUrl(anchor)?.replace(HASH, "");
  const here = picture.ownerDocument.URL.replace(HASH, "");
  return link && link !== here && link !== here.replace(/\?.*/, "") ? link : null;
}

/** Whether a picture leads to another page. */
export const leadsAway = (picture: Element): boolean => linkAway(picture) !== null;

/** The link to the product in `parts`: the one around the picture, else the first with a text, else the first. */
export function linkIn(parts: readonly Element[], image: Element | null): Element | null {
  const leads = (anchor: Element | null | undefined) => (anchor && linkUrl(anchor) ? anchor : null);
  const around = leads(image?.closest("a[href]")) ?? leads(parts[0]?.closest("a[href]"));
  if (around) return around;
  const anchors = parts
    .flatMap((part) => within(part, "a[href]"))
    .slice(0, MOST_ANCHORS)
    .filter(leads);
  return anchors.find((anchor) => letters(anchor.textContent) > 2) ?? anchors[0] ?? null;
}
