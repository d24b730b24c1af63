import { nameOf, nearest } from "./ancestors.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./found-product.ts";
import { nameKey, plainText } from "./plain-text.ts";
import type { Survey } from "./survey.ts";
import type { Cluster } from "./tiles.ts";

/** Headings, buttons and choices looked at. */
const MOST_HEADINGS = 12;
const MOST_BUTTONS = 400;
const MOST_CHOICES = 60;
/** More buttons that buy than this belong to a list. */
const MOST_BUYS = 4;
/** A product page's own picture is at least this wide or high, in CSS pixels. */
const SMALLEST_MAIN = 140;

const BUY =
  /add to (my )?(cart|bag|basket|trolley)|buy (it )?now|pre-?order|sold out|in den (warenkorb|einkaufswagen)|ausverkauft|ajouter au panier|añadir|agregar|comprar|aggiungi al|in winkel|adicionar|lägg i|köp|dodaj do|カート|購入|加入|أضف|add-?_?to-?_?(cart|bag|basket)|cart\/add/i;
const BUTTONS = 'button,[type=submit],[role=button],a[class*="cart"],form[action*="cart/add"]';
const CHOSEN =
  ':checked,[aria-checked="true"],[aria-selected="true"],[aria-pressed="true"],[aria-current="true"],[class*="selected"],[class*="active"],[class*="chosen"]';

/** What colour choosers are called in markup. */
const COLOR_NAME = /colou?r|swatch|farb|couleur|kleur|färg|kolor/i;

const sameName = (a: string, b: string): boolean => {
  const [x, y] = [nameKey(a), nameKey(b)];
  return x.length > 2 && y.length > 2 && (x.includes(y) || y.includes(x));
};

const attributes = (element: Element, ...names: readonly string[]): readonly string[] =>
  names.map((name) => plainText(element.getAttribute(name)));

/** Words of the chosen variant: what stands where colours are chosen, else all that is chosen. */
function chosenWords(root: Element): string {
  const words: string[] = [];
  for (const choice of [...root.querySelectorAll(CHOSEN)].slice(0, MOST_CHOICES)) {
    const said = [...attributes(choice, "aria-label", "title", "value"), plainText(choice.textContent)];
    const text = said.find((words) => words.length > 1 && words.length < 40) ?? "";
    const place = [choice, choice.parentElement, choice.parentElement?.parentElement];
    const among = place.some(
      (near) => near && COLOR_NAME.test(`${nameOf(near)} ${near.getAttribute("name")}`),
    );
    if (text && among) return text;
    words.push(text);
  }
  return words.filter(Boolean).join("\n");
}

const buys = (button: Element): boolean =>
  BUY.test(
    [...attributes(button, "class", "id", "value", "action"), button.textContent?.slice(0, 80)].join("\n"),
  ) || button.getAttribute("name") === "add";

/**
 * The product that a product page is about, or null. A heading names it; a button that buys it, or the page's data
 * under the same name, must agree. Data alone proves nothing: home pages and listings carry it too.
 */
export function mainProduct(survey: Survey, clusters: readonly Cluster[], context: Context): Draft | null {
  const { doc, furniture } = context;
  const buttons = [...doc.querySelectorAll(BUTTONS)].slice(0, MOST_BUTTONS).filter(buys);
  const unlisted = context.described.filter((one) => !one.listed);
  const found: Draft[] = [];
  const headings = doc.querySelectorAll(doc.querySelector("h1") ? "h1" : "h2,[itemprop=name]");
  for (const heading of [...headings].slice(0, MOST_HEADINGS)) {
    if (furniture.isApart(heading) || furniture.isHidden(heading)) continue;
    const tiles = new Set<Element>();
    for (const { root, holdsMore } of clusters) if (!holdsMore && !root.contains(heading)) tiles.add(root);
    const inTile = (element: Element) => nearest(element, (up) => tiles.has(up)) !== null;
    const pictures = survey.pictures.filter((picture) => {
      const { width, height } = picture.getBoundingClientRect();
      return (width === 0 || Math.max(width, height) >= SMALLEST_MAIN) && !inTile(picture);
    });
    const prices = clusters
      .filter((cluster) => cluster.root.contains(heading))
      .flatMap((cluster) => cluster.prices)
      .filter((price) => !inTile(price.element));
    const root = nearest(
      heading,
      (up) =>
        pictures.some((picture) => up.contains(picture)) &&
        prices.every((price) => up.contains(price.element)),
    );
    if (!root || root.tagName === "HTML") continue;
    const written = plainText(heading.textContent);
    const named = /\p{L}{3}/u.test(written);
    const described = unlisted.find((one) => (named ? sameName(one.name, written) : unlisted.length === 1));
    const bought = buttons.filter((button) => {
      const shared = nearest(
        button,
        (up) => up.contains(heading) || [...tiles].some((tile) => up.contains(tile)),
      );
      return shared?.contains(heading) && !inTile(button);
    });
    if (!described && (bought.length === 0 || bought.length > MOST_BUYS)) continue;
    const block = prices[0]?.element.parentElement?.parentElement;
    found.push({
      role: "main",
      root,
      pictures: pictures.filter((picture) => root.contains(picture)),
      prices: prices.filter((price) => block?.contains(price.element)),
      title: named ? written : described?.name || plainText(doc.title),
      link: doc.querySelector("link[rel=canonical]")?.getAttribute("href") || doc.URL,
      described,
      chosen: chosenWords(root),
    });
  }
  const [first] = found;
  return first && found.every((other) => other.root === first.root) ? first : null;
}
