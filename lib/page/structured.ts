import { currencyCode } from "./currency.ts";
import { plainText } from "./plain-text.ts";
import { parseAmount } from "./price.ts";
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
  /** The element that carries it (microdata, RDFa); null for data apart from the markup. */
  readonly element: Element | null;
}

/** Bounds on hostile data: scripts read, characters of one, levels, and objects looked at in all. */
const MOST_SCRIPTS = 60;
const LONGEST_SCRIPT = 2_000_000;
const DEEPEST = 12;
const MOST_OBJECTS = 6000;

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
  const amount = digits ? parseAmount(digits.replace(/[.,' ]+$/, ""), currency) : 0;
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
      amountOf(get(source, "price") ?? get(source, "lowPrice"), currency) ??
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

function describe(node: Json, listed: boolean, element: Element | null = null): Described {
  const variants = list(get(node, "hasVariant")).filter(isObject);
  const variant = variants[0];
  return {
    name: words(get(node, "name")),
    url: String(addresses(get(node, "url") ?? get(node, "@id"))[0] ?? ""),
    images: addresses(get(node, "image") ?? (variant && get(variant, "image"))),
    color: words(get(node, "color")),
    category: words(get(node, "category")),
    price:
      offerPrice(get(node, "offers") ?? get(node, "price")) ??
      offerPrice(variants.map((one) => first(get(one, "offers")))),
    listed,
    element,
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

/** Products in JSON-LD. Walks breadth first, so that the bounds cut the deep end of hostile data. */
function jsonProducts(doc: Document): Described[] {
  const found: Described[] = [];
  let queue: { value: unknown; listed: boolean }[] = [];
  for (const script of [...doc.querySelectorAll('script[type*="ld+json" i]')].slice(0, MOST_SCRIPTS)) {
    const text = script.textContent ?? "";
    if (text.length <= LONGEST_SCRIPT) queue.push({ value: readJson(text), listed: false });
  }
  let seen = 0;
  for (let depth = 0; depth < DEEPEST && queue.length > 0; depth++) {
    const next: typeof queue = [];
    for (const { value, listed } of queue) {
      if (++seen > MOST_OBJECTS) return found;
      if (Array.isArray(value)) {
        for (const entry of value.slice(0, MOST_OBJECTS))
          if (typeof entry === "object") next.push({ value: entry, listed });
      } else if (isObject(value)) {
        if (isProduct(value)) found.push(describe(value, listed));
        else
          for (const key of [
            "@graph",
            "mainEntity",
            "itemListElement",
            "item",
            "hasPart",
            "about",
            "mainEntityOfPage",
          ])
            if (isObject(get(value, key)) || Array.isArray(get(value, key)))
              next.push({ value: get(value, key), listed: listed || key === "itemListElement" });
      }
    }
    queue = next;
  }
  return found;
}

/** The value of a property in the markup, by microdata or RDFa; not one of a thing nested deeper. */
function markupValue(root: Element, name: string): string {
  for (const holder of root.querySelectorAll(
    `[itemprop~="${name}"],[property~="${name}"],[property~="schema:${name}"]`,
  )) {
    const owner = holder.parentElement?.closest("[itemscope],[typeof]");
    if (
      owner &&
      owner !== root &&
      !/offer/i.test(`${owner.getAttribute("itemtype")}${owner.getAttribute("typeof")}`)
    )
      continue;
    const value = ["content", "href", "src"].map((key) => holder.getAttribute(key)).find(Boolean);
    return value ?? holder.textContent ?? "";
  }
  return "";
}

/** Products in microdata and RDFa; each carries its element. */
const markupProducts = (doc: Document): Described[] =>
  [
    ...doc.querySelectorAll(
      '[itemscope][itemtype*="schema.org/Product" i],[typeof~="Product"],[typeof~="schema:Product"]',
    ),
  ]
    .slice(0, MOST_OBJECTS)
    .map((element) => {
      const value = (name: string) => markupValue(element, name);
      const offers = { price: value("price") || value("lowPrice"), priceCurrency: value("priceCurrency") };
      const node = {
        name: value("name"),
        url: value("url"),
        image: value("image"),
        color: value("color"),
        category: value("category"),
        offers,
      };
      return describe(node, false, element);
    });

const meta = (doc: Document, name: string): string =>
  doc.querySelector(`meta[property="${name}"],meta[name="${name}"]`)?.getAttribute("content") ?? "";

/** The product that a page says it is, by Open Graph. */
function openGraphProduct(doc: Document): Described[] {
  if (!/product/i.test(meta(doc, "og:type")) && !meta(doc, "product:price:amount")) return [];
  const price = (part: string) => meta(doc, `product:price:${part}`) || meta(doc, `og:price:${part}`);
  const node = {
    name: meta(doc, "og:title"),
    url: meta(doc, "og:url"),
    image: meta(doc, "og:image"),
    color: meta(doc, "product:color"),
    category: meta(doc, "product:category"),
    offers: { price: price("amount"), priceCurrency: price("currency") },
  };
  return [describe(node, false)];
}

/** Everything that a document's data says about products, strongest source first. */
export const describedProducts = (doc: Document): readonly Described[] => [
  ...jsonProducts(doc),
  ...markupProducts(doc),
  ...openGraphProduct(doc),
];
