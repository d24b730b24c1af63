import { allIn, nearest, parentOf, within } from "./dom/ancestors.ts";
import { plainText } from "./dom/plain-text.ts";
import { currencyCode } from "./money/currency.ts";
import { parseAmount, THOUSANDTHS } from "./money/parse-amount.ts";
import type { Price } from "./product.ts";

/** A product as a page's data describes it. Every field is checked; nothing of it is trusted further. */
export interface Described {
  readonly name: string;
  readonly url: string;
  readonly images: readonly string[];
  readonly color: string;
  readonly category: string;
  readonly price: Price | null;
  /** True inside a list: then it is one of several, not what the page is about. */
  readonly listed: boolean;
}

/** Bounds on hostile data: scripts read, characters of one, levels, and objects looked at in all. */
const MOST_SCRIPTS = 60;
const LONGEST_SCRIPT = 2_000_000;
const DEEPEST = 12;
const MOST_OBJECTS = 6000;

const SCRIPTS = 'script[type*="ld+json" i]';
const MARKUP = '[itemscope][itemtype*="schema.org/Product" i],[typeof~="Product"],[typeof~="schema:Product"]';
const PROPERTIES = ["name", "url", "image", "color", "category", "price", "lowPrice", "priceCurrency"];
/** Properties whose products are some of several, or beside the one the page is about. */
const LISTS = /^itemListElement$|related|similar/i;

type Json = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Json =>
  typeof value === "object" && value !== null && !Array.isArray(value);
/** An own property, so that a key such as `__proto__` reaches nothing. */
const get = (from: Json, key: string): unknown => (Object.hasOwn(from, key) ? from[key] : undefined);
const list = (value: unknown): readonly unknown[] =>
  Array.isArray(value) ? value : value === undefined || value === null ? [] : [value];
const first = (value: unknown): unknown => list(value)[0];
const words = (value: unknown): string => {
  const one = first(value);
  return plainText(isObject(one) ? get(one, "name") : one);
};

/** A number that a page wrote as a number or as a price tag's text; null where there is none above 0. */
function amountOf(value: unknown, currency: string | null): number | null {
  const digits = typeof value === "number" ? String(value) : plainText(value).match(/\d[\d.,' ]*/)?.[0];
  const amount = digits ? parseAmount(digits.replace(/[.,' ]+$/, ""), THOUSANDTHS.has(currency ?? "")) : 0;
  return amount > 0 && Number.isFinite(amount) ? amount : null;
}

function offerPrice(offers: unknown): Price | null {
  let best: Price | null = null;
  for (const offer of list(offers).slice(0, 100)) {
    if (!isObject(offer)) continue;
    const inner = first(get(offer, "priceSpecification"));
    const source = isObject(inner) && get(offer, "price") === undefined ? inner : offer;
    const currency = currencyCode(get(source, "priceCurrency") ?? get(offer, "priceCurrency"));
    const amount =
      amountOf(get(source, "price") || get(source, "lowPrice"), currency) ??
      offerPrice(get(offer, "offers"))?.amount;
    if (amount && (!best || amount < best.amount)) best = { amount, currency };
  }
  return best;
}

const addresses = (value: unknown): readonly string[] =>
  list(value)
    .slice(0, 12)
    .flatMap((entry) => {
      const address = isObject(entry) ? (get(entry, "contentUrl") ?? get(entry, "url")) : entry;
      return typeof address === "string" && address.length < 2000 ? address : [];
    });

const isProduct = (node: Json): boolean =>
  list(get(node, "@type")).some((type) => /Product(Group|Model)?$/.test(String(type).slice(-40)));

function describe(node: Json, listed: boolean): Described {
  const variants = list(get(node, "hasVariant")).filter(isObject);
  const variant = variants[0];
  return {
    name: words(get(node, "name")),
    url: String(addresses(get(node, "url") ?? get(node, "@id"))[0] ?? ""),
    images: addresses(get(node, "image") ?? (variant && get(variant, "image"))),
    color: words(get(node, "color")),
    category: words(get(node, "category")),
    price:
      offerPrice(get(node, "offers") ?? node) ?? offerPrice(variants.map((one) => first(get(one, "offers")))),
    listed,
  };
}

/** JSON as stores write it: comments and trailing commas around, raw line breaks in strings. Null where hopeless. */
function readJson(text: string): unknown {
  const cleaned = text.replace(/^\s*(<!--|\/\/<!\[CDATA\[)|(-->|\/\/\]\]>)\s*$/g, "");
  for (const attempt of [
    cleaned,
    cleaned
      .replace(/\p{Cc}+/gu, " ")
      .replace(/,\s*([\]}])/g, "$1")
      .replace(/;\s*$/, ""),
  ]) {
    try {
      return JSON.parse(attempt);
    } catch {
      // The second attempt mends what stores commonly break; after that the script is left out.
    }
  }
  return null;
}

/** Products in a piece of JSON-LD. Walks breadth first, so that the bounds cut the deep end of hostile data. */
function jsonProducts(data: unknown): Described[] {
  const found: Described[] = [];
  let level = [{ value: data, listed: false }];
  let seen = 0;
  for (let depth = 0; depth < DEEPEST; depth++) {
    const next: typeof level = [];
    for (const { value, listed } of level) {
      if (++seen > MOST_OBJECTS) return found;
      if (isObject(value) && isProduct(value)) found.push(describe(value, listed));
      else if (typeof value === "object")
        for (const [key, inner] of Object.entries(value ?? {}).slice(0, MOST_OBJECTS))
          if (typeof inner === "object") next.push({ value: inner, listed: listed || LISTS.test(key) });
    }
    level = next;
  }
  return found;
}

/** The value of a property in the markup, by microdata or RDFa; not one of a thing nested deeper. */
function markupValue(root: Element, name: string): string {
  const selector = `[itemprop~="${name}"],[property~="${name}"],[property~="schema:${name}"]`;
  for (const holder of allIn(root, selector)) {
    const owner = nearest(parentOf(holder), (up) => up.matches("[itemscope],[typeof]"));
    if (
      owner &&
      owner !== root &&
      !/offer/i.test(`${owner.getAttribute("itemtype")}${owner.getAttribute("typeof")}`)
    )
      continue;
    const value = ["content", "href", "src"].map((key) => holder.getAttribute(key)).find(Boolean);
    return value ?? holder.textContent;
  }
  return "";
}

/** What an element with microdata or RDFa says, as JSON-LD would. */
const markupNode = (element: Element): Json =>
  Object.fromEntries(PROPERTIES.map((name) => [name, markupValue(element, name)]));

/** What a page says it is by Open Graph, as JSON-LD would; null where that is no product. */
function openGraphNode(doc: Document): Json | null {
  const meta = (name: string) =>
    doc.querySelector(`meta[property="${name}"],meta[name="${name}"]`)?.getAttribute("content") ?? "";
  const price = (part: string) => meta(`product:price:${part}`) || meta(`og:price:${part}`);
  if (!/product/i.test(meta("og:type")) && !price("amount")) return null;
  return {
    name: meta("og:title"),
    url: meta("og:url"),
    image: meta("og:image"),
    color: meta("product:color"),
    price: price("amount"),
    priceCurrency: price("currency"),
  };
}

/** Gives `learn` everything that the data in `scopes` says about products, strongest source first, a little at a time. */
export function* learnProducts(
  scopes: readonly (Document | Element)[],
  learn: (product: Described) => void,
): Generator<undefined, void, undefined> {
  const inAll = (selector: string) => scopes.flatMap((scope) => within(scope, selector));
  for (const { textContent } of inAll(SCRIPTS).slice(0, MOST_SCRIPTS)) {
    yield;
    if (textContent && textContent.length <= LONGEST_SCRIPT)
      for (const product of jsonProducts(readJson(textContent))) learn(product);
  }
  yield;
  for (const element of inAll(MARKUP).slice(0, MOST_OBJECTS)) {
    yield;
    learn(describe(markupNode(element), false));
  }
  yield;
  for (const scope of scopes) {
    const node = "head" in scope && openGraphNode(scope);
    if (node) learn(describe(node, false));
  }
}
