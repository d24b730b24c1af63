import type { MoneyHint } from "./currency.ts";
import { type Amount, amountsIn, deniesPrice } from "./price.ts";

/** A short piece of text on the page that shows a price. */
export interface PriceLeaf {
  readonly element: Element;
  readonly text: string;
  readonly amounts: readonly Amount[];
}

/** A price tag has few words beside the figures ("Regular price", "From"); a sentence has more. */
const MOST_LETTERS = 28;
const LONGEST_TAG = 90;
/** How many elements up a price that is cut into several ("$", "49", "99") is put together again. */
const STEPS_UP = 3;

const PRICE_NAME = /pri(?:ce|s|x|jz)|preis|prec|prez|cena|amount|valor/i;

const letters = (text: string): number => text.replace(/[^\p{L}]/gu, "").length;

/** Text of an element cut into pieces: raised cents get their point back. */
function joinedText(element: Element): string {
  const walker = element.ownerDocument.createTreeWalker(element, 4);
  let text = "";
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const piece = (node.nodeValue ?? "").trim();
    if (/^\d\d$/.test(piece) && /\d$/.test(text)) text += ".";
    else if (/\d/.test(piece) && /\d\D*$/.test(text) && /[\d\p{L}€$£]$/u.test(text) && !/^[.,]/.test(piece))
      text += " ";
    text += piece;
  }
  return text;
}

/** The price tag that a text node belongs to, or null where it is none. */
export function priceLeafAt(node: Node, hint: MoneyHint): PriceLeaf | null {
  const text = node.nodeValue?.trim() ?? "";
  const element = node.parentElement;
  if (!element || text.length > LONGEST_TAG || !/[\d٠-٩۰-۹]/.test(text)) return null;
  if (element.closest("script,style,noscript,template,option,button,label,textarea")) return null;
  const own = amountsIn(text, hint);
  if (own.length > 0) {
    if (letters(text) > MOST_LETTERS) return null;
    const parent = element.parentElement;
    // Words beside it ("Save", "Was") and raised cents belong to the same tag.
    const wide = parent && (parent.textContent?.length ?? 0) < LONGEST_TAG / 2;
    const joined = wide ? joinedText(parent) : text;
    const around = amountsIn(joined, hint);
    const same = around.length === own.length;
    return deniesPrice(same ? joined : text) ? null : { element, text, amounts: same ? around : own };
  }
  if (letters(text) > 0) return null;
  for (let up: Element | null = element, step = 0; up && step < STEPS_UP; up = up.parentElement, step++) {
    if ((up.textContent?.length ?? 0) > LONGEST_TAG) return null;
    const joined = joinedText(up);
    const bare =
      PRICE_NAME.test(`${up.className} ${up.getAttribute("itemprop")}`) && /^[\d.,' ]+$/.test(text);
    const amounts = amountsIn(letters(joined) > MOST_LETTERS ? "" : joined, hint);
    if (amounts.length > 0) return { element: up, text: joined, amounts };
    if (bare) return { element: up, text, amounts: amountsIn(`${text},-`, hint) };
  }
  return null;
}
