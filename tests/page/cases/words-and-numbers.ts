import { BIG, expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

/** Pages whose words, signs and numbers are written in ways of their own country, by hand or by beginners. */
export const WORDS_AND_NUMBERS: readonly PageCase[] = [
  {
    name: "what one saves, in Danish, before the price to pay",
    lang: "da",
    head: GRID,
    body: `<ul class="g">${["Uldtæppe i havblå", "Hørdug i sennep", "Pude i mos"]
      .map(
        (name, i) =>
          `<li><a href="detail.php?nr=${i}">${picture(`bolig-${i}`)}</a><h3>${name}</h3><p style="text-decoration:line-through">Førpris: ${i + 5}29 DKK</p><p>(De sparer: 50 DKK) </p><h4>${i + 4}79 DKK</h4><a class="more" href="detail.php?nr=${i}">Vis detaljer</a></li>`,
      )
      .join("")}</ul>`,
    kind: "listing",
    products: expected(
      "Uldtæppe i havblå | 479 | DKK | bolig-0.jpg",
      "Hørdug i sennep | 579 | DKK | bolig-1.jpg",
      "Pude i mos | 679 | DKK | bolig-2.jpg",
    ),
  },
  {
    name: "the cents and the sign in another element than the whole, with the same figure",
    lang: "fr",
    head: GRID,
    body: `<div class="g">${["Laine mérinos ocre", "Biais uni prune", "Viscose imprimée"]
      .map(
        (name, i) =>
          `<div class="item"><a href="/120${i}-mercerie.html">${picture(`mercerie-${i}`)}</a><p><a href="/120${i}-mercerie.html">${name}</a></p><p><span class="value"><span>${i + 5}</span>,<span>${9 - i}5 €</span></span></p></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Laine mérinos ocre | 5.95 | EUR | mercerie-0.jpg",
      "Biais uni prune | 6.85 | EUR | mercerie-1.jpg",
      "Viscose imprimée | 7.75 | EUR | mercerie-2.jpg",
    ),
  },
  {
    name: "an amount with a dash and then its sign",
    lang: "de",
    body: `<h1>Hofverkauf</h1><p>Schicke eine E-Mail.</p>${[
      "Strickjacke, petrol",
      "Lederstiefel 39",
      "Seidenschal",
    ]
      .map(
        (name, i) =>
          `<h4>${name}</h4><p>${BIG(`hof-${i}`)}</p><ul><li>Gut erhalten</li><li>VB: ${i + 1}0,- €</li></ul><hr>`,
      )
      .join("")}`,
    kind: "listing",
    products: expected(
      "Strickjacke, petrol | 10 | EUR | hof-0.jpg",
      "Lederstiefel 39 | 20 | EUR | hof-1.jpg",
      "Seidenschal | 30 | EUR | hof-2.jpg",
    ),
  },
  {
    name: "prices in the figures of Thai",
    lang: "th",
    head: GRID,
    body: `<div class="g">${[
      ["ผ้าขาวม้าสีคราม", "๒๐๐"],
      ["ผ้าซิ่นลายดอก", "๓๕๐"],
      ["เสื้อหม้อห้อม", "๔๙๐"],
    ]
      .map(
        ([name, sum], i) =>
          `<div class="box"><a href="/p/${i}">${picture(`pha-${i}`)}</a><a href="/p/${i}">${name}</a><p>ราคา ${sum} บาท</p></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "ผ้าขาวม้าสีคราม | 200 | THB | pha-0.jpg",
      "ผ้าซิ่นลายดอก | 350 | THB | pha-1.jpg",
      "เสื้อหม้อห้อม | 490 | THB | pha-2.jpg",
    ),
  },
  {
    name: "an ordinal that ends as the sign of dinars",
    lang: "es",
    url: "http://shop.localhost/detalle.aspx",
    body: `<a href="carrito.aspx">Carrito</a><div>${BIG("pelele")}</div><div><h2>Pelele de algodón lima</h2><h4>2da etapa <small>/ Contenido 1 pieza</small></h4><p>Cantidad: <input type="number" value="1"><button>AÑADIR AL CARRITO</button></p></div>`,
    kind: "product",
    products: [expectedMain("Pelele de algodón lima | | | pelele.jpg")],
  },
  {
    name: "the name that the address spells, under the shop's own as the highest heading",
    url: "http://shop.localhost/products/view/felt-slippers",
    head: "<title>Shop</title>",
    body: `<h1>The Felt House</h1><ul><li><a href="/basket">Basket</a></li></ul><h3>Facts</h3><h2>Felt slippers</h2><p>Wet felted, with a rubber sole.</p><p>$34.00</p><p><img width="300" src="/i/slippers.jpg"></p><form action="/basket/add"><input type="submit" name="add" value="Add to basket"></form>`,
    kind: "product",
    products: [expectedMain("Felt slippers | 34 | USD | slippers.jpg")],
  },
  {
    name: "three wares without prices, each called a product and bought where it stands",
    url: "http://shop.localhost/products",
    body: `<h1>Our Products</h1><div class="products">${["Leather wallet", "Leather belt", "Leather satchel"]
      .map(
        (name, i) =>
          `<div class="product">${picture(`leather-${i}`)}<h3>${name}</h3><p>Made by hand.</p><button onclick="buy(${i})">Buy Now</button></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Leather wallet | | | leather-0.jpg",
      "Leather belt | | | leather-1.jpg",
      "Leather satchel | | | leather-2.jpg",
    ),
  },
  {
    name: "prices behind their label on the only buttons",
    lang: "fi",
    head: GRID,
    body: `<h2>Langat</h2><div class="g">${["Suometsä, merino", "Syysilta", "Hallayö, mohair"]
      .map(
        (name, i) =>
          `<a href="/kauppa/61a${i}"><h4>${name}</h4>${picture(`lanka-${i}`)}<button>hinta: ${i + 2}4€</button></a>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Suometsä, merino | 24 | EUR | lanka-0.jpg",
      "Syysilta | 34 | EUR | lanka-1.jpg",
      "Hallayö, mohair | 44 | EUR | lanka-2.jpg",
    ),
  },
  {
    name: "cards that are bought where they stand, in Danish, on a page that says it is English",
    head: GRID,
    body: `<a href="kurv.php">Kurv</a><div class="g">${["Munter skammel", "Hylde i eg", "Stol i bøg"]
      .map(
        (name, i) =>
          `<div class="card">${picture(`stol-${i}`)}<h4>${name}</h4><p class="price">${i + 1}.455 Kr.</p><p>Polstret med uld.</p><a href="tilpas.php">Tilpas</a><p><button>Køb nu</button></p></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Munter skammel | 1455 | DKK | stol-0.jpg",
      "Hylde i eg | 2455 | DKK | stol-1.jpg",
      "Stol i bøg | 3455 | DKK | stol-2.jpg",
    ),
  },
  {
    name: "flats by the day",
    lang: "ru",
    url: "http://shop.localhost/houses/",
    head: "<title>Квартиры посуточно</title>",
    body: `${["№14 Морозова, 10", "№8 Чехова, 34", "№11 Петровская, 15"]
      .map(
        (name, i) =>
          `<div class="row">${picture(`dom-${i}`)}<div><h4>${name}</h4><p>Площадь: ${i + 3}4 м.кв.</p><p>6 спальных мест</p><p>Цена за сутки: ${i + 1}700 руб.</p><a href="/houses/detail/">Подробнее</a></div></div>`,
      )
      .join("")}`,
    kind: "none",
    products: [],
  },
  {
    name: "rooms of a hotel, each with its price before its picture",
    lang: "bg",
    url: "http://shop.localhost/price.php",
    head: "<title>Цени | хотел Бор</title>",
    body: `<h3>Ценова листа</h3>${["Двойна стая", "Тройна стая", "Апартамент"]
      .map((name, i) => `<p class="tab">${name} - ${i + 5}0лв* ${picture(`staya-${i}`)}</p>`)
      .join("")}`,
    kind: "none",
    products: [],
  },
  {
    name: "what was given so far, in Indonesian",
    lang: "id",
    url: "http://shop.localhost/donasi",
    body: ["Beras untuk yatim", "Sumur untuk desa", "Buku untuk anak"]
      .map(
        (name, i) =>
          `<section>${picture(`amal-${i}`)}<h3>${name}</h3><p>Rp ${i + 1}87.882.895</p><p>terkumpul dari Rp 900.000.000</p><p><b>9${i}%</b> tercapai</p></section>`,
      )
      .join(""),
    kind: "none",
    products: [],
  },
  {
    name: "what a club costs by the month, in Norwegian",
    lang: "no",
    body: ["Løft", "Spenst", "Kraft"]
      .map(
        (name, i) =>
          `<div class="center"><a href="https://club${i}.localhost"><img src="/i/klubb-${i}.png" alt="${name}" width="100" height="50"></a><table><tr><th>Medlemskap</th><th>Ingen bindingstid</th><th>Forhåndsbetalt</th></tr><tr><td>Alle sentere</td><td>${i + 2}95,-/mnd</td><td>${i + 3}540,-</td></tr></table></div>`,
      )
      .join(""),
    kind: "none",
    products: [],
  },
  {
    name: "tapas of a bar, whose menu is called as a basket nearly is",
    lang: "es",
    head: "<title>Carta Bar Luna</title>",
    body: `<main class="carta-contenedor"><h1>LA LUNA</h1><h2>Tapas y Raciones</h2>${[
      "Patatas bravas",
      "Ensaladilla",
      "Croquetas",
    ]
      .map(
        (name, i) =>
          `<div class="fila-plato" style="cursor:pointer">${picture(`plato-${i}`)}<strong>${name}</strong><div><span>${i + 3},00 €</span><span>${i + 7},50 €</span></div></div>`,
      )
      .join("")}</main>`,
    kind: "none",
    products: [],
    layout: true,
  },
  {
    name: "days of the week that are short as francs are, before dates cut into parts",
    lang: "no",
    body: ["Ny dirigent", "Sommerkonsert", "Årsmøte"]
      .map(
        (name, i) =>
          `<article><div class="date"><div>fr.</div><div>${i + 2}</div><div>feb</div><div>${i + 2}018</div></div><div>${picture(`nytt-${i}`)}</div><h4>${name}</h4><p>Vi ønsker velkommen.</p></article>`,
      )
      .join(""),
    kind: "none",
    products: [],
  },
];
