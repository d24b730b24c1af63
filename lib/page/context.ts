import { allIn } from "./ancestors.ts";
import { ANY_COUNTRY, currencyCode, type MoneyHint } from "./currency.ts";
import { type Furniture, findFurniture } from "./furniture.ts";
import type { Places } from "./places.ts";
import { nameKey } from "./plain-text.ts";
import { type Described, learnProducts } from "./structured.ts";

/** What a whole document says of its products. */
export interface Context {
  readonly doc: Document;
  /** What is read: the document, or what it added. */
  readonly scopes: Places["scopes"];
  readonly language: string;
  readonly hint: MoneyHint;
  /** What a short text says of money; kept with what was read first, so that the second half needs no second copy. */
  readonly readTag: Places["readTag"];
  readonly furniture: Furniture;
  readonly described: readonly Described[];
  /** What the data says of the product with this link or name, if anything. */
  describedAs(link: string | null, title: string): Described | undefined;
  /** What the page is a list of, in words: its main heading and breadcrumbs. */
  readonly subject: string;
}

/** What concerns all readings of a document. */
interface Known extends Omit<Context, "scopes" | "furniture" | "readTag"> {
  /** Adds what the data in these elements says. */
  learn(scopes: Places["scopes"]): Generator<undefined, void, undefined>;
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

/** Calling codes (ITU-T E.164) of countries whose money has a sign in common with others'. */
const CALLED =
  "20EG 45DK 46SE 47NO 52MX 54AR 56CL 57CO 61AU 64NZ 65SG 852HK 886TW 92PK 94LK 977NP 971AE 212MA".split(" ");

/** The country of the first telephone number that a page links to, where its money shares a sign; else "". */
function calledIn(doc: Document): string {
  const link = doc.querySelector('[href^="tel:+"],[href*="//wa.me/"]')?.getAttribute("href");
  const number = link?.replace(/\D+/, "") ?? "";
  return CALLED.find((code) => number.startsWith(code.slice(0, -2)))?.slice(-2) ?? "";
}

/** Characters of a page in which its language is looked for. */
const MOST_TEXT = 20_000;

/** The country in whose language a page without a telling one is written, of those whose money is crowns; else "". */
function crownsOf({ body }: Document): string {
  const text = body.textContent.slice(0, MOST_TEXT).toLowerCase();
  if (!/\d ?kr\b|\bkr\.? ?\d/.test(text)) return "";
  if (/[äö]/.test(text)) return "SE";
  const times = (word: RegExp) => text.match(word)?.length ?? 0;
  if (!/[æø]/.test(text)) return "";
  return times(/\b(af|kurv|køb|til dig|nyhed)\b/g) >= times(/\b(av|handlekurv|kjøp|til deg|nyhet)\b/g)
    ? "DK"
    : "NO";
}

const pathOf = (address: string, base: string): string => {
  const url = address ? URL.parse(address, base) : null;
  return url && url.pathname.length > 1 ? url.pathname.replace(/\/$/, "") : "";
};

/** ISO 4217 codes that the markup declares. */
const declaredCodes = (doc: Document): readonly string[] =>
  allIn(doc, '[itemprop="priceCurrency"],meta[property$="price:currency"]')
    .slice(0, 20)
    .flatMap((element) => currencyCode(element.getAttribute("content") ?? element.textContent) ?? []);

/** ISO 3166 codes of the countries that the language, the address and the telephone number of a page point at. */
function regionsOf(doc: Document, language: string): readonly string[] {
  const [spoken = "", region = ""] = language.split(/[-_]/);
  const domain = doc.location?.hostname.split(".").at(-1) ?? "";
  const countries = [
    region,
    domain.length === 2 ? domain : "",
    HOME[spoken.toLowerCase()],
    calledIn(doc),
    /^(en.*)?$/i.test(language) ? crownsOf(doc) : "",
  ]
    .map((code) => code?.toUpperCase() ?? "")
    .filter(Boolean);
  return countries.length === 0 && /^es$/i.test(spoken) ? [ANY_COUNTRY] : countries;
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
  yield;
  const language = doc.documentElement.lang;
  const trail = doc.querySelectorAll('h1,[class*="breadcrumb" i] a');
  return {
    doc,
    language,
    hint: { codes, regions: regionsOf(doc, language) },
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
export function* readContext({
  doc,
  scopes,
  whole,
  readTag,
}: Places): Generator<undefined, Context, undefined> {
  const before = whole ? undefined : known.get(doc);
  const read = before ?? (yield* readDocument(doc));
  known.set(doc, read);
  if (before) yield* before.learn(scopes);
  return { ...read, scopes, readTag, furniture: findFurniture() };
}
