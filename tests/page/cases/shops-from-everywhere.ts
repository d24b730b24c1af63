import { expected, expectedMain, type PageCase } from "./page-case.ts";

const picture = (slug: string): string => `<img src="/i/${slug}.jpg" width="220" height="280">`;
const GRID = "<style>.g{display:grid;grid-template-columns:repeat(3,240px);gap:20px}</style>";

/** Pages of shops of many countries and many hands. */
export const SHOPS_FROM_EVERYWHERE: readonly PageCase[] = [
  {
    name: "rupees of the country that a shop's telephone number is in",
    lang: "en",
    head: GRID,
    body: `<header><nav><a href="tel:+92 300 5550142">Call us</a></nav></header><div class="g">${["shawl", "kurta"].map((slug, i) => `<div><a href="/products/${slug}">${picture(slug)}<h3>Rowan ${slug}</h3></a><span>Rs. ${2 + i},450</span></div>`).join("")}</div>`,
    kind: "listing",
    products: expected("Rowan shawl | 2450 | PKR | shawl.jpg", "Rowan kurta | 3450 | PKR | kurta.jpg"),
  },
  {
    name: "dollars of the country that a messenger's number is in",
    lang: "es",
    head: GRID,
    body: `<div class="g">${["ruana", "mochila"].map((slug, i) => `<div><a href="/producto/${slug}">${picture(slug)}<h3>${slug} Aliso</h3></a><span>$ ${85 + i}.000</span></div>`).join("")}</div><a href="https://wa.me/573005550142">Escríbenos</a>`,
    kind: "listing",
    products: expected("ruana Aliso | 85000 | COP | ruana.jpg", "mochila Aliso | 86000 | COP | mochila.jpg"),
  },
  {
    name: "a product page whose name has a class and no heading, while a heading names the notes below",
    head: "<title>Tallow &amp; Finch</title>",
    body: `<div><div><img src="/i/parka.jpg" width="400" height="500"></div><div><div class="product_name">Parka Linden</div><span>€149.00</span><form method="post" action="/basket/put"><button>Add to basket</button></form></div></div><h1>Delivery and returns</h1><p>Within two weeks.</p>`,
    kind: "product",
    products: [expectedMain("Parka Linden | 149 | EUR | parka.jpg")],
    layout: true,
  },
  {
    name: "a product page with a quantity and a button, its price told on demand",
    head: "<title>Oak settle | Tallow &amp; Finch</title>",
    body: `<div><img src="/i/settle.jpg" width="400" height="300"><div><h1>Oak settle</h1><p>Price on request</p><form><input type="number" name="qty" value="1"><button>Add to cart</button></form></div></div>`,
    kind: "product",
    products: [expectedMain("Oak settle | | | settle.jpg")],
  },
];
