import type { PageKind, ProductRole } from "../../../lib/page/product.ts";

/** What a person sees on one invented page: the products on offer, and nothing else. */
export interface ExpectedProduct {
  readonly title: string;
  /** Amount and currency; null: none shown or told. */
  readonly price: readonly [amount: number, currency: string | null] | null;
  /** A part of the address of the picture that shows. */
  readonly picture: string;
  readonly role?: ProductRole;
}

export interface PageCase {
  /** What real pages do, in a few words. */
  readonly name: string;
  readonly lang?: string;
  readonly url?: string;
  readonly head?: string;
  readonly body: string;
  readonly kind: PageKind;
  readonly products: readonly ExpectedProduct[];
  /** True where only a real browser knows: style sheets, boxes. */
  readonly layout?: boolean;
}

/** The page as its store sends it. */
export const htmlOf = ({ lang = "en", head = "", body }: PageCase): string =>
  `<!doctype html><html lang="${lang}"><head><meta charset="utf-8">${head.includes("<title>") ? "" : "<title>Tallow &amp; Finch</title>"}${head}</head><body>${body}</body></html>`;

/** A product from a row: "Title | amount | currency | picture". */
function productIn(row: string): ExpectedProduct {
  const [title = "", amount = "", currency = "", picture = ""] = row.split("|").map((cell) => cell.trim());
  return { title, price: amount ? [Number(amount), currency || null] : null, picture };
}

/** The products that such rows tell of. */
export const expected = (...rows: readonly string[]): readonly ExpectedProduct[] => rows.map(productIn);

/** The product that a page is about, from such a row. */
export const expectedMain = (row: string): ExpectedProduct => ({ ...productIn(row), role: "main" });

/** A picture as wide as a tile. */
export const picture = (slug: string): string => `<img src="/i/${slug}.jpg" width="220" height="280">`;
/** A picture as large as that of a product's own page. */
export const BIG = (slug: string): string => `<img src="/i/${slug}.jpg" width="400" height="500">`;
/** Lays what has the class `g` out in three columns. */
export const GRID = "<style>.g{display:grid;grid-template-columns:repeat(3,240px);gap:20px}</style>";

/** One member of a list for each name, with its place in the list. */
export const each = (names: readonly string[], member: (name: string, i: number) => string): string =>
  names.map(member).join("");
