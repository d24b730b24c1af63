import { BIG, expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

/** What stands beside names and prices in one element: groups, badges, taxes, savings, marks. */
export const BESIDE_THE_NAME: readonly PageCase[] = [
  {
    name: "the group as a heading in small print, the name larger below",
    lang: "sr",
    head: GRID,
    body: `<div class="g">${["Srebro 1123", "Zlato 1342", "Bakar 1207"].map((name, i) => `<div class="product-card">${picture(`prsten-${i}`)}<div><h3 style="font-size:12px">Prstenovi</h3><p style="font-size:20px">${name} lux</p></div><p>42${i} KM</p></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Srebro 1123 lux | 420 | BAM | prsten-0.jpg",
      "Zlato 1342 lux | 421 | BAM | prsten-1.jpg",
      "Bakar 1207 lux | 422 | BAM | prsten-2.jpg",
    ),
    layout: true,
  },
  {
    name: "a badge in the heading, behind the name",
    lang: "uk",
    head: GRID,
    body: `<ul class="g">${["Сумка «Ворскла»", "Клатч вечерний", "Рюкзак міський"].map((name, i) => `<li>${picture(`sumka-${i}`)}<h3><a href="/m/catalog/sumki/${i}/">${name}</a>&nbsp;<span class="sticker">Новинка</span></h3><p><span class="price">1 25${i} грн</span></p></li>`).join("")}</ul>`,
    kind: "listing",
    products: expected(
      "Сумка «Ворскла» | 1250 | UAH | sumka-0.jpg",
      "Клатч вечерний | 1251 | UAH | sumka-1.jpg",
      "Рюкзак міський | 1252 | UAH | sumka-2.jpg",
    ),
  },
  {
    name: "a price without tax, below the one that is paid",
    lang: "hu",
    head: GRID,
    body: `<div class="g">${["bakancs", "kabát", "nadrág"].map((name, i) => `<a href="/products/4${i}">${picture(`munka-${i}`)}<h2>Női ${name} S3</h2><p>24 99${i} Ft</p><p>19 67${i} Ft + ÁFA</p></a>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Női bakancs S3 | 24990 | HUF | munka-0.jpg",
      "Női kabát S3 | 24991 | HUF | munka-1.jpg",
      "Női nadrág S3 | 24992 | HUF | munka-2.jpg",
    ),
  },
  {
    name: "a discount of so much, above the price",
    lang: "id",
    head: GRID,
    body: `<div class="g">${["Flora", "Fauna", "Parang"].map((name, i) => `<div class="card"><a href="#">${picture(`batik-${i}`)}<span>Batik ${name} baru</span><div><span>COD</span> <span>Diskon Rp8RB</span></div><p>Rp8${i}.000</p></a></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Batik Flora baru | 80000 | IDR | batik-0.jpg",
      "Batik Fauna baru | 81000 | IDR | batik-1.jpg",
      "Batik Parang baru | 82000 | IDR | batik-2.jpg",
    ),
  },
  {
    name: "a sign in an element of its own, a remark behind the price, a stroke behind the name",
    url: "http://shop.localhost/products",
    head: GRID,
    body: `<header><a href="/cart">Cart</a></header><h1>Give someone a sausage</h1><div class="g">${["Link Socks", "Chorizo Print", "Stripe Apron"].map((name, i) => `<div class="thumb"><a href="/product/${i}">${picture(`gift-${i}`)}<p>${name} / </p><span class="price sale"><span class="currency_sign">$</span>1${i}.00 / On Sale</span></a></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Link Socks | 10 | USD | gift-0.jpg",
      "Chorizo Print | 11 | USD | gift-1.jpg",
      "Stripe Apron | 12 | USD | gift-2.jpg",
    ),
  },
  {
    name: "name, price and a remark in the heading of a product's page",
    url: "http://shop.localhost/product/apron-front",
    body: `<header><a href="/cart">Cart</a></header><h1>Stripe Apron <span class="price">$34.00 <i>/ On Sale</i></span></h1>${BIG("apron-front")}<form action="/cart" method="post"><button>Add to cart</button></form>`,
    kind: "product",
    products: [expectedMain("Stripe Apron | 34 | USD | apron-front.jpg")],
    layout: true,
  },
  {
    name: "what one saves, on the picture of a product's page",
    lang: "fr",
    url: "http://shop.localhost/bottes/88-bottes-marais.html",
    body: `<div class="row"><section id="content"><ul><li class="discount">Prix réduit</li><li class="discount">-30€</li></ul>${BIG("bottes")}</section><div><h1>Bottes du Marais</h1><span class="regular-price"><s>119,00 €</s></span><div class="current-price">89,00 €</div><form action="/panier"><button class="add-to-cart">Ajouter au panier</button></form></div></div>`,
    kind: "product",
    products: [expectedMain("Bottes du Marais | 89 | EUR | bottes.jpg")],
    layout: true,
  },
  {
    name: "what turns while something comes, by the price",
    lang: "de",
    body: `<ul>${["Tasche Elba", "Rucksack Havel", "Börse Spree"].map((name, i) => `<li class="goods"><a href="/g${i}">${picture(`beutel-${i}`)}</a><div class="goods__desc"><h4><a href="/g${i}">${name}</a></h4><p>12${i},95 €</p><img data-v-77ad class="preloader" src="/i/preloader.gif" width="64" height="64"></div></li>`).join("")}</ul>`,
    kind: "listing",
    products: expected(
      "Tasche Elba | 120.95 | EUR | beutel-0.jpg",
      "Rucksack Havel | 121.95 | EUR | beutel-1.jpg",
      "Börse Spree | 122.95 | EUR | beutel-2.jpg",
    ),
  },
  {
    name: "flats and shops to let, on a page that says whose it is",
    lang: "tr",
    head: "<title>Ova Emlak | Daire</title>",
    body: `<h2>Bazı ilanlar</h2>${["dükkan", "2+1", "ofis"].map((name, i) => `<div class="property"><div><a href="detail.php?detay=6${i}"></a>${picture(`ilan-${i}`)}</div><h3><a href="detail.php?detay=6${i}">Merkez ${name}</a></h3><div class="price">1.20${i} ₺ Bursa</div></div>`).join("")}`,
    kind: "none",
    products: [],
  },
];
