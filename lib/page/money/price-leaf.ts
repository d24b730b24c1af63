import { nameOf, parentOf } from "../dom/ancestors.ts";
import { letters } from "../dom/letters.ts";
import { figureLeaf } from "./figure-leaf.ts";
import { joinedText } from "./joined-text.ts";
import { isDeniedBefore, isLabelled, labelledAlone, NO_TAG } from "./labelled-alone.ts";
import { LONGEST_SIGN } from "./money-signs.ts";
import { readTag, type Tag } from "./price.ts";
import { PRICE_NAME } from "./price-name.ts";
import { sameWhole } from "./same-whole.ts";
import { DIGITS, FIGURE } from "./scan-money.ts";
import { LONGEST_SOURCE, LONGEST_TAG, lengthOf, MOST_LETTERS } from "./tag-size.ts";
import { isPiece, type Run, runFrom, saidBy, saidIn } from "./text-run.ts";
import type { WrittenPrice } from "./written-price.ts";

const FIGURES = new RegExp(`^[${DIGITS}\\s.,'’٬٫*–~〜～-]+$`);
const BEGINS = new RegExp(`^[${DIGITS}]`);
const ENDS = new RegExp(`[${DIGITS}]$`);

/** Where a sentence ends and another begins. */
export const SENTENCE_END = /\p{L}[.!?。]\s*\p{Lu}|。./u;

/** Whether a text stands in a paragraph of prose, by itself or as a few of its words that markup calls no price. */
function isInProse(element: Element): boolean {
  if (element.tagName !== "P" && PRICE_NAME.test(nameOf(element))) return false;
  const around = parentOf(element);
  const block = element.tagName === "P" || around?.tagName !== "P" ? element : around;
  return block.tagName === "P" && lengthOf(block) > LONGEST_TAG && SENTENCE_END.test(block.textContent);
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

/**
 * The price in words with a number at their end, whose sign is the next element ("from 5 600<i>₽</i>") or the text behind
 * their own ("<i>from 139</i> zł"), or at their start, whose sign is the one before ("<i>$</i>12.00 / on sale"); or null.
 */
function signedAside(node: Node, { last }: Run, element: Element, text: string): WrittenPrice | null {
  const before = BEGINS.test(text) ? saidIn(node.previousSibling) : "";
  const behind = saidIn(last.nextSibling) || (last.nextSibling ? "" : saidBy(element.nextSibling));
  const sign = before || (ENDS.test(text) ? behind : "");
  if (!sign || sign.length > LONGEST_SIGN || letters(text) > MOST_LETTERS || element.closest(NO_TAG))
    return null;
  const tag = before ? `${sign}${text}` : `${text} ${sign}`;
  const { amounts, words, denied } = readTag(tag);
  return denied || amounts.length === 0 ? null : { element, text: tag, tag, words, amounts };
}

/** The price in a text that has its sign, with what is said around it; null where that denies it. */
function signedLeaf(node: Node, element: Element, text: string, alone: Tag): WrittenPrice | null {
  if (isRestOf(element, text)) return null;
  // Words beside it ("Save", "Was") and raised cents belong to the same tag.
  const beside = tagAround(parentOf(element), text, alone);
  const isBare = !beside || letters(beside.tag) <= letters(text);
  if (beside?.denied || (!beside && alone.denied) || (isBare && isDeniedBefore(node, text))) return null;
  // Where other amounts stand beside it, what its own element says of it ("net").
  const inside = beside ?? tagAround(element, text, alone);
  const { tag, amounts } = inside?.denied === false ? inside : { tag: text, amounts: alone.amounts };
  return { element, text, tag, words: alone.words, amounts };
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
  if (own.length > 0) return signedLeaf(node, element, text, alone);
  const figure = figureLeaf(node, element, text);
  if (figure && isDeniedBefore(node, figure.tag)) return null;
  return figure ?? labelledAlone(node, element, text);
}
