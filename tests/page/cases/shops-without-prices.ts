import { expected, expectedMain, GRID, type PageCase } from "./page-case.ts";

const HEAD = `<header><a href="/"><b>Thistle &amp; Tulle</b></a><a href="/collections">Collections</a><a href="/fittings">Fittings</a></header>`;
const NAMES = ["Rosalind", "Imogen", "Cordelia", "Portia"];
const ALL = expected(...NAMES.map((name) => `${name} | | | ${name}.jpg`));

/** Tiles of one kind: their class, where they lead to, and what each is called. */
const tiles = (kind: string, folder: string, names: readonly string[] = NAMES): string =>
  names
    .map(
      (name) =>
        `<div class="entry ${kind}"><a href="${folder}/${name.toLowerCase()}"><img src="/i/${name}.jpg" width="300" height="400"></a><p><a href="${folder}/${name.toLowerCase()}">${name}</a></p></div>`,
    )
    .join("");

const collection = (name: string, body: string, more: Partial<PageCase> = {}): PageCase => ({
  name,
  url: "http://shop.localhost/collections/the-orchard",
  body: `${HEAD}<main><h1>The orchard</h1><div class="row">${body}</div><div class="tales">${tiles("tale", "/brides", ["Orla and Finn", "Maud", "Ines"])}</div></main>`,
  kind: "none",
  products: [],
  ...more,
});

/** The one gown that a page is about, by its data, above others of its collection. */
const gown = (name: string, more: string, others: PageCase["products"] = []): PageCase => ({
  name,
  url: "http://shop.localhost/gowns/viola",
  head: `<script type="application/ld+json">${JSON.stringify({ "@type": "Product", name: "Viola gown", image: "/i/viola.jpg" })}</script>`,
  body: `${HEAD}<main><article><img src="/i/viola.jpg" width="500" height="700"><div><h1>Viola</h1><p>Price on request</p><a href="/fittings">Book a fitting</a></div></article><section><h2>More</h2><div>${more}</div></section></main>`,
  kind: "product",
  products: [expectedMain("Viola | | | viola.jpg"), ...others],
});

/** Shops that show no price at all, and what looks like them. */
export const SHOPS_WITHOUT_PRICES: readonly PageCase[] = [
  collection("a collection whose markup names products, all in one place", tiles("type-product", "/gowns"), {
    kind: "listing",
    products: ALL,
  }),
  collection("no product: a collection of what nothing names a product", tiles("type-page", "/gowns")),
  collection(
    "no product: parts of a collection, which lie below it",
    tiles("product-tile", "/collections/the-orchard"),
  ),
  collection("no product: two tiles of a kind", tiles("type-product", "/gowns", NAMES.slice(0, 2))),
  collection("no product: pages right under the store's address", tiles("type-product", "")),
  collection(
    "no product: a page that is no collection by its address, with an amount beside a picture",
    `${tiles("type-product", "/women")}<div><img src="/i/room.jpg" width="300" height="400"><p>A fitting is £25</p></div>`,
    { url: "http://shop.localhost/spring" },
  ),
  gown("further gowns where the one lies that the page is about", tiles("", "/gowns"), ALL),
  gown("a gown's page with stories from elsewhere", tiles("", "/brides")),
  gown(
    "a gown's page with pictures that lead back to it",
    tiles("", "/gowns", ["viola#1", "viola#2", "viola#3"]),
  ),
  {
    name: "tiles that are carousels themselves, with copies of their slides",
    head: GRID,
    body: `<div class="g">${["Rib beanie", "Mesh cap", "Sun visor"].map((name, i) => `<div class="product_box"><a href="/products/hat-${i}"><div class="slick-slider">${["a", "b", "a", "b", "a", "b"].map((side, n) => `<div class="slick-slide${n === 0 ? "" : " slick-cloned"}" ${n === 0 ? "" : 'style="display:none"'}><img src="/i/hat-${i}-${side}.jpg" width="220" height="280"></div>`).join("")}</div><h3>${name}</h3></a></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Rib beanie | | | hat-0-a.jpg",
      "Mesh cap | | | hat-1-a.jpg",
      "Sun visor | | | hat-2-a.jpg",
    ),
  },
];
