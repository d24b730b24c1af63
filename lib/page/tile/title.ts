import type { Context } from "../context.ts";
import { follows, parentOf } from "../dom/ancestors.ts";
import { isCrumb } from "../dom/is-crumb.ts";
import { letters } from "../dom/letters.ts";
import { linkUrl } from "../dom/link.ts";
import { bareName, linesOf, nameKey, plainText } from "../dom/plain-text.ts";
import { isStruck } from "../money/is-struck.ts";
import { LABELLED_PRICE } from "../money/price-label.ts";
import type { PriceLeaf } from "../money/price-leaf.ts";
import { commonness, nameInHeading, namesAnyPicture } from "./brands.ts";
import { namedCell } from "./named-cell.ts";
import { isSticker } from "./stickers.ts";
import { toldByNames } from "./told-by-names.ts";
import { wholeLine } from "./whole-line.ts";

/** Letters beside a price in one text from which on they may be the name of the product. */
const SHORTEST_NAME = 4;
/** Texts looked at in one product, and levels above each: a tile has about ten and five. */
const MOST_TEXTS = 60;
const LEVELS = 7;
/** Characters of a product in which the rest of what its picture is called is looked for. */
const MOST_TEXT = 600;

const ACTION =
  /^(price|prix|preis|precio|prezzo|rent|now|was|from|only|mrp|add|quick|view|shop|buy|choose|select|sale|new|sold out|more|in den|acheter|kaufen|bestellen|ajouter|añadir|aggiungi|comprar|lägg|dodaj|neu|nouveau|nuevo|details?|wishlist|save|remove|delete|entfernen|supprimer|eliminar|rimuovi|verwijder)\b.{0,18}$/i;

/** What begins a description. */
const ABOUT =
  /^(description|beschreibung|descripción|descrição|descrizione|omschrijving|beskrivning|beskrivelse|opis|popis|описание|açıklama|deskripsi|mô tả)\s*[:：]/i;

/** Facts in a row ("M · Very good") are no name. */
const FACTS = /\s[·•|]\s/;

/** Nor is a sentence, or a label with what it is for. */
const NO_NAME = /[.。!?…]$|^[^:：]{1,24}[:：] ?\S/;

/** A short word and how many of that, or how much less: "pcs(282)", "58% off". */
const COUNT = /^(\p{L}{0,9}\.? ?\(\d[\d.,]*k?\)|[-–+]?\d+ ?% ?\p{L}{0,9})$/u;

/** A sentence of more characters describes. */
const LONGEST_TOLD = 60;

/** What says that something follows. */
const LABEL = /^[^:：]{1,24}[:：]$/;

/** What is said of the tax in a price. */
const TAX =
  /^\(?(((inkl?|incl|zzgl|excl|exkl|plus|hors|sin|con|bez)[. ].{0,14})?(mwst|ust|vat|gst|taxes?|tva|iva|btw|moms|dph)|ttc|ht)\.?\)?$/i;

/** What a template calls the picture of any product. */
const ANY_PICTURE =
  /^(product|produkt|produit|producto|produto|prodotto|ürün|товар|image|img|photo|foto|picture|bild|imagen?|immagine|item|artikel)(name|image|img|photo|foto|picture|resmi)?\d*$/;

interface Guess {
  readonly text: string;
  /** The heading that the text is all of, if it is. */
  readonly from: Element | null;
  readonly score: number;
}

const HEADING = "h1,h2,h3,h4,h5,h6";

/** A heading is longer than this only where it holds more than a name, in characters. */
const LONGEST_MARKED = 160;

/** A text tells the name where it scores more than this; where nothing else does, more than the second will do. */
const UNTOLD = -1;
const LEAST_TELLING = -6;

/** What it counts that the picture or the link is called just so; a heading counts as much as a part of that. */
const TOLD_WHOLE = 3.5;

/** What it counts against a text that markup does not call a name that it stands behind the price. */
const LATE = 1;

/** The most that the words of a text can add to what its place tells. */
const MOST_BY_WORDS = TOLD_WHOLE + 1;

/** What a product is made of, and the elements at which what is said of a text ends. */
interface Where {
  readonly parts: readonly Element[];
  readonly ends: ReadonlySet<Element | null>;
}

/** The texts of these elements, in their order. */
function* textsIn(parts: readonly Element[]): Generator<Node, void, undefined> {
  for (const part of parts) {
    const walker = part.ownerDocument.createTreeWalker(part, 4);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) yield node;
  }
}

/** Whether a text lies over something, as a badge does over a picture. */
const liesOver = (holder: Element): boolean =>
  [holder, parentOf(holder)].some(
    (element) => element?.ownerDocument.defaultView?.getComputedStyle(element).position === "absolute",
  );

/** Whether a text is not displayed in a tile that is: that of a dialog, of another variant. */
const isConcealed = (holder: Element, parts: readonly Element[]): boolean =>
  !holder.checkVisibility() && parts.some((part) => part.checkVisibility());

/** The text and how much it looks like the name of a product, where that is more than `least`; `told`: what its picture and link are called. */
function weigh(
  written: string,
  holder: Element,
  { parts, ends }: Where,
  link: string | null,
  told: readonly string[],
  least: number,
  context: Context,
): Guess | null {
  let marked: Element | null = null;
  let score = 0;
  for (
    let up: Element | null = holder, level = 0;
    up && !ends.has(up) && level < LEVELS;
    up = parentOf(up), level++
  ) {
    const { tagName } = up;
    if (tagName === "BUTTON" || tagName === "LABEL") score -= 6;
    if (tagName === "B" || tagName === "STRONG") score += 0.5;
    // A link elsewhere names what is there.
    if (tagName === "A" && up.hasAttribute("href")) score += link && (linkUrl(up) ?? link) !== link ? -3 : 1;
    if (marked) continue;
    const kind = toldByNames(up);
    // What holds a heading is no name but what stands around one.
    if (kind === 1 && up.querySelector(HEADING)) continue;
    if (kind < 0) score -= 4;
    else if (kind > 0) {
      marked = up;
      score += 2 + kind;
    }
  }
  if (score + MOST_BY_WORDS <= least) return null;
  const whole = plainText(marked?.textContent);
  // What the picture is called, too, is the name, whatever stands with it in what is marked as one.
  const own = plainText(written);
  const isTold = marked?.tagName.startsWith("H") === false && told.includes(nameKey(own));
  const from = isTold || whole.length >= LONGEST_MARKED ? null : marked;
  const text = isTold ? own : from ? whole : plainText(wholeLine(written, holder));
  const key = nameKey(text);
  if (ACTION.test(text) || TAX.test(text) || (!marked && (isSticker(text) || COUNT.test(text)))) score -= 5;
  if (key.length < 3 || ABOUT.test(text)) score -= 4;
  if (LABEL.test(text)) score -= 6;
  if (text.length > 120) score -= 3;
  if (text.length > LONGEST_TOLD && NO_NAME.test(text)) score -= 1;
  if (FACTS.test(text) || (!marked && NO_NAME.test(text))) score -= 1;
  if (key.length > 2 && told.some((one) => one.includes(key) || key.includes(one)))
    score += told.includes(key) ? TOLD_WHOLE : 3;
  // Of several headings the first that no other tile has; of other texts the longest.
  score +=
    marked && /^H[1-6]$/.test(marked.tagName) ? -commonness(marked, context) : Math.min(key.length, 16) / 16;
  if (score > least && (isConcealed(holder, parts) || (!marked && liesOver(holder)))) score -= 2;
  return { text, from, score };
}

/** Whether a text is an amount with no more than short words. */
function saysOnlyMoney(text: string, { readTag }: Context): boolean {
  if (!/\d/.test(text)) return false;
  const { amounts, words } = readTag(text);
  return amounts.length > 0 && words.split(/\s+/).every((word) => letters(word) < SHORTEST_NAME);
}

/** A name without the prices that stand behind it in one heading or link. */
function withoutPrices(name: string, heading: Element, prices: readonly PriceLeaf[]): string {
  const inside = prices.filter(({ element }) => heading !== element && heading.contains(element));
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
  const isAny = isFile || ANY_PICTURE.test(key) || namesAnyPicture(called, context);
  const [alt, altKey] = isAny ? ["", ""] : [plainText(called), key];
  const said = [link?.getAttribute("title"), link?.getAttribute("aria-label")].map(plainText);
  const told = [altKey, ...said.map(nameKey)].filter((key) => key.length > 2);
  const address = link && linkUrl(link);
  const where = { parts, ends: new Set(parts.length > 1 ? parts.map(parentOf) : parts) };
  const [first] = prices;
  let n = 0;
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
    const price = prices.find(({ element, text }) => text.includes(part) && element.contains(parent));
    if (price && (letters(price.words) < SHORTEST_NAME || isStruck(price.element))) continue;
    if (price && LABELLED_PRICE.test(price.words.toLowerCase())) continue;
    n++;
    const guess = weigh(written, parent, where, address, told, best.score, context);
    const isLate = guess?.from === null && first !== undefined && follows(first.element, parent);
    const score = (guess?.score ?? 0) - (isLate ? LATE : 0);
    const isBetter = guess && score > best.score && !(price && score <= UNTOLD);
    if (isBetter && (price || !saysOnlyMoney(part, context)))
      best = price ? { text: plainText(price.words), from: null, score } : { ...guess, score };
  }
  const text = best.from
    ? withoutPrices(nameInHeading(best.from, context), best.from, prices)
    : bareName(best.text);
  if (text && best.score > UNTOLD) return nameBehindBrand(parts, nameKey(text), altKey) ?? text;
  const names = [...said, plainText(parts[0]?.getAttribute("aria-label")), alt];
  return names.find((name) => name.length > 2) ?? text;
}
