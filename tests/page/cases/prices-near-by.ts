import { expected, expectedMain, type PageCase } from "./page-case.ts";

const STYLE =
  "<style>.p{display:flex;gap:20px}.big{width:480px;height:600px}.g{display:flex;gap:16px}.g img{width:240px;height:300px}.was{text-decoration:line-through}.pay{width:80px;height:50px}</style>";

const main = (name: string, beside: string, row: string, more: Partial<PageCase> = {}): PageCase => ({
  name,
  head: STYLE,
  body: `<header><a href="/">Oast</a><nav><a href="/sale">Sale from €19</a></nav></header><div class="p"><img class="big" src="/i/one.jpg"><div>${beside}</div></div>`,
  kind: "product",
  products: [expectedMain(row)],
  layout: true,
  ...more,
});

const card = (slug: string, name: string, price: string): string =>
  `<div class="c"><a href="/w/${slug}"><img src="/i/${slug}.jpg"></a><a href="/w/${slug}">${name}</a><span>${price}</span></div>`;

/** Amounts that stand near a product and are not its price, and prices that stand where none is looked for. */
export const PRICES_NEAR_BY: readonly PageCase[] = [
  main(
    "the price on the button alone, shipping folded away, instalments",
    `<h1>Wrap dress</h1><form action="/cart/add"><button type="submit">Add to bag — <b>$188</b></button></form><p>4 payments of $47.00</p><details><summary>Shipping</summary>Standard $8, express $22</details>`,
    "Wrap dress | 188 | USD | one.jpg",
  ),
  main(
    "the former price crossed out by the style sheet, each in its row",
    `<h1>Linen jacket</h1><table><tr><td>List</td><td><span class="was">€79</span></td></tr><tr><td>Ours</td><td><b>€59</b></td></tr><tr><td>Points</td><td>€1 points</td></tr></table><button>Add to cart</button>`,
    "Linen jacket | 59 | EUR | one.jpg",
  ),
  main(
    "shipping under a heading of its own, other colours with pictures",
    `<h1>Marsh dress</h1><p>€89.95</p><a href="/marsh-red"><img src="/i/red.jpg" width="60" height="80"></a><button>Add to bag</button><h3>Delivery</h3><p>Two days €4.95</p><p>One day €12.95</p>`,
    "Marsh dress | 89.95 | EUR | one.jpg",
  ),
  main(
    "marks of payment beside the price",
    `<h1>Tidal jumper</h1><div><span>€74.95</span><div><img class="pay" src="/i/pay-a.png"><img class="pay" src="/i/pay-b.png"></div></div><button>Add to bag</button>`,
    "Tidal jumper | 74.95 | EUR | one.jpg",
  ),
  main(
    "a bar that sticks to the window and says it all again",
    `<h1>Chore coat</h1><p>€120</p><button>Add to bag</button></div></div><div style="position:fixed;bottom:0"><img src="/i/one.jpg" width="60" height="80"><span>Chore coat</span><span>€120</span><button>Add to bag</button>`,
    "Chore coat | 120 | EUR | one.jpg",
  ),
  main(
    "the shop's name as heading, the product's in a table as the head has it",
    `<h1><a href="/">Oast</a></h1><table><tr><td>Name</td><td><b>Hop sack shirt</b></td></tr><tr><td>Price</td><td>€64</td></tr></table><a class="btn" href="#buy">Buy now</a>`,
    "Hop sack shirt | 64 | EUR | one.jpg",
    { head: `<meta property="og:title" content="Hop sack shirt">${STYLE}` },
  ),
  main(
    "a button in a language of its own, at an address of products",
    `<h1>Villatakki</h1><p>189,00 €</p><button>Ota omaksi</button>`,
    "Villatakki | 189 | EUR | one.jpg",
    { url: "http://shop.localhost/tuote/villatakki", lang: "fi" },
  ),
  main(
    "the price written largest, beside it the price without tax and the cost of shipping",
    `<h1>Ridge sweater</h1><p style="font-size:28px">€189</p><p>€156 net of tax</p><p>By bicycle €9</p><button>Add to bag</button>`,
    "Ridge sweater | 189 | EUR | one.jpg",
  ),
  main(
    "no heading but the shop's motto: the name in large letters, a link that buys",
    `<p style="font-size:40px">Aare coat</p><p>€1'290.00</p><p>Double cloth, hemmed by hand, in six weeks.</p><a href="/bag?add=aare">Add to bag</a></div></div><div><h1>Coats for many winters</h1><p><a href="/">Start</a> · <a href="/coats">Coats</a></p>`,
    "Aare coat | 1290 | EUR | one.jpg",
  ),
  {
    name: "prices of shipping in a folded tab under a picture",
    head: STYLE,
    body: `<main><div class="g">${card("vest", "Reed vest", "€49")}${card("hat", "Rush hat", "€29")}</div><div><h3>Tabs</h3><img src="/i/mill.jpg" width="400" height="200"><div hidden><p>Islands €3.50</p></div></div></main>`,
    kind: "listing",
    products: expected("Reed vest | 49 | EUR | vest", "Rush hat | 29 | EUR | hat"),
    layout: true,
  },
  {
    name: "the span of a price filter with a picture further down",
    head: STYLE,
    body: `<main><div class="g">${card("vest", "Reed vest", "€49")}${card("hat", "Rush hat", "€29")}</div></main><aside><section><h3>Price</h3><div><span>€0</span> — <span>€130</span></div></section><section><h3>Delivery</h3><a href="/delivery">How</a><img src="/i/van.png" width="200" height="120"></section></aside>`,
    kind: "listing",
    products: expected("Reed vest | 49 | EUR | vest", "Rush hat | 29 | EUR | hat"),
  },
  {
    name: "campaigns that name the lowest price, one among the products",
    head: STYLE,
    body: `<main><a href="/autumn"><img src="/i/autumn.jpg" width="900" height="300"><h2>Autumn from €39</h2></a><div class="g">${card("vest", "Reed vest", "€49")}<a class="camp" href="/coats"><img src="/i/coats.jpg"><h3>The coat edit</h3><p>From €99</p><span>Shop now</span></a>${card("hat", "Rush hat", "€29")}</div></main>`,
    kind: "listing",
    products: expected("Reed vest | 49 | EUR | vest", "Rush hat | 29 | EUR | hat"),
  },
  {
    name: "one sold without a price among tiles whose names tell nothing",
    head: STYLE,
    body: `<main><div class="g"><div><a href="vest.html"><img src="/i/vest.jpg"></a><p>Reed vest<br>€49</p></div><div><a href="wrap.html"><img src="/i/wrap.jpg"></a><p>Reed wrap<br>Sold</p></div><div><a href="hat.html"><img src="/i/hat.jpg"></a><p>Rush hat<br>€29</p></div></div></main>`,
    kind: "listing",
    products: expected("Reed vest | 49 | EUR | vest", "Reed wrap | | | wrap", "Rush hat | 29 | EUR | hat"),
  },
  {
    name: "sizes beside the price in rows of a table, euros written out",
    head: STYLE,
    body: `<table>${[
      ["vest", "Pinafore, grey", "Euro 14,00"],
      ["hat", "Pullover, navy", "Euro 16,50"],
    ]
      .map(
        ([slug, name, price]) =>
          `<tr><td><img src="/i/${slug}.jpg" width="110" height="130"></td><td><a href="/w/${slug}">${name}</a></td><td>3–4, 5–6</td><td>${price}</td></tr>`,
      )
      .join("")}</table>`,
    kind: "listing",
    products: expected("Pinafore, grey | 14 | EUR | vest", "Pullover, navy | 16.5 | EUR | hat"),
  },
  {
    name: "a page about the shop's own product data, with a heading of the same words over a list",
    head: `<meta property="og:type" content="product"><meta property="og:title" content="Knitwear">${STYLE}`,
    body: `<main><img src="/i/sheep.jpg" width="900" height="260"><h2>Knitwear</h2><div class="g">${card("vest", "Reed vest", "€49")}${card("hat", "Rush hat", "€29")}</div></main>`,
    kind: "listing",
    products: expected("Reed vest | 49 | EUR | vest", "Rush hat | 29 | EUR | hat"),
  },
  {
    name: "the lowest price of thirty days, crossed out and lower than today's",
    lang: "pl",
    head: STYLE,
    body: `<main><div class="g">${card("vest", "Kamizelka", "219,00 zł <del>209,00 zł</del> <del>299,00 zł</del>")}${card("hat", "Czapka", "59,90 zł")}</div></main>`,
    kind: "listing",
    products: expected("Kamizelka | 219 | PLN | vest", "Czapka | 59.9 | PLN | hat"),
    layout: true,
  },
  {
    name: "what it costs with one way of paying, and pieces and points as bare figures in elements called prices",
    lang: "pt-BR",
    head: STYLE,
    body: `<main><div class="g">${card("vest", "Colete Junco", '<b>R$ 289,90</b></span><span>R$ 260,91 com Pix</span><span class="price-unit" style="display:none">1</span>')}${card("hat", "Chapéu Palha", '<b>R$ 99,00</b></span><span class="price-points">40</span>')}</div></main>`,
    kind: "listing",
    products: expected("Colete Junco | 289.9 | BRL | vest", "Chapéu Palha | 99 | BRL | hat"),
    layout: true,
  },
  {
    name: "what is saved behind the amount, in Korean, and a label in the name that is not displayed",
    lang: "ko",
    url: "http://shop.localhost/product/list.html?cate=2",
    head: STYLE,
    body: `<main><p>가입하면 3,000원 쿠폰</p><h3>베스트</h3><div class="g">${["vest", "hat"]
      .map((slug) =>
        card(
          slug,
          "",
          `<strong><a href="/w/${slug}"><span style="display:none">상품명 :</span> 울 조끼 ${slug}</a></strong></span><span>57,600원 (6,400원 할인)`,
        ),
      )
      .join("")}</div></main>`,
    kind: "listing",
    products: expected("울 조끼 vest | 57600 | KRW | vest", "울 조끼 hat | 57600 | KRW | hat"),
    layout: true,
  },
  {
    name: "some of a list priced from an amount",
    head: STYLE,
    body: `<main><div class="g">${card("vest", "Reed vest", "from €49")}${card("hat", "Rush hat", "€29")}${card("wrap", "Marsh wrap", "from €59")}</div></main>`,
    kind: "listing",
    products: expected(
      "Reed vest | 49 | EUR | vest",
      "Rush hat | 29 | EUR | hat",
      "Marsh wrap | 59 | EUR | wrap",
    ),
  },
  {
    name: "all of a list priced from an amount, with links to products",
    head: STYLE,
    body: `<main><div class="g">${["vest", "hat", "wrap"]
      .map((slug) => card(slug, `Rush ${slug}`, "from €49").replaceAll("/w/", "/products/"))
      .join("")}</div></main>`,
    kind: "listing",
    products: expected(
      "Rush vest | 49 | EUR | vest",
      "Rush hat | 49 | EUR | hat",
      "Rush wrap | 49 | EUR | wrap",
    ),
  },
  {
    name: "instalments in a class that says so, the number of them in an element of its own",
    lang: "pt-BR",
    head: STYLE,
    body: `<main><div class="g">${["vest", "hat"]
      .map((slug) =>
        card(
          slug,
          `Peça ${slug}`,
          'R$ 239,90</span><span class="installments"><b class="installment-count">4</b> x de <b class="installment-price">R$ 59,97</b></span><span>',
        ),
      )
      .join("")}</div></main>`,
    kind: "listing",
    products: expected("Peça vest | 239.9 | BRL | vest", "Peça hat | 239.9 | BRL | hat"),
    layout: true,
  },
  {
    name: "what a piece of a pack costs beside the pack",
    lang: "it",
    head: STYLE,
    body: `<main><div class="g">${card("vest", "Calze corte, 12 paia", "21,60 €</span><span>1,80 € / paio")}${card("hat", "Cuffie, 6 pezzi", "34,80 €</span><span>(5,80 € cad.)")}</div></main>`,
    kind: "listing",
    products: expected("Calze corte, 12 paia | 21.6 | EUR | vest", "Cuffie, 6 pezzi | 34.8 | EUR | hat"),
  },
];
