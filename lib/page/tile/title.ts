import type { Context } from "../context.ts";
import { follows, parentOf } from "../dom/ancestors.ts";
import { isCrumb } from "../dom/is-crumb.ts";
import { letters } from "../dom/letters.ts";
import { linkUrl } from "../dom/link.ts";
import { pathOf } from "../dom/page-heading.ts";
import { bareName, linesOf, nameKey, plainKey, plainText } from "../dom/plain-text.ts";
import { isStruck } from "../money/is-struck.ts";
import { readTag } from "../money/price.ts";
import { isPriceLabel, LABELLED_PRICE } from "../money/price-label.ts";
import type { PriceLeaf } from "../money/written-price.ts";
import { isCommon, nameInHeading, namesAnyPicture } from "./brands.ts";
import { largerThan } from "./larger-text.ts";
import { namedCell } from "./named-cell.ts";
import { isAction } from "./score-wording.ts";
import { textsIn } from "./texts-in.ts";
import { type Guess, weigh } from "./weigh-text.ts";

/** Letters beside a price in one text from which on they may be the name of the product. */
const SHORTEST_NAME = 4;
/** Texts looked at in one product; a tile has about ten. */
const MOST_TEXTS = 60;
/** Characters of a product in which the rest of what its picture is called is looked for. */
const MOST_TEXT = 600;

/** What a template calls the picture of any product. */
const ANY_PICTURE =
  /^(product|produkt|produit|producto|produto|prodotto|ürün|товар|image|img|photo|foto|picture|bild|imagen?|immagine|item|artikel)(name|image|img|photo|foto|picture|resmi)?\d*$/;

/** A text tells the name where it scores more than this; where nothing else does, more than the second will do. */
const UNTOLD = -1;
const LEAST_TELLING = -6;

/** What it counts against a text that markup does not call a name that it stands behind the price. */
const LATE = 1;

/** What it counts against such a text that it stands in another cell than one that may be the name. */
const BEHIND = 1;

/** Letters of an address from which on it is no accident that a text spells them. */
const LEAST_SPELLED = 8;

/** What the path of a product's address ends in, without the kind of file. */
const endOf = (address: string | null): string =>
  (address ? (pathOf(address).split("/").filter(Boolean).at(-1) ?? "") : "").replace(/\.\w{3,5}$/, "");

/** The same without its number, for comparing; "" where it is short. */
function spelledBy(end: string): string {
  const key = plainKey(end.replace(/^\d+-|-\d+$/, ""));
  return key.length < LEAST_SPELLED ? "" : key;
}

/** Letters of a word of an address that tells something. */
const LEAST_WORD = 3;

/** The words in it, for comparing. */
const wordsIn = (end: string): readonly string[] =>
  end.split(/[^a-z]+/).filter(({ length }) => length >= LEAST_WORD);

/** Whether a text is an amount with no more than short words. */
function saysOnlyMoney(text: string): boolean {
  if (!/\d/.test(text)) return false;
  const { amounts, words } = readTag(text);
  return amounts.length > 0 && words.split(/\s+/).every((word) => letters(word) < SHORTEST_NAME);
}

/** Whether the words beside an amount tell that it is the price. */
const isOfPrice = (words: string): boolean => LABELLED_PRICE.test(words.toLowerCase()) || isPriceLabel(words);

/** A name without the prices that stand before or behind it in one heading or link. */
function withoutPrices(written: string, heading: Element, prices: readonly PriceLeaf[]): string {
  const inside = prices.filter(({ element }) => heading !== element && heading.contains(element));
  let name = written;
  for (const { text } of inside)
    if (name.startsWith(plainText(text))) name = name.slice(plainText(text).length).trim();
  const at = Math.min(
    ...inside.map(({ text }) => name.indexOf(plainText(text))).filter((found) => found > 0),
  );
  return Number.isFinite(at) ? name.slice(0, at).trim() : name;
}

/** The name where what looked like one is the brand: the picture is called by both, and what follows is no shorter. */
function nameBehindBrand(parts: readonly Element[], brand: string, alt: string): string | undefined {
  const name = alt.startsWith(brand) ? alt.slice(brand.length) : "";
  if (name.length < brand.length) return undefined;
  const texts = linesOf(parts, MOST_TEXT).split("\n").map(plainText);
  return texts.find((text) => nameKey(text) === name);
}

/**
 * The name of the product in `parts`: what is marked as a heading or a name, else what its picture or link is called,
 * else its most telling text. "" where there is none. `prices` are texts that are no names; of what a page is about, whose
 * name stands before them, `upTo` is the first.
 */
export function titleIn(
  parts: readonly Element[],
  image: Element | null,
  link: Element | null,
  prices: readonly PriceLeaf[],
  context: Context,
  upTo?: Element,
): string {
  const called = image?.getAttribute("alt") ?? "";
  const key = nameKey(plainText(called));
  const isFile = /^\S*[._\d-]\S*$/.test(called) && image?.getAttribute("src")?.includes(called);
  const isAny = isFile || ANY_PICTURE.test(key) || namesAnyPicture(called, parts, context);
  const [alt, altKey] = isAny ? ["", ""] : [plainText(called), key];
  const said = [link?.getAttribute("title"), link?.getAttribute("aria-label")].map(plainText);
  const told = [altKey, ...said.map(nameKey)].filter((key) => key.length > 2);
  const address = link && linkUrl(link);
  const end = endOf(address);
  const where = {
    parts,
    ends: new Set(parts.length > 1 ? parts.map(parentOf) : parts),
    spelled: spelledBy(end),
    words: wordsIn(end),
  };
  const [first] = prices;
  let n = 0;
  let named: Element | null = null;
  let best: Guess = { text: "", from: null, score: LEAST_TELLING };
  const cell = parts[0] ? namedCell(parts[0]) : null;
  for (const node of textsIn(cell ? [cell] : parts)) {
    if (n >= MOST_TEXTS) break;
    const parent = parentOf(node);
    const written = node.nodeValue ?? "";
    if (!parent || !/\p{L}/u.test(written)) continue;
    if (upTo && best.score > UNTOLD && follows(upTo, parent)) break;
    if (upTo && isCrumb(parent)) continue;
    if (/^(SCRIPT|STYLE|NOSCRIPT|TEMPLATE|SELECT|OPTION|TEXTAREA)$/.test(parent.tagName)) continue;
    const part = written.replace(/\s+/g, " ").trim();
    if (isPriceLabel(part)) continue;
    const price = prices.find(({ element, text }) => text.includes(part) && element.contains(parent));
    if (price && (letters(price.words) < SHORTEST_NAME || isStruck(price.element))) continue;
    if (price && isOfPrice(price.words)) continue;
    n++;
    const guess = weigh(written, parent, where, address, told, best.score, context);
    const isLate = guess?.from === null && first !== undefined && follows(first.element, parent);
    // A cell behind the one with the name describes it.
    const isBehind = guess?.from === null && named !== null && parent.closest("td") !== named;
    const score = (guess?.score ?? 0) - (isLate ? LATE : 0) - (isBehind ? BEHIND : 0);
    const isBetter = guess && score > best.score && !(price && score <= UNTOLD);
    if (!isBetter || (!price && saysOnlyMoney(part))) continue;
    best = price ? { text: plainText(price.words), from: null, score } : { ...guess, score };
    if (score > UNTOLD) named = parent.closest("td");
  }
  const larger = best.from && isCommon(best.from, context) ? largerThan(best.from, parts, prices) : "";
  if (larger) return bareName(larger);
  const text = best.from
    ? withoutPrices(nameInHeading(best.from, context), best.from, prices)
    : bareName(best.text);
  if (text && best.score > UNTOLD) return nameBehindBrand(parts, nameKey(text), altKey) ?? text;
  const names = [...said, plainText(parts[0]?.getAttribute("aria-label")), alt];
  return names.find((name) => nameKey(name).length > 1) ?? (isAction(text) ? "" : text);
}
