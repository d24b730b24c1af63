import type { Context } from "../context.ts";
import { parentOf } from "../dom/ancestors.ts";
import { labelled } from "../dom/labelled.ts";
import { plainText } from "../dom/plain-text.ts";
import { LEAST_MEMBERS } from "../members.ts";
import { isStruck } from "./is-struck.ts";
import { readTag } from "./price.ts";
import { PRICE_LABEL } from "./price-label.ts";
import { settleMoney } from "./settle-money.ts";
import type { PriceLeaf } from "./written-price.ts";

/** Texts looked at in one product, and tiles. */
const MOST_TEXTS = 40;
const MOST_TILES = 200;
/** Numbers as little else than money is written: in thousands that are kept apart, or with cents. */
const LIKE_MONEY = /^(\d{1,3}([.,’' ]\d{3})+([.,]\d{2})?|\d{1,6}[.,]\d{2})$/;

/** Marks that part it from what stands beside it. */
const AROUND = /^[|/:–—-] ?| ?[|/]$/g;

/** The same with what a table or a list of facts says in several ways. */
const LABEL = new RegExp(
  `^(?:(?:our|sale|product|item) price|pret|giá bán|販売価格|商品[价價]格|售[价價]|판매 ?(?:가격|가)|${PRICE_LABEL})\\s*[:：]?$`,
  "iu",
);
const NUMBER = /^\d[\d.,’' ]*$/;

/** An amount without a sign, as money is written without one: "49,-". */
export function leafOf(element: Element, text: string, { hint }: Context): readonly PriceLeaf[] {
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
    labelled(context.doc, LABEL).flatMap((value) => {
      const text = plainText(value.textContent);
      return NUMBER.test(text) ? leafOf(value, text, context) : [];
    });
  told.set(context, found);
  return found;
}

/** Numbers as prices are, in their own element: whole, or as programs write a fraction ("64.5", "510000.0"); and years. */
const LONE_NUMBER = /^(\d{3,8}|\d{2,8}\.\d{1,2})$/;
const YEAR = /^(19|20)\d\d$/;
/** What says that something else follows. */
const LABEL_END = /[:：]\s*$/;
/** The part of the tiles that must show one. */
const MOST_OF_THEM = 0.75;

/** What an element says apart from what is in it. */
const ownText = ({ childNodes }: Element): string =>
  [...childNodes]
    .map((node) => (node.nodeType === 3 ? node.nodeValue : ""))
    .join(" ")
    .trim();

/** The elements in a tile that a number is all of, and that no label names. */
function numbersIn(tile: Element): readonly Element[] {
  const walker = tile.ownerDocument.createTreeWalker(tile, 4);
  const found: Element[] = [];
  for (let seen = 0; seen < MOST_TEXTS && walker.nextNode(); seen++) {
    const holder = parentOf(walker.currentNode);
    if (!holder || !LONE_NUMBER.test(walker.currentNode.nodeValue?.trim() ?? "")) continue;
    const isAlone = [...holder.children].every(isStruck) && LONE_NUMBER.test(ownText(holder));
    if (isAlone && !isStruck(holder) && !LABEL_END.test(holder.previousElementSibling?.textContent ?? ""))
      found.push(holder);
  }
  return found;
}

/** The price in a block of what is sold there, where one whole number stands in it and no other. */
export function loneNumber(block: Element, context: Context): readonly PriceLeaf[] {
  const [number, ...more] = numbersIn(block);
  const text = number ? ownText(number) : "";
  return number && more.length === 0 && !YEAR.test(text) ? leafOf(number, text, context) : [];
}

/**
 * The prices of tiles that show none with a sign, where most show one whole number and no other: what stands in every tile
 * of a shop and differs. None where all may be years.
 */
export function numberedPrices(
  tiles: readonly Element[],
  context: Context,
): ReadonlyMap<Element, readonly PriceLeaf[]> {
  const found = new Map<Element, readonly PriceLeaf[]>();
  const said = new Set<string>();
  for (const tile of tiles.slice(0, MOST_TILES)) {
    const [number, ...more] = numbersIn(tile);
    const text = number ? ownText(number) : "";
    if (!number || more.length > 0) continue;
    said.add(text);
    found.set(tile, leafOf(number, text, context));
  }
  const isColumn = found.size >= Math.max(LEAST_MEMBERS, MOST_OF_THEM * tiles.length) && said.size > 1;
  return isColumn && ![...said].every((text) => YEAR.test(text)) ? found : new Map();
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
