import { currencyCode, type MoneyHint } from "./currency.ts";
import { type Furniture, findFurniture } from "./furniture.ts";
import { nameKey } from "./plain-text.ts";

import { type Described, describedProducts } from "./structured.ts";

/** What a whole document says, read once per reading of the page. */
export interface Context {
  readonly doc: Document;
  readonly language: string;
  readonly hint: MoneyHint;
  readonly furniture: Furniture;
  readonly described: readonly Described[];
  /** What the data says of the product with this link or name, if anything. */
  describedAs(link: string | null, title: string): Described | undefined;
  /** What the page is a list of, in words: its main heading and breadcrumbs. */
  readonly subject: string;
}

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

function moneyHint(doc: Document, language: string, described: readonly Described[]): MoneyHint {
  const declared = [...doc.querySelectorAll('[itemprop="priceCurrency"],meta[property$="price:currency"]')]
    .slice(0, 20)
    .map((element) => currencyCode(element.getAttribute("content") ?? element.textContent));
  const codes = [...described.map((one) => one.price?.currency), ...declared].flatMap((code) => code ?? []);
  const [spoken = "", region = ""] = language.split(/[-_]/);
  const domain = doc.location?.hostname.split(".").at(-1) ?? "";
  const regions = [region, domain.length === 2 ? domain : "", HOME[spoken.toLowerCase()] ?? ""];
  return { codes: [...new Set(codes)], regions: regions.filter(Boolean).map((code) => code.toUpperCase()) };
}

/** Reads the parts of a document that concern all its products. */
export function readContext(doc: Document): Context {
  const language = doc.documentElement.lang;
  const described = describedProducts(doc);
  const byPath = new Map<string, Described>();
  const byName = new Map<string, Described>();
  for (const one of described) {
    const path = pathOf(one.url, doc.baseURI);
    if (path && !byPath.has(path)) byPath.set(path, one);
    const name = nameKey(one.name);
    if (name && !byName.has(name)) byName.set(name, one);
  }
  const trail = doc.querySelectorAll('h1,[class*="breadcrumb" i] a');
  return {
    doc,
    language,
    hint: moneyHint(doc, language, described),
    furniture: findFurniture(),
    described,
    describedAs: (link, title) =>
      byName.get(nameKey(title)) ??
      (byPath.size > 0 ? byPath.get(pathOf(link ?? "", doc.baseURI)) : undefined),
    subject: [...trail]
      .slice(0, 6)
      .map((element) => element.textContent?.slice(0, 80) ?? "")
      .reverse()
      .join("\n"),
  };
}
