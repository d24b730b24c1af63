import { allIn } from "./ancestors.ts";
import { ANY_COUNTRY, currencyCode, type MoneyHint } from "./currency.ts";
import { type Furniture, findFurniture } from "./furniture.ts";
import { nameKey } from "./plain-text.ts";
import { readTag, type Tag } from "./price.ts";
import { type Described, learnProducts } from "./structured.ts";

/** What a whole document says of its products. */
export interface Context {
  readonly doc: Document;
  /** What is read: the document, or what it added. */
  readonly scopes: readonly ParentNode[];
  readonly language: string;
  readonly hint: MoneyHint;
  /** What a short text says of money here; kept with what was read first, so that the second half needs no second copy. */
  readonly readTag: (text: string) => Tag;
  readonly furniture: Furniture;
  readonly described: readonly Described[];
  /** What the data says of the product with this link or name, if anything. */
  describedAs(link: string | null, title: string): Described | undefined;
  /** What the page is a list of, in words: its main heading and breadcrumbs. */
  readonly subject: string;
  /** Adds what the data in these elements says. */
  learn(scopes: readonly Element[]): Generator<undefined, void, undefined>;
}

/** Products that a page's data may describe, in all; more come from a hostile page. */
const MOST_DESCRIBED = 6000;

/** Countries of languages spoken chiefly in one; for a page whose `lang` names none. ISO 639-1 to ISO 3166. */
const HOME: Readonly<Record<string, string>> = {
  sv: "SE",
  da: "DK",
  nb: "NO",
  nn: "NO",
  no: "NO",
  is: "IS",
  ja: "JP",
  zh: "CN",
};

const pathOf = (address: string, base: string): string => {
  const url = address ? URL.parse(address, base) : null;
  return url && url.pathname.length > 1 ? url.pathname.replace(/\/$/, "") : "";
};

/** ISO 4217 codes that the markup declares. */
const declaredCodes = (doc: Document): readonly string[] =>
  allIn(doc, '[itemprop="priceCurrency"],meta[property$="price:currency"]')
    .slice(0, 20)
    .flatMap((element) => currencyCode(element.getAttribute("content") ?? element.textContent) ?? []);

/** ISO 3166 codes of the countries that the language and the address of a page point at. */
function regionsOf({ location }: Document, language: string): readonly string[] {
  const [spoken = "", region = ""] = language.split(/[-_]/);
  const domain = location?.hostname.split(".").at(-1) ?? "";
  const countries = [region, domain.length === 2 ? domain : "", HOME[spoken.toLowerCase()] ?? ""].filter(
    Boolean,
  );
  return countries.length === 0 && /^es$/i.test(spoken)
    ? [ANY_COUNTRY]
    : countries.map((code) => code.toUpperCase());
}

/** What was read of a document, so that what it adds needs no second reading of the rest. */
const known = new WeakMap<Document, Context>();

/** Reads the parts of a document that concern all its products. */
export function* readContext(doc: Document): Generator<undefined, Context, undefined> {
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
  yield;
  const language = doc.documentElement.lang;
  const hint = { codes, regions: regionsOf(doc, language) };
  const trail = doc.querySelectorAll('h1,[class*="breadcrumb" i] a');
  const context: Context = {
    doc,
    scopes: [doc],
    language,
    hint,
    readTag: (text) => readTag(text, hint),
    furniture: findFurniture(),
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
  known.set(doc, context);
  return context;
}

/** What is known of a document, and of what it added. */
export function* addedContext(
  doc: Document,
  added: readonly Element[],
): Generator<undefined, Context, undefined> {
  const context = known.get(doc) ?? (yield* readContext(doc));
  yield* context.learn(added);
  return { ...context, scopes: added, furniture: findFurniture() };
}
