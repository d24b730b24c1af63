import { parentOf } from "./ancestors.ts";
import { letters } from "./letters.ts";
import { linkUrl } from "./link.ts";
import { headingText, linesOf, nameKey, plainText } from "./plain-text.ts";
import type { PriceLeaf } from "./price-leaf.ts";

/** Letters beside a price in one text from which on they may be the name of the product. */
const SHORTEST_NAME = 4;
/** Texts looked at in one product, and levels above each: a tile has about ten and five. */
const MOST_TEXTS = 60;
const LEVELS = 7;
/** Characters of a product in which the rest of what its picture is called is looked for. */
const MOST_TEXT = 600;

const TITLE_NAME = /title|name|heading|caption/i;
const OTHER_NAME =
  /brand|vendor|badge|label|price|rating|review|star|sku|colou?r|swatch|size|desc|excerpt|categor|btn|button|tag\b|count|hidden|sr-only|quick|wish|stock|sale/i;
const ACTION =
  /^(price|prix|preis|precio|prezzo|rent|now|was|from|only|mrp|add|quick|view|shop|buy|choose|select|sale|new|sold out|more|in den|ajouter|añadir|aggiungi|comprar|lägg|dodaj|neu|nouveau|nuevo|details?|wishlist|save)\b.{0,18}$/i;

/** Facts in a row ("M · Very good") are no name. */
const FACTS = /\s[·•|]\s/;

interface Guess {
  readonly text: string;
  /** The heading that the text is all of, if it is. */
  readonly from: Element | null;
  readonly score: number;
}

/** A heading is longer than this only where it holds more than a name, in characters. */
const LONGEST_MARKED = 160;

/** What class names and properties say of a text, remembered by their wording: tiles repeat them. */
const remembered = new Map<string, number>();
const MOST_REMEMBERED = 2000;

/** 1: a name, -1: something else, 0: not told. */
function toldBy(element: Element): number {
  const wording = `${element.getAttribute("class") ?? ""} ${element.getAttribute("itemprop") ?? ""}`;
  let told = remembered.get(wording);
  if (told === undefined) {
    told = OTHER_NAME.test(wording) ? -1 : TITLE_NAME.test(wording) ? 1 : 0;
    if (remembered.size > MOST_REMEMBERED) remembered.clear();
    remembered.set(wording, told);
  }
  return told;
}

/** The most that the words of a text can add to what its place tells. */
const MOST_BY_WORDS = 4;

/** The text and how much it looks like the name of a product, where that is more than `least`; `alt`: what the picture is called. */
function weigh(
  written: string,
  holder: Element,
  root: Element,
  link: string | null,
  alt: string,
  least: number,
): Guess | null {
  let marked: Element | null = null;
  let score = 0;
  for (
    let up: Element | null = holder, level = 0;
    up && up !== root && level < LEVELS;
    up = parentOf(up), level++
  ) {
    const { tagName } = up;
    if (tagName === "BUTTON" || tagName === "LABEL") score -= 6;
    // A link elsewhere names what is there.
    if (tagName === "A") score += link && (linkUrl(up) ?? link) !== link ? -3 : 1;
    if (marked) continue;
    const told = toldBy(up);
    const heading = /^H[1-6]$/.test(tagName);
    if (told < 0) score -= 4;
    else if (heading || told > 0) {
      marked = up;
      score += heading ? 4 : 3;
    }
  }
  if (score + MOST_BY_WORDS <= least) return null;
  const whole = plainText(marked?.textContent);
  const from = whole && whole.length < LONGEST_MARKED ? marked : null;
  const text = from ? whole : plainText(written);
  const key = nameKey(text);
  if (ACTION.test(text)) score -= 5;
  if (key.length < 3) score -= 4;
  if (text.length > 120) score -= 3;
  if (FACTS.test(text)) score -= 1;
  if (key.length > 2 && alt && (alt.includes(key) || key.includes(alt))) score += 3;
  return { text, from, score: score + Math.min(key.length, 16) / 16 };
}

/** The name where what looked like one is the brand: the picture is called by both, and what follows is no shorter. */
function nameBehindBrand(root: Element, brand: string, alt: string): string | undefined {
  const name = alt.startsWith(brand) ? alt.slice(brand.length) : "";
  if (name.length < brand.length) return undefined;
  const texts = linesOf(root, MOST_TEXT).split("\n").map(plainText);
  return texts.find((text) => nameKey(text) === name);
}

/**
 * The name of the product in `root`: what is marked as a heading or a name, else what its picture or link is called,
 * else its most telling text. "" where there is none. `prices` are texts that are no names.
 */
export function titleIn(
  root: Element,
  image: Element | null,
  link: Element | null,
  prices: readonly PriceLeaf[],
): string {
  const alt = plainText(image?.getAttribute("alt"));
  const altKey = nameKey(alt);
  const address = link && linkUrl(link);
  const walker = root.ownerDocument.createTreeWalker(root, 4);
  let best: Guess = { text: "", from: null, score: -1 };
  for (let node = walker.nextNode(), n = 0; node && n < MOST_TEXTS; node = walker.nextNode()) {
    const parent = parentOf(node);
    const written = node.nodeValue ?? "";
    if (!parent || !/\p{L}/u.test(written)) continue;
    if (/^(SCRIPT|STYLE|NOSCRIPT|TEMPLATE|OPTION|TEXTAREA)$/.test(parent.tagName)) continue;
    const part = written.trim();
    const price = prices.find(({ element, text }) => text.includes(part) && element.contains(parent));
    if (price && letters(price.words) < SHORTEST_NAME) continue;
    n++;
    const guess = weigh(written, parent, root, address, altKey, best.score);
    if (guess && guess.score > best.score)
      best = price ? { ...guess, text: plainText(price.words), from: null } : guess;
  }
  const text = best.from ? headingText(best.from) : best.text;
  if (text) return nameBehindBrand(root, nameKey(text), altKey) ?? text;
  const said = [
    link?.getAttribute("title"),
    link?.getAttribute("aria-label"),
    root.getAttribute("aria-label"),
    alt,
  ];
  return said.map(plainText).find((text) => text.length > 2) ?? "";
}
