import { expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

/** Tiles that a page has beside its own product. */
const beside = (price: (amount: number) => string): string =>
  `<section class="g">${["linden", "alder"].map((slug, i) => `<div><a href="/w/${slug}">${picture(slug)}<b>${slug} shirt</b></a><span>${price(40 + i)}</span></div>`).join("")}</section>`;

/** Pages that name their product, their amounts or their lists as few others do. */
export const SHOPS_IN_OTHER_WORDS: readonly PageCase[] = [
  {
    name: "a product page whose heading is a slogan at its foot, while its title knows the name in a plain line",
    head: "<title>Wool coat Alder | Tallow &amp; Finch</title>",
    body: `<div><div><img src="/i/coat.jpg" width="400" height="500"></div><div><p style="font-size:24px">Wool coat Alder</p><p>€189.00</p><button>Add to bag</button></div></div><section><h1>Coats for wet days</h1><p>Made to be mended.</p></section>`,
    kind: "product",
    products: [expectedMain("Wool coat Alder | 189 | EUR | coat.jpg")],
    layout: true,
  },
  {
    name: "a list whose address looks like a product's, each ware's heading in its link",
    url: "http://shop.localhost/products/knots-and-bends",
    head: GRID,
    body: `<img src="/i/band.jpg" width="800" height="200"><ul class="g">${["reef", "sheet", "bowline"].map((slug, i) => `<li class="product"><a href="/product/${slug}">${picture(slug)}<h2>The ${slug}</h2><span>€${20 + i}.50</span></a><a class="button" href="/product/${slug}">Read more</a></li>`).join("")}</ul>`,
    kind: "listing",
    products: expected(
      "The reef | 20.5 | EUR | reef.jpg",
      "The sheet | 21.5 | EUR | sheet.jpg",
      "The bowline | 22.5 | EUR | bowline.jpg",
    ),
    layout: true,
  },
  {
    name: "a product page whose picture and table of facts lie between its name and its button",
    lang: "de",
    body: `<div class="container"><div class="row"><h1>Hängematte Erle</h1><hr></div><div class="row"><div><img src="/i/erle.jpg" width="320" height="240"></div><table><tr><td>Preis:</td><td>CHF 149.-</td></tr><tr><td>Höhe:</td><td>18 cm</td></tr></table></div><div class="row"><a href="/products/">zur Übersicht</a><form method="get"><input type="hidden" name="id" value="7"><button type="submit">In den Warenkorb</button></form></div></div>`,
    kind: "product",
    products: [expectedMain("Hängematte Erle | 149 | CHF | erle.jpg")],
    layout: true,
  },
  {
    name: "a product page with a link to a messenger's first page under its name",
    head: `<script type="application/ld+json">{"@type":"Product","name":"Collar Aliso","offers":{"price":389,"priceCurrency":"EUR"}}</script>`,
    lang: "es",
    body: `<div><img src="/i/collar.jpg" width="400" height="400"><div><a href="catalogo.html?marca=aliso">Casa Aliso</a><h1>Collar Aliso</h1><p>389 €</p><a href="https://messenger.localhost/?text=Hola">Reservar</a></div></div>`,
    kind: "product",
    products: [expectedMain("Collar Aliso | 389 | EUR | collar.jpg")],
  },
  {
    name: "bare amounts beside a product whose price has a sign",
    head: GRID,
    body: `<div><img src="/i/pole.jpg" width="400" height="500"><div><h1>Birch pole</h1><h2>$120.00</h2><form><input type="number" name="quantity" value="1"><button>Add to cart</button></form></div></div><ul class="g">${["strap", "glove"].map((slug, i) => `<li><a href="/products/${slug}">${picture(slug)}</a><div class="the-price">${14 + i}.5</div><a href="/products/${slug}">Hemp ${slug}</a></li>`).join("")}</ul>`,
    kind: "product",
    products: [
      expectedMain("Birch pole | 120 | USD | pole.jpg"),
      ...expected("Hemp strap | 14.5 | USD | strap.jpg", "Hemp glove | 15.5 | USD | glove.jpg"),
    ],
    layout: true,
  },
  {
    name: "points behind the price, which are no rand",
    lang: "zh-CN",
    head: GRID,
    body: `<ul class="g">${["cherry", "kiwi", "plum"].map((slug, i) => `<li><a href="/goods/${slug}.html">${slug} box</a><div><b>￥<span>${98 + i}.00</span></b>&nbsp; 26R</div>${picture(slug)}</li>`).join("")}</ul>`,
    kind: "listing",
    products: expected(
      "cherry box | 98 | CNY | cherry.jpg",
      "kiwi box | 99 | CNY | kiwi.jpg",
      "plum box | 100 | CNY | plum.jpg",
    ),
    layout: true,
  },
  {
    name: "an N before amounts of naira, and in the name of a mask",
    head: GRID,
    body: `<div class="g">${["gown", "abaya", "N95 mask"].map((name, i) => `<div class="product-column"><a href="#"><img src="/i/n-${i}.jpg" width="220" height="280"></a><h3>Stoned ${name}</h3><h5>N${25 + i},000</h5><button title="Add to Cart">+</button></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Stoned gown | 25000 | NGN | n-0.jpg",
      "Stoned abaya | 26000 | NGN | n-1.jpg",
      "Stoned N95 mask | 27000 | NGN | n-2.jpg",
    ),
    layout: true,
  },
  {
    name: "dollars on a Spanish page that names no country",
    lang: "es",
    head: GRID,
    body: `<div class="g">${["falda", "blusa"].map((name, i) => `<div><a href="/producto/${name}">${picture(name)}<h3>La ${name}</h3></a><p>$ ${42 + i}.000</p></div>`).join("")}</div>`,
    kind: "listing",
    products: expected("La falda | 42000 | | falda.jpg", "La blusa | 43000 | | blusa.jpg"),
  },
  {
    name: "wares in a nav of the page's own part, agorot raised, a stamp before each picture",
    lang: "en",
    head: GRID,
    body: `<div role="main"><h1>Woven</h1><nav class="subs products"><ul class="g">${["shirt", "tunic", "blouse"].map((slug, i) => `<li class="product"><a href="/en/women/${slug}" title="The ${slug}"><img src="/i/hot.png" width="60" height="60" style="position:absolute">${picture(slug)}</a><div>The ${slug}</div><div class="price"><span>11${i} <sup><small>90 </small></sup></span> <small>&nbsp;NIS&nbsp;</small></div></li>`).join("")}</ul></nav></div>`,
    kind: "listing",
    products: expected(
      "The shirt | 110.9 | ILS | shirt.jpg",
      "The tunic | 111.9 | ILS | tunic.jpg",
      "The blouse | 112.9 | ILS | blouse.jpg",
    ),
    layout: true,
  },
  {
    name: "names in what the markup calls a price block, without a link",
    lang: "ru",
    head: GRID,
    body: `<div class="g">${["Липа", "Ольха", "Ясень"].map((name, i) => `<div class="slide_item"><img src="/i/r-${i}.jpg" width="220" height="280"><div class="price_block"><p>${name} босоножки</p><div>1 ${i}90 руб.</div></div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Липа босоножки | 1090 | RUB | r-0.jpg",
      "Ольха босоножки | 1190 | RUB | r-1.jpg",
      "Ясень босоножки | 1290 | RUB | r-2.jpg",
    ),
    layout: true,
  },
  {
    name: "names in two lines of one heading",
    lang: "ja",
    head: GRID,
    body: `<div class="g">${["クリーム", "シャンプー"].map((name, i) => `<div><img src="/i/j-${i}.jpg" width="220" height="280"><h6>ヤナギ<br>${name}<hr></h6><p>¥<span>${2 + i},000</span>（税込）</p><button>カートに入れる</button></div>`).join("")}</div>`,
    kind: "listing",
    products: expected("ヤナギ クリーム | 2000 | JPY | j-0.jpg", "ヤナギ シャンプー | 3000 | JPY | j-1.jpg"),
  },
  {
    name: "a product page in Vietnamese with a bare amount, its related wares in dong",
    lang: "vi",
    head: GRID,
    body: `<div><img src="/i/giay.jpg" width="400" height="500"><div><h1>Giày Sa Pa</h1><div class="price-product">Giá: <span>1.400.000</span></div><button>Thêm vào giỏ</button></div></div>${beside((n) => `${n}0.000 VNĐ`)}`,
    kind: "product",
    products: [
      expectedMain("Giày Sa Pa | 1400000 | VND | giay.jpg"),
      ...expected("linden shirt | 400000 | VND | linden.jpg", "alder shirt | 410000 | VND | alder.jpg"),
    ],
    layout: true,
  },
];
