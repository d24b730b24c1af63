import type { Context } from "../context.ts";
import { parentOf } from "../dom/ancestors.ts";
import { labelled } from "../dom/labelled.ts";
import { plainText } from "../dom/plain-text.ts";
import { PRICE_LABELS } from "./price-label.ts";
import type { PriceLeaf } from "./price-leaf.ts";
import { settleMoney } from "./settle-money.ts";

/** Texts looked at in one product. */
const MOST_TEXTS = 40;
/** Numbers as little else than money is written: in thousands that are kept apart, or with cents. */
const LIKE_MONEY = /^(\d{1,3}([.,’' ]\d{3})+([.,]\d{2})?|\d{1,6}[.,]\d{2})$/;

/** Marks that part it from what stands beside it. */
const AROUND = /^[|/:–—-] ?| ?[|/]$/g;

/** What a table or a list of facts says before a price. */
const PRICE_LABEL = new RegExp(`^(?:${PRICE_LABELS.join("|")})\\s*[:：]?$`, "iu");
const NUMBER = /^\d[\d.,’' ]*$/;

/** An amount without a sign, as money is written without one: "49,-". */
function leafOf(element: Element, text: string, { readTag, hint }: Context): readonly PriceLeaf[] {
  const amounts = settleMoney(readTag(`${text},-`).amounts, hint);
  return amounts.length > 0 ? [{ element, text, tag: text, words: "", amounts }] : [];
}

/** Numbers as a heading beside a name: whole, or with cents. */
const HEADED_NUMBER = /^\d{2,6}([.,]\d{2})?$/;

/** The price that a heading beside the one that names a product is all of. */
export const headedPrices = (name: Element, context: Context): readonly PriceLeaf[] =>
  [...(parentOf(name)?.children ?? [])].flatMap((beside) => {
    const text = plainText(beside.textContent);
    return /^H\d$/.test(beside.tagName) && HEADED_NUMBER.test(text) ? leafOf(beside, text, context) : [];
  });

const told = new WeakMap<Context, readonly PriceLeaf[]>();

/** The prices that a table or a list of facts tells as a number alone; looked for once. */
export function labelledPrices(context: Context): readonly PriceLeaf[] {
  const found =
    told.get(context) ??
    labelled(context.doc, PRICE_LABEL).flatMap((value) => {
      const text = plainText(value.textContent);
      return NUMBER.test(text) ? leafOf(value, text, context) : [];
    });
  told.set(context, found);
  return found;
}

/** The price of what is known to be a product, where its only number that looks like money has no sign; else none. */
export function barePrices(root: Element, context: Context): readonly PriceLeaf[] {
  const walker = root.ownerDocument.createTreeWalker(root, 4);
  const found: PriceLeaf[] = [];
  for (let seen = 0; seen < MOST_TEXTS && walker.nextNode(); seen++) {
    const text = plainText(walker.currentNode.nodeValue).replace(AROUND, "");
    const holder = parentOf(walker.currentNode);
    const isHeaded = HEADED_NUMBER.test(text) && holder !== null && /^H\d$/.test(holder.tagName);
    const element = isHeaded || LIKE_MONEY.test(text) ? holder : null;
    if (element) found.push(...leafOf(element, text, context));
  }
  return found.length === 1 ? found : [];
}
