import { expected, GRID, type PageCase, picture } from "./page-case.ts";

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
    name: "prices that their source lays out by white space inside one text",
    lang: "de",
    head: GRID,
    body: `<div class="g">${["mantel", "jacke"].map((slug, i) => `<div><a href="/Kleidung/${slug}.html">${picture(slug)}<span>Woll${slug} ERLE</span></a><div><del>2${i}9,00 &euro;</del><span>\n${" ".repeat(70)}18${i},00\n${" ".repeat(70)}&euro;\n${" ".repeat(70)}*\n</span></div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected("Wollmantel ERLE | 180 | EUR | mantel.jpg", "Wolljacke ERLE | 181 | EUR | jacke.jpg"),
  },
  {
    name: "prices as headings right before names in paragraphs, on one line of the source",
    lang: "nl",
    head: GRID,
    body: `<div class="g">${["jas", "muts"].map((slug, i) => `<div><a href="/product.html?id=7${i}">${picture(slug)}</a> <h2>€ 1${i}</h2> <p>Gele ${slug} kind</p> <a href="#" class="btn">In winkelwagen</a></div>`).join("")}</div>`,
    kind: "listing",
    products: expected("Gele jas kind | 10 | EUR | jas.jpg", "Gele muts kind | 11 | EUR | muts.jpg"),
  },
  {
    name: "the name, its maker and its publisher in headings of one rank",
    lang: "tr",
    head: GRID,
    body: `<div class="g">${[
      "Kırmızı Bavul|Selin Arkan|Sarnıç Yayınları",
      "Taş Köprü|Emre Tolun|Sarnıç Yayınları",
      "Ada|Nehir Sayar|Martı Kitap",
    ]
      .map(
        (row, i) =>
          `<div><a href="kitap.html">${picture(`kitap-${i}`)}${row
            .split("|")
            .map((line) => `<h2>${line}</h2>`)
            .join("")}<h2>Fiyat : ${98 + i} TL</h2></a><button type="button">Sepete Ekle</button></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Kırmızı Bavul | 98 | TRY | kitap-0.jpg",
      "Taş Köprü | 99 | TRY | kitap-1.jpg",
      "Ada | 100 | TRY | kitap-2.jpg",
    ),
  },
  {
    name: "a sentence about each ware, longer than its name and marked no less",
    lang: "ja",
    head: GRID,
    body: `<ul class="g">${["のれん", "鍋敷き"].map((name, i) => `<li><a href="/products/detail/${i}">${picture(`n-${i}`)}<p>麻の${name}</p><p>紺と生成りの二色から選べます。</p><p>￥${8 + i},800</p></a></li>`).join("")}</ul>`,
    kind: "listing",
    products: expected("麻ののれん | 8800 | JPY | n-0.jpg", "麻の鍋敷き | 9800 | JPY | n-1.jpg"),
  },
  {
    name: "wares without links, each with a number of those who like it",
    lang: "en",
    head: GRID,
    body: `<div class="g">${["셔츠", "자켓", "모자"].map((name, i) => `<div>${picture(`k-${i}`)}<p>하루온</p><h4>릴렉스 ${name}</h4><span>${39 + i},900 원</span><button><svg width="12" height="12"></svg> ${i}</button></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "릴렉스 셔츠 | 39900 | KRW | k-0.jpg",
      "릴렉스 자켓 | 40900 | KRW | k-1.jpg",
      "릴렉스 모자 | 41900 | KRW | k-2.jpg",
    ),
  },
  {
    name: "a list of wares that can be bought, of which the first alone has a price",
    lang: "pl",
    head: GRID,
    body: `<div class="g">${["lipa", "olcha", "buk", "jesion", "klon"].map((slug, i) => `<div class="col"><div class="card"><a href="/produkt${i}_sukienka/${i}">${picture(slug)}</a><div><h5>Sukienka ${slug}</h5>${i ? "" : "120zł"}</div><div><a class="btn" href="#">Dodaj do\n   koszyka</a></div></div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Sukienka lipa | 120 | PLN | lipa.jpg",
      "Sukienka olcha | | | olcha.jpg",
      "Sukienka buk | | | buk.jpg",
      "Sukienka jesion | | | jesion.jpg",
      "Sukienka klon | | | klon.jpg",
    ),
  },
  {
    name: "a table of the wares one wishes for, in small pictures, in an account",
    lang: "uk",
    url: "http://shop.localhost/index.php?route=account/wishlist",
    body: `<h1>Список бажань</h1><table>${["Чайник", "Лампа"].map((name, i) => `<tr><td><a href="/index.php?route=product/product&product_id=${i + 4}"><img src="/i/w-${i}.jpg" width="47" height="47"></a></td><td><a href="/index.php?route=product/product&product_id=${i + 4}">${name} Роса</a></td><td>${11 + i}49.00₴</td><td><button title="Купити">+</button><a href="/index.php?route=account/wishlist&remove=${i}">×</a></td></tr>`).join("")}</table>`,
    kind: "listing",
    products: expected("Чайник Роса | 1149 | UAH | w-0.jpg", "Лампа Роса | 1249 | UAH | w-1.jpg"),
    layout: true,
  },
  {
    name: "crowns on a Danish page that says it is English",
    lang: "en",
    head: GRID,
    body: `<div class="g">${["jakke", "skjorte"].map((slug, i) => `<div><a href="/toj/${slug}.html">${picture(slug)}<h3>Birk ${slug}</h3></a><p>Lavet af uld, læg den i din kurv</p><h4>${3 + i}99,00 kr.</h4></div>`).join("")}</div>`,
    kind: "listing",
    products: expected("Birk jakke | 399 | DKK | jakke.jpg", "Birk skjorte | 499 | DKK | skjorte.jpg"),
  },
  {
    name: "prices before and after tax",
    lang: "ro",
    head: GRID,
    body: `<div class="g">${["ghete", "pantofi"].map((slug, i) => `<div><a href="/index.php?route=product/product&product_id=${i + 60}">${picture(slug)}</a><h4>${slug} Arin</h4><div class="price"><span>5${i}9,00Lei</span> <span>Fără TVA: 43${i},50Lei</span></div><button>Adaugă în coș</button></div>`).join("")}</div>`,
    kind: "listing",
    products: expected("ghete Arin | 509 | RON | ghete.jpg", "pantofi Arin | 519 | RON | pantofi.jpg"),
  },
  {
    name: "a basket at the side under a picture of a line",
    lang: "de",
    head: GRID,
    body: `<table><tr><td>Warenkorb <img src="/i/line.gif" width="100%" height="1"></td></tr><tr><td>1 x <a href="/product_info.php?products_id=77">Löffel Ahorn</a><hr>CHF 7.00</td></tr></table><div class="g">${["brett", "schale"].map((slug, i) => `<div><a href="/product_info.php?products_id=${i + 3}">${picture(slug)}<h3>Holz${slug}</h3></a>CHF ${42 + i}.00</div>`).join("")}</div>`,
    kind: "listing",
    products: expected("Holzbrett | 42 | CHF | brett.jpg", "Holzschale | 43 | CHF | schale.jpg"),
    layout: true,
  },
  {
    name: "the results of a search, one of them sold out",
    lang: "ja",
    head: `<title>布と革の店</title>${GRID}`,
    body: `<a href="/cart">カートを見る</a><div class="product-search"><h3>商品検索結果</h3><ul class="g">${["生成り", "紺", "藍"].map((name, i) => `<li><a href="?pid=${i + 20}">${picture(`t-${i}`)}<span>トート ${name}</span><span>${i === 2 ? "売り切れ" : `${6 + i},380円`}</span></a></li>`).join("")}</ul></div><p>送料全国一律660円</p>`,
    kind: "listing",
    products: expected(
      "トート 生成り | 6380 | JPY | t-0.jpg",
      "トート 紺 | 7380 | JPY | t-1.jpg",
      "トート 藍 | | | t-2.jpg",
    ),
    layout: true,
  },
];
