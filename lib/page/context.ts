import { allIn } from "./dom/ancestors.ts";
import { type Furniture, findFurniture } from "./dom/furniture.ts";
import { nameKey } from "./dom/plain-text.ts";
import { countriesOf } from "./money/countries.ts";
import { currencyCode, type MoneyHint } from "./money/currency.ts";
import type { Places } from "./places.ts";
import { type Described, learnProducts } from "./structured.ts";

/** What a whole document says of its products. */
export interface Context {
  readonly doc: Document;
  /** What is read: the document, or what it added. */
  readonly scopes: Places["scopes"];
  readonly language: string;
  readonly hint: MoneyHint;
  readonly furniture: Furniture;
  readonly described: readonly Described[];
  /** What the data says of the product with this link or name, if anything. */
  describedAs(link: string | null, title: string): Described | undefined;
  /** What the page is a list of, in words: its main heading and breadcrumbs. */
  readonly subject: string;
}

/** What concerns all readings of a document. */
interface Known extends Omit<Context, "scopes" | "furniture"> {
  /** Adds what the data in these elements says. */
  learn(scopes: Places["scopes"]): Generator<undefined, void, undefined>;
}

/** Products that a page's data may describe, in all; more come from a hostile page. */
const MOST_DESCRIBED = 6000;

const pathOf = (address: string, base: string): string => {
  const url = address ? URL.parse(address, base) : null;
  return url && url.pathname.length > 1 ? url.pathname.replace(/\/$/, "") : "";
};

/** ISO 4217 codes that the markup declares. */
const declaredCodes = (doc: Document): readonly string[] =>
  allIn(doc, '[itemprop="priceCurrency"],meta[property$="price:currency"]')
    .slice(0, 20)
    .flatMap((element) => currencyCode(element.getAttribute("content") ?? element.textContent) ?? []);

/** Scripts of a page, and characters of each, in which its currency is looked for. */
const MOST_SCRIPTS = 40;
const LONGEST_SCRIPT = 20_000;
/** How scripts name it: "currency": "AUD", currencyCode='AUD', currency = {"active":"AUD". */
const SCRIPT_CODE = /currency(?:_?code)?["']?\s*[:=]\s*(?:\{\s*["']active["']\s*:\s*)?["']([A-Z]{3})["']/gi;

/** The one currency that the scripts of a page name; none where they name several, as those do that convert. */
function* scriptCodes(doc: Document): Generator<undefined, readonly string[], undefined> {
  const found = new Set<string>();
  for (const { textContent } of allIn(doc, "script:not([src])").slice(0, MOST_SCRIPTS)) {
    yield;
    for (const [, code = ""] of textContent.slice(0, LONGEST_SCRIPT).matchAll(SCRIPT_CODE)) found.add(code);
  }
  const codes = [...found].flatMap((code) => currencyCode(code) ?? []);
  return codes.length === 1 ? codes : [];
}

/** The language that a page says it is in: of its text, else of its head. BCP 47, or as Open Graph writes it ("zh_TW"). */
function languageOf(doc: Document): string {
  const named = doc.querySelector('meta[http-equiv="content-language" i],meta[property="og:locale"]');
  return doc.documentElement.lang || (named?.getAttribute("content") ?? "").replace("_", "-");
}

/** What was read of a document, so that what it adds needs no second reading of the rest. */
const known = new WeakMap<Document, Known>();

/** Reads the parts of a document that concern all its products. */
function* readDocument(doc: Document): Generator<undefined, Known, undefined> {
  const described: Described[] = [];
  const byPath = new Map<string, Described>();
  const byName = new Map<string, Described>();
  const codes = new Set<string>();
  const learn = (one: Described) => {
    const path = pathOf(one.url, doc.baseURI);
    const name = nameKey(one.name);
    if (described.length >= MOST_DESCRIBED || (byName.get(name) ?? byPath.get(path))) return;
    described.push(one);
    if (path) byPath.set(path, one);
    if (name) byName.set(name, one);
    if (one.price?.currency) codes.add(one.price.currency);
  };
  yield* learnProducts([doc], learn);
  yield;
  for (const code of declaredCodes(doc)) codes.add(code);
  if (codes.size === 0) for (const code of yield* scriptCodes(doc)) codes.add(code);
  yield;
  const language = languageOf(doc);
  const trail = doc.querySelectorAll('h1,[class*="breadcrumb" i] a');
  return {
    doc,
    language,
    hint: { codes, regions: countriesOf(doc, language) },
    described,
    describedAs: (link, title) =>
      byName.get(nameKey(title)) ??
      (byPath.size > 0 ? byPath.get(pathOf(link ?? "", doc.baseURI)) : undefined),
    subject: [...trail]
      .slice(0, 6)
      .map((element) => element.textContent.slice(0, 80))
      .reverse()
      .join("\n"),
    learn: (scopes) => learnProducts(scopes, learn),
  };
}

/** What the document of these places says; where it was read before, no more than what was added is read. */
export function* readContext({ doc, scopes, whole }: Places): Generator<undefined, Context, undefined> {
  const before = whole ? undefined : known.get(doc);
  const read = before ?? (yield* readDocument(doc));
  known.set(doc, read);
  if (before) yield* before.learn(scopes);
  return { ...read, scopes, furniture: findFurniture() };
}
