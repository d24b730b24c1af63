import { expected, expectedMain, type PageCase } from "./page-case.ts";

const GRID = "<style>.g{display:grid;grid-template-columns:repeat(3,240px);gap:20px}</style>";
const BIG = (slug: string): string => `<img src="/i/${slug}.jpg" width="400" height="500">`;
const small = (slug: string): string => `<img src="/i/${slug}.jpg" width="220" height="280">`;

/** Product pages as one person writes them. */
export const PRODUCT_PAGES_BY_HAND: readonly PageCase[] = [
  {
    name: "a product page whose name has a class and no heading, while a heading names the notes below",
    head: "<title>Tallow &amp; Finch</title>",
    body: `<div><div>${BIG("parka")}</div><div><div class="product_name">Parka Linden</div><span>€149.00</span><form method="post" action="/basket/put"><button>Add to basket</button></form></div></div><h1>Delivery and returns</h1><p>Within two weeks.</p>`,
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
  {
    name: "a product page with a heading of the second rank and one word that buys",
    lang: "it",
    body: `<div><div>${BIG("borsa")}</div><div><h2>Borsa Ontano</h2><p>Fatta a mano.</p><div>€ 30.00</div><a href="#ordini" class="btn">Acquista</a></div></div>`,
    kind: "product",
    products: [expectedMain("Borsa Ontano | 30 | EUR | borsa.jpg")],
    layout: true,
  },
  {
    name: "a product page that takes requests only, its name known to its title",
    lang: "tr",
    head: "<title>Aura Elbise | Kavak Moda</title>",
    body: `<section class="product-detail"><div>${BIG("aura")}</div><div class="product-info"><h1>AURA ELBISE</h1><div>₺12.900</div><button>RANDEVU TALEBİ</button></div></section>`,
    kind: "product",
    products: [expectedMain("AURA ELBISE | 12900 | TRY | aura.jpg")],
    layout: true,
  },
  {
    name: "a product page that is told by its markup alone",
    lang: "pt",
    head: "<title>Loja</title>",
    body: `<main><section class="product-detail"><div>${BIG("saia")}</div><div class="info"><h1>Saia Amieiro</h1><div>R$ 189,90</div><button>Consultar</button></div></section></main>`,
    kind: "product",
    products: [expectedMain("Saia Amieiro | 189.9 | BRL | saia.jpg")],
    layout: true,
  },
  {
    name: "a product page named in the fourth rank beside notes in the third, bought by a plain link",
    lang: "pl",
    head: "<title>Sklep</title>",
    body: `<div class="produkt"><figure>${BIG("plecak")}</figure><div><h4>Plecak Jawor</h4><p>Waga 900 g</p></div><div><h3>Dostawa do 2 dni roboczych</h3><h3>230zł</h3><a href="/koszyk.html">Dodaj do koszyka</a></div></div><div><h1>Opis produktu</h1><p>Mocny.</p></div><div><h1>Opinie o nas</h1></div>`,
    kind: "product",
    products: [expectedMain("Plecak Jawor | 230 | PLN | plecak.jpg")],
    layout: true,
  },
  {
    name: "a banner above a product whose price is told once more below",
    lang: "nl",
    head: "<title>Product Linde D-40</title>",
    body: `<img src="/i/banner.jpg" width="1100" height="200"><div><img src="/i/tas.jpg" width="300" height="300"><div><h2>Linde D-40</h2><p>Є899</p><form action="./wagen"><button name="action" value="add_to_cart">In winkelwagen</button></form></div></div><div><div><h2>Kenmerken</h2><p>Prijs: €899<br>Kleur: naturel</p></div></div>`,
    kind: "product",
    products: [expectedMain("Linde D-40 | 899 | EUR | tas.jpg")],
    layout: true,
  },
  {
    name: "a heading of any product's page beside the one that names this",
    url: "http://shop.localhost/produkt.html?id=73",
    head: "<title>Product page</title>",
    body: `<section>${BIG("trousers")}</section><section><h1>Product information</h1><p>Inventory number 73</p></section><section><h2>Alder</h2></section><section><h2>Alder trousers</h2><button>Add to basket</button></section>`,
    kind: "product",
    products: [expectedMain("Alder trousers | | | trousers.jpg")],
    layout: true,
  },
  {
    name: "a price in two parts with a class of its own, the copy of a slide before the first",
    lang: "ja",
    url: "http://shop.localhost/products/detail/14",
    body: `<div><div style="width:400px;overflow:hidden"><div style="width:1300px;display:flex;margin-left:-400px"><div class="slide-cloned" aria-hidden="true">${BIG("back")}</div><div>${BIG("front")}</div><div aria-hidden="true">${BIG("back")}</div></div></div><h2>麻のシャツ</h2><div><span class="unit">¥</span><span class="price__price">9720</span> ～ <span class="unit">¥</span><span class="price__price">10800</span></div><button>カートに入れる</button></div>`,
    kind: "product",
    products: [expectedMain("麻のシャツ | 9720 | JPY | front.jpg")],
    layout: true,
  },
  {
    name: "wares that others bought too, without prices, shown by the same script inside the product's own form",
    lang: "de",
    url: "http://shop.localhost/product_info.php?products_id=27",
    head: GRID,
    body: `<form><h1>Filzfinken Arve</h1><div>59.90CHF</div><img src="/i/finken.jpg" width="300" height="240"><button>In den Warenkorb</button><table><tr>${["hut", "socken", "sohlen"].map((slug, i) => `<td><a href="/product_info.php?products_id=${i + 30}"><img src="/i/${slug}.jpg" width="100" height="80"></a><br><a href="/product_info.php?products_id=${i + 30}">Filz${slug} Arve</a></td>`).join("")}</tr></table></form>`,
    kind: "product",
    products: [
      expectedMain("Filzfinken Arve | 59.9 | CHF | finken.jpg"),
      ...expected(
        "Filzhut Arve | | | hut.jpg",
        "Filzsocken Arve | | | socken.jpg",
        "Filzsohlen Arve | | | sohlen.jpg",
      ),
    ],
    layout: true,
  },
  {
    name: "the product itself among those seen lately, without a link",
    url: "http://shop.localhost/shop/linen-pouch-49",
    head: GRID,
    body: `<div><img src="/i/pouch-large.jpg" width="400" height="400"><h1>Linen pouch</h1><b>€30.00</b><button>Add to cart</button></div><section class="g">${["pouch", "brush"].map((slug, i) => `<div class="product-card"><a href="#">${small(slug)}</a><h6>Linen ${slug}</h6><b>€${30 + i * 5}.00</b><button>Add to cart</button></div>`).join("")}</section>`,
    kind: "product",
    products: [
      expectedMain("Linen pouch | 30 | EUR | pouch-large.jpg"),
      ...expected("Linen brush | 35 | EUR | brush.jpg"),
    ],
    layout: true,
  },
];
