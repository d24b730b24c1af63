import type { Context } from "../context.ts";
import { allIn } from "../dom/ancestors.ts";
import { plainText } from "../dom/plain-text.ts";
import { BASKET_LINKS, BASKET_NAMES, BASKET_TEXT } from "./basket-names.ts";

/** Links to a basket, and the place of one. */
const BASKETS = `[class*="cart" i]:not([class*="carta" i],[class*="carte" i]),${BASKET_LINKS}`;

/** Letters of names that other words have in them, too. */
const MOST_COMMON = 5;
/** What else may be a basket: a page that one script is asked for, or what is called so in the shop's own language. */
const OTHER_BASKETS = BASKET_NAMES.flatMap((name) => [
  `a[href*="=${name}" i]`,
  `a[href^="${name}" i]:not([href^="carte" i])`,
  ...(name.length > MOST_COMMON ? [`[class*="${name}" i]`, `[id*="${name}" i]`] : []),
]).join();

/** Links to the shop of a site that has other pages too. */
const SHOPS = ["shop", "store", "boutique", "tienda", "negozio", "loja", "winkel", "butik", "sklep"]
  .map((name) => `a[href$="/${name}" i],a[href$="/${name}/" i]`)
  .join();

const sellsByPress = new WeakMap<Context, boolean>();

/** Whether what a page sells is bought by pressing: it has a basket, or a shop elsewhere; found out once. */
export function isSoldByPress(context: Context): boolean {
  const { doc } = context;
  const elsewhere = (shop: Element) => "href" in shop && shop.href !== doc.URL;
  const known =
    sellsByPress.get(context) ??
    (doc.querySelector(BASKETS) !== null || [...doc.querySelectorAll(SHOPS)].some(elsewhere));
  sellsByPress.set(context, known);
  return known;
}

/** Links and buttons looked at for what they say, and characters of one that may say it. */
const MOST_SAID = 300;
const LONGEST_SAID = 40;

/** Whether a link or a button says no more than "Cart (2)". */
const saysBasket = ({ textContent }: Element): boolean =>
  textContent.length < LONGEST_SAID && BASKET_TEXT.test(plainText(textContent).toLowerCase());

/** Whether a link or a button of a page says that it leads to a basket. */
export const namesBasket = (doc: Document): boolean =>
  allIn(doc, "a,button").slice(0, MOST_SAID).some(saysBasket);

/** Whether a page has something like a basket, or a shop elsewhere. */
export const hasBasket = (context: Context): boolean =>
  isSoldByPress(context) || context.doc.querySelector(OTHER_BASKETS) !== null || namesBasket(context.doc);
