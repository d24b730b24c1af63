import { expected, type PageCase } from "./page-case.ts";

const STYLE =
  "<style>.g{display:flex;gap:16px}.g img,.bg{width:240px;height:300px}.bg{background-size:cover}</style>";

type Row = readonly [slug: string, name: string, price: string];
const ROWS: readonly Row[] = [
  ["shirt", "Hemp work shirt", "€64"],
  ["vest", "Duck canvas vest", "€88"],
];
const BOTH = expected("Hemp work shirt | 64 | EUR | shirt", "Duck canvas vest | 88 | EUR | vest");

const listing = (name: string, tile: (...row: Row) => string, more: Partial<PageCase> = {}): PageCase => ({
  name,
  head: STYLE,
  body: `<header><a href="/">Reed</a><a href="/cart">Cart (0)</a></header><main><h1>Workwear</h1><div class="g">${ROWS.map((row) => tile(...row)).join("")}</div></main>`,
  kind: "listing",
  products: BOTH,
  ...more,
});

const linked = (slug: string, inside: string): string =>
  `<div><a href="/w/${slug}"><img src="/i/${slug}.jpg"></a>${inside}</div>`;

/** Tiles that are told from what is no ware, or named, by little: a call, a cursor, a countdown, a brand. */
export const TILES_BY_WHAT_THEY_SAY: readonly PageCase[] = [
  listing(
    "one call to see more, picture and name without a link",
    (slug, name, price) =>
      `<div><img src="/i/${slug}.jpg"><h4>${name}</h4><p>${price}</p><a href="/w/${slug}">Learn more</a></div>`,
  ),
  listing(
    "a call in a language of few shops",
    (slug, name, price) =>
      `<div><img src="/i/${slug}.jpg"><h4>${name}</h4><p>${price}</p><a href="/w/${slug}">Περισσότερα</a></div>`,
    { lang: "el" },
  ),
  listing(
    "tiles that open by script, shown by the pointer alone",
    (slug, name, price) =>
      `<div style="cursor:pointer"><img src="/i/${slug}.jpg"><h4>${name}</h4><p>${price}</p></div>`,
    { layout: true },
  ),
  listing("a sale that ends soon, and when it will be there", (slug, name, price) =>
    linked(slug, `<h4>${name}</h4><p>${price}</p><p>02:14:09</p><p>Order in 3 hrs, get it Fri, Mar 14</p>`),
  ),
  listing("the brand as heading, the name below it, both in the picture's words", (slug, name, price) =>
    linked(slug, `<h3>Fehnwerk</h3><p>${name}</p><p>${price}</p>`).replace(
      "<img ",
      `<img alt="Fehnwerk ${name}" `,
    ),
  ),
  listing("the lowest of several prices, a brand of one word and a kind", (slug, name, price) =>
    linked(slug, `<h3>${name}</h3><p>Fehnwerk, five colours</p><p>From ${price}</p>`),
  ),
  listing("a code and facts in a row beside the name", (slug, name, price) =>
    linked(slug, `<p>${name}</p><p>Size M · New with tags</p><p>${price}</p>`),
  ),
  listing(
    "stickers over the picture, in Turkish, the name told by the link",
    (slug, name, price) =>
      `<div style="position:relative"><span style="position:absolute">KARGO BEDAVA</span><a href="/w/${slug}" title="${name}"><img src="/i/${slug}.jpg"></a><div>${name}</div><p>${price}</p></div>`,
    { lang: "tr" },
  ),
  listing("the brand in an element of its own in the heading, the same in all", (slug, name, price) =>
    linked(slug, `<h3><span>Fehnwerk</span> <span>${name}</span></h3><p>${price}</p>`),
  ),
];
