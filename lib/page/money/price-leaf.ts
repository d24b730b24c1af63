import { nameOf, parentOf } from "../dom/ancestors.ts";
import { letters } from "../dom/letters.ts";
import { iconSign } from "./icon-sign.ts";
import { joinedText } from "./joined-text.ts";
import { LONGEST_SIGN } from "./money-signs.ts";
import { type Amount, readTag, type Tag, type WrittenAmount } from "./price.ts";
import { LABELLED_PRICE } from "./price-label.ts";
import { PRICE_NAME } from "./price-name.ts";
import { DIGITS, FIGURE } from "./scan-money.ts";
import { LONGEST_SOURCE, LONGEST_TAG, STEPS_UP } from "./tag-size.ts";
import { isPiece, type Run, runFrom, saidBefore, saidBy, saidIn } from "./text-run.ts";
import { PART_NAME } from "./what-for.ts";

/** A short piece of text on the page that shows a price, as it is written. */
export interface WrittenPrice {
  readonly element: Element;
  readonly text: string;
  /** The same with the words around it, where they are few. */
  readonly tag: string;
  /** The text without its amounts. */
  readonly words: string;
  readonly amounts: readonly WrittenAmount[];
}

/** The same with its currency. */
export interface PriceLeaf extends WrittenPrice {
  readonly amounts: readonly Amount[];
}

/** A price tag has few words beside the figures ("Regular price", "From"); a sentence has more. */
const MOST_LETTERS = 28;
const FIGURES = new RegExp(`^[${DIGITS}\\s.,'’٬٫*–~〜～-]+$`);
const NUMBER = /^[\d.,' ]+$/;
/** What says behind a number that it is the lowest of some. */
const UPWARDS = /[~〜～]$/;

/** How long the text of an element is, its white space folded; no longer one is looked at. */
const lengthOf = ({ textContent }: Element): number =>
  textContent.length < LONGEST_SOURCE ? textContent.replace(/\s+/g, " ").length : LONGEST_SOURCE;

type Sum = Pick<WrittenAmount, "amount">;

const sameWhole = (a: readonly Sum[], b: readonly Sum[]): boolean =>
  a.length === b.length && a.every(({ amount }, i) => Math.trunc(amount) === Math.trunc(b[i]?.amount ?? 0));

/** Where a sentence ends and another begins. */
export const SENTENCE_END = /\p{L}[.!?。]\s*\p{Lu}|。./u;

/** Whether a text stands in a paragraph of prose, by itself or as a few of its words that markup calls no price. */
function isInProse(element: Element): boolean {
  if (element.tagName !== "P" && PRICE_NAME.test(nameOf(element))) return false;
  const around = parentOf(element);
  const block = element.tagName === "P" || around?.tagName !== "P" ? element : around;
  return block.tagName === "P" && lengthOf(block) > LONGEST_TAG && SENTENCE_END.test(block.textContent);
}

/** Whether a label says that a text is a price: at the start of its own line, in the element before it or on the line before. */
const isLabelled = (node: Node, text: string): boolean =>
  [text, saidBefore(node).slice(0, LONGEST_TAG) + text].some((said) =>
    LABELLED_PRICE.test(said.toLowerCase()),
  );

/** Whether a label right before an amount denies that it is a price: "<b>You save:</b> 600 kr". */
function isDeniedBefore(node: Node, text: string): boolean {
  const before = saidBefore(node);
  const isLabel = before.length < LONGEST_TAG && /[:：]$/.test(before) && !FIGURE.test(before);
  return isLabel && readTag(`${before} ${text}`).denied;
}

/** The number without a sign behind a label that says it is a price: "Price: 240", in one text or behind its element; or null. */
function labelledAlone(node: Node, element: Element, text: string): WrittenPrice | null {
  const number = text.toLowerCase().replace(LABELLED_PRICE, "").trim();
  if (!NUMBER.test(number) || element.closest(NO_TAG) || !isLabelled(node, text)) return null;
  const { amounts } = readTag(`${number},-`);
  return amounts.length > 0 ? { element, text, tag: text, words: "", amounts } : null;
}

/** What is said of money around or in an element that has few words, with the text it is read from. */
interface Around extends Tag {
  readonly tag: string;
}

/**
 * What an element says of money, where it has few words and the amounts of a text in it, or null. What is not displayed
 * cannot deny them.
 */
function tagAround(element: Element | null, text: string, alone: Tag): Around | null {
  if (!element || lengthOf(element) >= LONGEST_TAG / 2) return null;
  let tag = joinedText(element);
  let read = tag === text ? alone : readTag(tag);
  if (read.denied && !alone.denied) {
    tag = joinedText(element, true);
    read = readTag(tag);
  }
  return sameWhole(alone.amounts, read.amounts) ? { ...read, tag } : null;
}

/** Whether a text is what stands behind the point of an amount that begins in another element: "<b>5</b>,<i>95 €</i>". */
function isRestOf(element: Element, text: string): boolean {
  if (!/^\d\d(?!\d)/.test(text)) return false;
  const before = saidBy(element.previousSibling);
  return /^[.,]$/.test(before) && /\d$/.test(saidIn(element.previousElementSibling));
}

/** What shows no price: what is no text of the page, and choices, of which labels without a field are none. */
const NO_TAG = "script,style,noscript,template,option,label[for],label:has(input,select),textarea";

/**
 * The price in words with a number at their end, whose sign is the next element ("from 5 600<i>₽</i>"), or at their
 * start, whose sign is the one before ("<i>$</i>12.00 / on sale"); or null.
 */
function signedAside(node: Node, { last }: Run, element: Element, text: string): WrittenPrice | null {
  const before = /^\d/.test(text) ? saidIn(node.previousSibling) : "";
  const sign = before || (/\d$/.test(text) ? saidIn(last.nextSibling) : "");
  if (!sign || sign.length > LONGEST_SIGN || letters(text) > MOST_LETTERS || element.closest(NO_TAG))
    return null;
  const tag = before ? `${sign}${text}` : `${text} ${sign}`;
  const { amounts, words, denied } = readTag(tag);
  return denied || amounts.length === 0 ? null : { element, text: tag, tag, words, amounts };
}

/** How often a number stands in a text, by itself. */
function timesIn(text: string, number: string): number {
  let times = 0;
  for (let at = text.indexOf(number); at >= 0; at = text.indexOf(number, at + number.length)) {
    const [before, behind] = [text.charAt(at - 1), text.charAt(at + number.length)];
    if (!FIGURE.test(before) && !FIGURE.test(behind)) times++;
  }
  return times;
}

/** The price tag that a text node belongs to, with what goes on in the next, or null where it is none. */
export function priceLeafAt(node: Node): WrittenPrice | null {
  if (node.nodeType !== 3 || !(isPiece(node.nextSibling) || FIGURE.test(node.nodeValue ?? ""))) return null;
  const run = runFrom(node);
  const written = run?.written ?? "";
  if (!run || !FIGURE.test(written) || written.length > LONGEST_SOURCE) return null;
  const text = written.replace(/\s+/g, " ").trim();
  const element = parentOf(node);
  if (!element || text.length > LONGEST_TAG) return null;
  const alone = readTag(letters(text) > MOST_LETTERS ? "" : text);
  const own = alone.amounts;
  if (own.length === 0 && !FIGURES.test(text))
    return signedAside(node, run, element, text) ?? labelledAlone(node, element, text);
  if (element.closest(NO_TAG)) return null;
  // A button says its price in full: "Add to bag for €49".
  if (own.length === 0 && element.closest("button")) return null;
  if (isInProse(element) && !isLabelled(node, text)) return null;
  if (own.length > 0) {
    if (isRestOf(element, text)) return null;
    // Words beside it ("Save", "Was") and raised cents belong to the same tag.
    const beside = tagAround(parentOf(element), text, alone);
    if (beside?.denied || (!beside && (alone.denied || isDeniedBefore(node, text)))) return null;
    // Where other amounts stand beside it, what its own element says of it ("net").
    const inside = beside ?? tagAround(element, text, alone);
    const { tag, amounts } = inside?.denied === false ? inside : { tag: text, amounts: own };
    return { element, text, tag, words: alone.words, amounts };
  }
  // "<b>24</b> euro": the sign is the next text, and no word stands before.
  const behind = saidBy(element.previousSibling) ? "" : saidBy(element.nextSibling);
  const signed = behind && behind.length <= LONGEST_SIGN ? `${text} ${behind}` : "";
  const { amounts, words } = readTag(signed);
  if (amounts.length > 0) return { element, text, tag: signed, words, amounts };
  let plain: WrittenPrice | null = null;
  const number = text.replace(UPWARDS, "");
  const figure = readTag(`${number},-`).amounts;
  for (let up: Element | null = element, step = 0; up && step < STEPS_UP; up = parentOf(up), step++) {
    if (lengthOf(up) > LONGEST_TAG) break;
    const tag = joinedText(up);
    const names = `${up.className} ${up.getAttribute("itemprop")}`;
    const bare = PRICE_NAME.test(names) && !PART_NAME.test(names) && NUMBER.test(number);
    const { amounts, words } = readTag(letters(tag) > MOST_LETTERS ? "" : tag);
    // The amount begins with this figure, which is there but once, or it is another's: sizes stand beside a price.
    const own = amounts.some((one) => sameWhole([one], figure) || one.written === figure[0]?.written);
    if (own && timesIn(tag, text) < 2) return { element: up, text: tag, tag, words, amounts };
    if (amounts.length > 0) break;
    // Beside another number it is not told whose sign an icon is.
    const iconed = FIGURE.test(tag.replace(text, "")) ? "" : `${iconSign(up)} ${text}`;
    if (iconed.length > text.length + 1)
      return { element: up, text, tag: iconed, words, amounts: readTag(iconed).amounts };
    if (!bare || plain) continue;
    // Cents that are raised stand in an element of their own.
    const all = NUMBER.test(tag) ? readTag(`${tag},-`).amounts : figure;
    plain = { element: up, text, tag, words, amounts: all };
  }
  return plain ?? labelledAlone(node, element, text);
}
