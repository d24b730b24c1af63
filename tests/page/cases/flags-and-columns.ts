import { BIG, expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

/** White space by which a source is laid out. */
const INDENT = "\n\t\t\t\t";

/** What lies on pictures, stands under heads of columns or is said behind prices; and what then is the price and the name. */
export const FLAGS_AND_COLUMNS: readonly PageCase[] = [
  {
    name: "what it cost once on the picture, what it costs in a block beside",
    lang: "cs",
    head: "<style>.p{display:flex}.flag{position:absolute}</style>",
    body: `<header><a href="/kosik/">Košík</a></header>${["Lampa Beta", "Lampa Gama", "Lampa Delta"].map((name, i) => `<div class="p"><a href="/p/14${i}/">${picture(`lampa-${i}`)}<span class="flag"><span>1 50${i} Kč</span> <span>–14 %</span></span></a><div><a href="/p/14${i}/" class="name">${name}</a><div class="prices"><div class="price-final"><strong>1 29${i} Kč</strong></div></div></div></div>`).join("")}`,
    kind: "listing",
    products: expected(
      "Lampa Beta | 1290 | CZK | lampa-0.jpg",
      "Lampa Gama | 1291 | CZK | lampa-1.jpg",
      "Lampa Delta | 1292 | CZK | lampa-2.jpg",
    ),
  },
  {
    name: "no name but that of the picture, between what is saved and how many were sold",
    lang: "en",
    head: GRID,
    body: `<ul class="g">${["Neck warmer of boiled wool", "Folding rain hat", "Waxed canvas bag"].map((name, i) => `<li><span><a href="/wares-p-12${i}.html" title="${name}"><img src="/i/ware-${i}.jpg" width="220" height="280" alt="${name}">${INDENT}<i>5${i}% OFF</i>\t\t\t</a></span>${INDENT}<span class="price">US$19.9${i}</span>${INDENT}<span>pcs(28${i})${INDENT}</span></li>`).join("")}</ul>`,
    kind: "listing",
    products: expected(
      "Neck warmer of boiled wool | 19.9 | USD | ware-0.jpg",
      "Folding rain hat | 19.91 | USD | ware-1.jpg",
      "Waxed canvas bag | 19.92 | USD | ware-2.jpg",
    ),
  },
  {
    name: "a price and that it is out of stock in one block",
    lang: "en",
    head: GRID,
    body: `<div class="g">${["Mixer", "Kettle", "Toaster"].map((name, i) => `<div class="product-block"><a href="/${name.toLowerCase()}">${picture(`block-${i}`)}</a><h3><a href="/${name.toLowerCase()}">${name}</a></h3><div>$22${i}.0 <span>Out of Stock</span></div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Mixer | 220 | USD | block-0.jpg",
      "Kettle | 221 | USD | block-1.jpg",
      "Toaster | 222 | USD | block-2.jpg",
    ),
  },
  {
    name: "a bare table with the word for price at the head of a column",
    lang: "de",
    body: `<table><tr><th>ID</th><th>Name</th><th>Preis</th><th>Bild</th><th>Bestand</th></tr>${["Rucksack Tann", "Lampe Funkel", "Kocher Alm"].map((name, i) => `<tr><td>${i}</td><td>${name}</td><td>89.9${i}</td><td>${picture(`zeile-${i}`)}</td><td>1${i}</td></tr>`).join("")}</table>`,
    kind: "listing",
    products: expected(
      "Rucksack Tann | 89.9 | EUR | zeile-0.jpg",
      "Lampe Funkel | 89.91 | EUR | zeile-1.jpg",
      "Kocher Alm | 89.92 | EUR | zeile-2.jpg",
    ),
  },
  {
    name: "the same as blocks in rows, far indented",
    lang: "ru",
    head: "<style>.row{display:flex}.row>div{width:220px}</style>",
    body: `<header>г. Минск, +375 17 000-00-00</header><div><div class="row"><div>${INDENT}Артикул${INDENT}</div><div>Фото</div><div>Название</div><div>${INDENT}Цена${INDENT}</div></div>${["Насос малый", "Клапан ровный", "Фильтр сетчатый"].map((name, i) => `<div class="row"><div>BT-11${i}0</div><div>${picture(`ryad-${i}`)}</div><div>${name}</div><div>${INDENT}46.5${i}${INDENT}</div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Насос малый | 46.5 | BYN | ryad-0.jpg",
      "Клапан ровный | 46.51 | BYN | ryad-1.jpg",
      "Фильтр сетчатый | 46.52 | BYN | ryad-2.jpg",
    ),
  },
  {
    name: "kinds as headings, names below that the pictures are called by",
    lang: "en",
    head: GRID,
    body: `<a href="#/bag">Bag</a><section><h2>Complete the look</h2><div class="g">${[
      ["Outerwear", "Noir Biker Jacket"],
      ["Skirts", "Pleated Midi Skirt"],
      ["Tops", "Ribbed Crop Top"],
    ]
      .map(
        ([kind, name], i) =>
          `<a href="/product/p${i}"><img src="/i/look-${i}.jpg" width="220" height="280" alt="${name}"><h4>${kind}</h4><p>${name}</p><span>₹4,99${i}</span></a>`,
      )
      .join("")}</div></section>`,
    kind: "listing",
    products: expected(
      "Noir Biker Jacket | 4990 | INR | look-0.jpg",
      "Pleated Midi Skirt | 4991 | INR | look-1.jpg",
      "Ribbed Crop Top | 4992 | INR | look-2.jpg",
    ),
  },
  {
    name: "a table of facts that says product before each",
    lang: "en",
    url: "http://shop.localhost/product?productId=5",
    head: "<title>Product</title>",
    body: `<table><tr><td><img src="/i/slippers.jpg" width="240" height="180"></td></tr><tr><td>Product name</td><td><p>Grey felt slippers</p></td></tr><tr><td>Product price</td><td><p>27.5</p></td></tr><tr><form action="/cart/create"><td><input type="number" name="productCount"></td><td><input type="submit" value="Add to cart"></td></form></tr></table>`,
    kind: "product",
    products: [expectedMain("Grey felt slippers | 27.5 | | slippers.jpg")],
    layout: true,
  },
  {
    name: "headings in the heads of a table of measures",
    lang: "sv",
    url: "http://shop.localhost/tees/view/14",
    head: "<title>Tygeri: Tees</title><style>.row{display:flex}</style>",
    body: `<div><a href="/carts">Varukorg (2)</a></div><div class="container"><h1>Norrsken vid</h1><div class="row"><div>${BIG("tee")}<h3>Måttinformation:</h3><table><thead><th></th><th><h4>Höjd</h4></th><th><h4>Bredd</h4></th></thead><tbody><tr><td>S</td><td>68</td><td>48</td></tr></tbody></table></div><div><div>199 kr</div><h3>Välj storlek</h3><a href="/tees/add_to_cart/14/S" class="btn">Lägg i varukorg</a></div></div></div>`,
    kind: "product",
    products: [expectedMain("Norrsken vid | 199 | SEK | tee.jpg")],
    layout: true,
  },
  {
    name: "a product's page in a folder called as that of a shop keeper",
    lang: "en",
    url: "http://shop.localhost/Admin/6.php",
    body: `<div><div>${BIG("hoodie")}</div><div><h1>Lycra blend hoodie</h1><div><span style="font-size:24px">₹307</span></div><button>Add to Cart</button><button>Buy Now</button></div></div>`,
    kind: "product",
    products: [expectedMain("Lycra blend hoodie | 307 | INR | hoodie.jpg")],
    layout: true,
  },
  {
    name: "one block whose picture leads to a page that shows it large, and a heading for its form",
    lang: "no",
    url: "http://shop.localhost/trade/productview/412/18/",
    head: "<title>Lusekofte Setesdal – Ullhuset</title><style>.order{float:right}</style>",
    body: `<ul><li><a href="/trade/cart/">Handlekurv</a></li></ul><h1>Lusekofte Setesdal</h1><div><div class="order"><h3>Bestill</h3><s>kr 1 899,00</s><span>Pris: kr 1 649,00</span><form action="/trade/cart/add/412/"><input type="submit" value="Legg i handlekurv"></form></div><div><a href="/imagecatalogue/imageview/901/">${BIG("lusekofte")}</a></div></div>`,
    kind: "product",
    products: [expectedMain("Lusekofte Setesdal | 1649 | NOK | lusekofte.jpg")],
    layout: true,
  },
  {
    name: "the price before the name, what is said of its tax as a heading, a span that buys",
    lang: "de",
    url: "http://shop.localhost/shop/olivenoel/",
    head: "<title>Olivenöl » Elias</title><style>.price{float:right}</style>",
    body: `<h4><a href="/">Elias</a></h4><div class="typography"><span class="price"><h2>11.90 €</h2><h4>inkl. 7% MwSt</h4></span>${BIG("oel")}<div><h3>Olivenöl extra nativ</h3><p>Erste Pressung.</p></div><span class="buttonOrder"><span>In den Warenkorb</span></span></div>`,
    kind: "product",
    products: [expectedMain("Olivenöl extra nativ | 11.9 | EUR | oel.jpg")],
    layout: true,
  },
  {
    name: "makers called so in German, and how it is sent behind the price",
    lang: "en",
    head: GRID,
    body: `<div class="g">${["Shirt - blue", "Shirt - black", "Shirt - sable"].map((name, i) => `<div class="item">${picture(`hemd-${i}`)}<p class="marke">Jonas Quillington</p><p>${name}</p><p>From 37,9${i} €</p><p>Premium Delivery</p></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Shirt - blue | 37.9 | EUR | hemd-0.jpg",
      "Shirt - black | 37.91 | EUR | hemd-1.jpg",
      "Shirt - sable | 37.92 | EUR | hemd-2.jpg",
    ),
  },
  {
    name: "dollars of who knows which country: the markup says English, the page speaks Spanish",
    lang: "en",
    url: "http://shop.localhost/items/60a7",
    body: `<header><a href="/carrito">Carrito</a></header><div>${BIG("zapatillas")}<div><h1>Zapatillas verdes para el campo</h1><p>$ 48.999</p><p>Envío gratis con tu compra</p><button>Comprar ahora</button></div></div>`,
    kind: "product",
    products: [expectedMain("Zapatillas verdes para el campo | 48999 | | zapatillas.jpg")],
    layout: true,
  },
  {
    name: "the menu of a house where one eats, of which nothing can be ordered",
    lang: "hr",
    url: "http://shop.localhost/",
    head: `<title>Kuća uz more</title>${GRID}`,
    body: `<header><a href="#salads">Salads</a></header>${["Cold appetizers", "Desserts"].map((course, at) => `<h2>${course}</h2><div class="g">${["Smoked ham", "Cheese in olive", "Anchovies"].map((name, i) => `<div class="card">${picture(`jelo-${at}${i}`)}<h3>${name}</h3><p>15,0${i} €</p></div>`).join("")}</div>`).join("")}`,
    kind: "none",
    products: [],
  },
  {
    name: "the lowest amount of a campaign, whose picture leads to its page",
    lang: "en",
    url: "http://shop.localhost/",
    body: `<div class="door">${["DIY Tools", "Garden Lights", "DIY Looms"].map((name, i) => `<a href="/lp/en2018030${i}" title="${name}">${picture(`door-${i}`)}<h3>${name}</h3><p>$0.9${i} &gt;&gt;</p></a>`).join("")}</div>`,
    kind: "none",
    products: [],
  },
];
