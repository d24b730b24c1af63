import type { Context } from "../context.ts";
import { allIn, parentOf } from "../dom/ancestors.ts";
import { buttonsIn, buys, sells } from "../dom/buttons.ts";
import { leadsToProduct } from "../dom/link.ts";
import { nameKey } from "../dom/plain-text.ts";
import { kindOf, LEAST_MEMBERS } from "../members.ts";
import type { FoundProduct } from "../product.ts";
import { BASKET_NAMES } from "./basket-names.ts";
import { isSoldByPress } from "./is-sold-by-press.ts";

/** Pictures of a basket, which scripts make a button of. */
const BASKET_PICTURES = BASKET_NAMES.map((name) => `img[src*="${name}." i],img[class~="${name}" i]`).join();

/** Links and buttons looked at in one tile. */
const MOST_PRESSED = 40;

/** Elements around a member of a list, members looked at, and of these others of its kind. */
const MOST_WRAPS = 4;
const MOST_MEMBERS = 40;
const MOST_OTHERS = 12;

/** What can be pressed on; a link to another part of the same page leads nowhere. */
const PRESSED =
  "a[href]:not([href^='#']),a[href='#'],button,input,select,form,[role=button],[role=link],[onclick],[tabindex='0']";

/** What a link or a button says that leads to a ware or did, in the ten languages of slot words. */
const DETAILS =
  /\bview|\bsee\b|\brent|\bmore\b|weiter|\bplus\b|\bmás\b|\bpiù\b|\bmeer\b|\bmer\b|więcej|\bmais\b|\binfo|detal[hli]|もっと|詳し|details?|buy|shop|order|choose|select|\badd\b|bag|cart|basket|zum (produkt|artikel)|ansehen|anschauen|mehr|kaufen|bestell|korb|voir|achet|command|chois|panier|\bver\b|compra|pedir|elegir|vedi|acquist|ordina|dettagli|scegli|carrello|veja|escolh|encomend|bekijk|koop|kies|visa|köp|välj|zobacz|kup|zamów|wybierz|koszyk|見る|詳細|購入|注文|カート|log ?in|sign ?in|masuk|sold out|out of stock|unavailable|ausverkauft|vergriffen|épuisé|rupture|agotado|esaurito|esgotado|uitverkocht|slutsåld|brak|niedostęp|売り切れ|品切/i;

/** Whether an element, or one around it within a few steps, looks as if it could be pressed on. */
const looksPressed = (element: Element | null): boolean =>
  element !== null &&
  (element.closest(PRESSED) !== null ||
    element.ownerDocument.defaultView?.getComputedStyle(element).cursor === "pointer");

/** What programs that draw a page themselves draw it into: they listen to presses without saying so. */
const DRAWN = "#__nuxt,#__next,#app,#root,app-root,[data-reactroot],[data-v-app]";

const drawn = new WeakMap<Context, boolean>();

/** Whether a program draws the page; found out once. */
function isDrawn(context: Context): boolean {
  const known = drawn.get(context) ?? context.doc.querySelector(DRAWN) !== null;
  drawn.set(context, known);
  return known;
}

/** Other members of a list of the same kind, as far as they are looked at. */
function othersLike(member: Element): readonly Element[] {
  const all = parentOf(member)?.children ?? [];
  const others: Element[] = [];
  for (let at = 0; at < Math.min(all.length, MOST_MEMBERS) && others.length < MOST_OTHERS; at++) {
    const one = all[at];
    if (one && one !== member && kindOf(one) === kindOf(member)) others.push(one);
  }
  return others;
}

/** Whether an element stands in a list, or what is around it does, of which most others can be bought. */
function isAmongSold(element: Element | undefined): boolean {
  let member = element ?? null;
  for (let wraps = 0; member && wraps < MOST_WRAPS; wraps++) {
    const others = othersLike(member);
    if (others.length + 1 >= LEAST_MEMBERS) return 2 * others.filter(sells).length > others.length;
    member = parentOf(member);
  }
  return false;
}

/** Languages whose calls to buy and to see more are known. */
const SPOKEN = /^(en|de|fr|es|it|pt|nl|sv|pl|ja)\b/i;

/**
 * Whether nothing leads to what a tile shows: neither its picture nor its name can be pressed on, and no link or button
 * in it offers to buy it or to see more. So look prices of services, prizes and the steps of a scheme. Where nothing can
 * be pressed on at all it may be a shop without a basket, which sells by telephone, unless other tiles do lead somewhere.
 */
export function leadsNowhere(
  { parts, image, link, title }: FoundProduct,
  othersLead: boolean,
  context: Context,
): boolean {
  if (leadsToProduct(link ?? "") || looksPressed(image) || parts.some(looksPressed)) return false;
  if (parts.some((part) => buttonsIn(part).some(buys))) return false;
  const all = parts.flatMap((part) => allIn(part, PRESSED)).slice(0, MOST_PRESSED);
  if (all.length === 0)
    return (
      (othersLead || isSoldByPress(context)) &&
      !isDrawn(context) &&
      !parts.some((part) => part.querySelector(BASKET_PICTURES)) &&
      !isAmongSold(parts[0])
    );
  if (context.language && !SPOKEN.test(context.language)) return false;
  const name = nameKey(title);
  const isTold = all.some((pressed) => {
    // A number alone counts who likes it.
    const said = nameKey(`${pressed.textContent} ${pressed.getAttribute("aria-label") ?? ""}`).replace(
      /^\d+$/,
      "",
    );
    const text = `${pressed.textContent} ${pressed.className}`.slice(0, 200);
    return said === "" || said.includes(name) || name.includes(said) || DETAILS.test(text);
  });
  return !isTold && !isAmongSold(parts[0]);
}
