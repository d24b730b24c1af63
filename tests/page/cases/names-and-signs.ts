import { expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

/** What is a name and what only looks like one, what is money and what only looks like it. */
export const NAMES_AND_SIGNS: readonly PageCase[] = [
  {
    name: "models that begin with the sign of a currency and a small number",
    lang: "ko",
    head: GRID,
    body: `<div class="g">${[14, 15, 16].map((n) => `<article><a href="./kettle.html?id=${n}"><img src="/i/kettle-${n}.jpg" width="220" height="280" alt="R${n} 이슬 주전자"><div><h3 class="product-name">R${n} 이슬 주전자</h3><span class="price">할인가 ₩${n}9,000</span></div></a><a href="#" class="btn-cart">장바구니 담기</a></article>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "R14 이슬 주전자 | 149000 | KRW | kettle-14.jpg",
      "R15 이슬 주전자 | 159000 | KRW | kettle-15.jpg",
      "R16 이슬 주전자 | 169000 | KRW | kettle-16.jpg",
    ),
  },
  {
    name: "a model that ends in what is a sign of money in small letters",
    lang: "uk",
    url: "http://shop.localhost/product/rim-15",
    body: `<img src="/i/rim.jpg" width="400" height="400"><h1>Диск R15 4x100 ET 35 67.1 BR</h1><p>3200 грн</p><button>Купити</button>`,
    kind: "product",
    products: [expectedMain("Диск R15 4x100 ET 35 67.1 BR | 3200 | UAH | rim.jpg")],
    layout: true,
  },
  {
    name: "names in lines broken by hand, over what they cost once",
    lang: "pt-BR",
    head: `${GRID}<style>.antes{text-decoration:line-through}</style>`,
    body: `<div class="g">${[
      ["Bota", "Serra", "Alta"],
      ["Sandália", "Brisa", "Fina"],
      ["Tamanco", "Ipê", "Liso"],
    ]
      .map(
        (words, i) =>
          `<div class="produto"><a href="#">${picture(`calcado-${i}`)}<div class="descricao">${words.join(" <br>")}</div><p><div class="antes">De R$ 20${i},00 por</div><p><div class="preco">R$ 119,9${i}</div></a></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Bota Serra Alta | 119.9 | BRL | calcado-0.jpg",
      "Sandália Brisa Fina | 119.91 | BRL | calcado-1.jpg",
      "Tamanco Ipê Liso | 119.92 | BRL | calcado-2.jpg",
    ),
    layout: true,
  },
  {
    name: "names in a class that says their colour, over instalments",
    lang: "pt-BR",
    head: GRID,
    body: `<div class="g">${["Camisola Lua", "Pijama Nuvem", "Robe Estrela"].map((name, i) => `<div class="product-item"><div>${picture(`noite-${i}`)}</div><div class="product-item-desc"><p class="txt-product-item font-size-12 color-black">${name}</p></div><div class="product-item-price"><p class="txt-product-price font-size-16 color-black">R$ 6${i},00</p></div><div class="product-item-parc"><p class="txt-product-parc font-size-14 color-rosybrown"><strong>2</strong>x de <strong>R$3${i},00</strong> sem juros</p></div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Camisola Lua | 60 | BRL | noite-0.jpg",
      "Pijama Nuvem | 61 | BRL | noite-1.jpg",
      "Robe Estrela | 62 | BRL | noite-2.jpg",
    ),
  },
  {
    name: "pictures that a template calls alike, names in the line of the maker",
    head: GRID,
    body: `<div class="g">${["robe lin", "pull torsadé", "sac école"].map((name, i) => `<div class="product-card"><a href="/produit/detail/${i}"><img src="/i/mode-${i}.jpg" alt="Mill Product" width="220" height="280"></a><div class="card-vendor"><a href="/produit/detail/${i}" title="Anna">${name}</a></div><div class="card-price">7${i}.500 TDN</div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "robe lin | 70.5 | TND | mode-0.jpg",
      "pull torsadé | 71.5 | TND | mode-1.jpg",
      "sac école | 72.5 | TND | mode-2.jpg",
    ),
  },
  {
    name: "labels and bare numbers in one text",
    lang: "es",
    body: `<header><h1>tienda de ropa</h1><button id="carrito">carrito</button></header>${GRID}<main><div class="g">${["remera", "buzo", "pantalón", "gorra"].map((name, i) => `<div class="tarjetas"><h3 class="titulo"> ${name}</h3>${picture(`ropa-${i}`)}<h4 class="precio"> precio:${3 + i}500</h4><p>stock: 12</p><h4 class="talles">talles: s-m-l</h4><button onclick="add(${i})">agregar al carrito</button></div>`).join("")}</div></main>`,
    kind: "listing",
    products: expected(
      "remera | 3500 | | ropa-0.jpg",
      "buzo | 4500 | | ropa-1.jpg",
      "pantalón | 5500 | | ropa-2.jpg",
      "gorra | 6500 | | ropa-3.jpg",
    ),
  },
  {
    name: "bare amounts below one",
    lang: "de",
    head: GRID,
    body: `<ul class="g">${["Zitrone", "Limette", "Kumquat", "Orange"].map((name, i) => `<li class="cards"><div class="card"><div class="card-title">${name}</div>${picture(`frucht-${i}`)}<div><p>eine lange Beschreibung</p><hr><p>0.5${i}</p></div><div><button>details</button><button>In den Warenkorb</button></div></div></li>`).join("")}</ul><a href="/warenkorb">Korb</a>`,
    kind: "listing",
    products: expected(
      "Zitrone | 0.5 | EUR | frucht-0.jpg",
      "Limette | 0.51 | EUR | frucht-1.jpg",
      "Kumquat | 0.52 | EUR | frucht-2.jpg",
      "Orange | 0.53 | EUR | frucht-3.jpg",
    ),
  },
  {
    name: "numbers in bold with the name of the money behind them, in cells of a table",
    lang: "it",
    body: `<table><tr>${["Lampada Salice", "Plaid in lana merino", "Vassoio in ulivo"].map((name, i) => `<td width="33%"><img src="uploads/casa_${i}.jpg" width="200" height="200"><br><a href="dettaglio.php?id=5${i}"><strong>${name}</strong></a><br>Fatto a mano, in legno e lino<br><strong>3${i}.50</strong> euro<br>Sconto: <strong>10</strong> %<br></td>`).join("")}</tr></table>`,
    kind: "listing",
    products: expected(
      "Lampada Salice | 30.5 | EUR | casa_0.jpg",
      "Plaid in lana merino | 31.5 | EUR | casa_1.jpg",
      "Vassoio in ulivo | 32.5 | EUR | casa_2.jpg",
    ),
  },
  {
    name: "prices in tomans",
    lang: "fa",
    head: GRID,
    body: `<div class="g" dir="rtl">${["کیف مسیر", "شال بهار", "کلاه برف"].map((name, i) => `<div class="product-card"><a href="/product/${i}">${picture(`fa-${i}`)}<h3>${name}</h3></a><p>${["۲۸۵٬۰۰۰", "۳۱۰٬۰۰۰", "۴۶۰٬۰۰۰"][i]} تومان</p></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "کیف مسیر | 285000 | IRT | fa-0.jpg",
      "شال بهار | 310000 | IRT | fa-1.jpg",
      "کلاه برف | 460000 | IRT | fa-2.jpg",
    ),
  },
  {
    name: "a second copy of the picture folded away beside every price",
    lang: "nb",
    url: "http://shop.localhost/collections/paier",
    head: `<title>Paier – Millro</title><meta property="og:title" content="Paier"><meta property="og:type" content="product.group">${GRID}<style>.kopi{display:none}</style>`,
    body: `<main><section class="collection__section"><h1 class="collection__title">Paier</h1><ul class="g">${["Eplepai", "Blåbærpai", "Sitronpai"].map((name, i) => `<li><div class="product-card"><a href="/products/pai-${i}"><span class="visually-hidden">${name}</span></a><div class="bilde">${picture(`pai-${i}`)}</div><div class="product-card__content"><span class="product-card__title">${name}</span><div class="kopi">${picture(`pai-${i}`)}</div><p>Pris 34${i},00 kr</p></div></div></li>`).join("")}</ul></section></main>`,
    kind: "listing",
    products: expected(
      "Eplepai | 340 | NOK | pai-0.jpg",
      "Blåbærpai | 341 | NOK | pai-1.jpg",
      "Sitronpai | 342 | NOK | pai-2.jpg",
    ),
    layout: true,
  },
  {
    name: "a line under the name that is called a subtitle, and the same amount once more without its sign",
    head: GRID,
    body: `<div class="g">${["NEROLI", "ILAUN", "WILD ROSE"].map((name, i) => `<div class="product-item"><div style="width:220px;height:280px;background-image:url('/i/scent-${i}.jpg')"></div><div class="product-overlay"><div class="product-name">${name}</div><div class="product-subtitle">Eau de Parfum</div><div class="product-price">€13${i}.00 / 50ml</div><span class="price">13${i}.00</span></div><button class="add-to-bag">Add to Bag</button></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "NEROLI | 130 | EUR | scent-0.jpg",
      "ILAUN | 131 | EUR | scent-1.jpg",
      "WILD ROSE | 132 | EUR | scent-2.jpg",
    ),
    layout: true,
  },
  {
    name: "thousands of tomans parted by a stroke",
    lang: "fa",
    head: GRID,
    body: `<div class="g" dir="rtl">${["سویشرت سبز", "پیراهن نخی", "شلوار راسته"].map((name, i) => `<div class="product__item"><a href="/product/${i}">${picture(`fa-lebas-${i}`)}</a><h6><a href="/product/${i}">${name}</a></h6><span class="price">45${i}/000 تومان</span></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "سویشرت سبز | 450000 | IRT | fa-lebas-0.jpg",
      "پیراهن نخی | 451000 | IRT | fa-lebas-1.jpg",
      "شلوار راسته | 452000 | IRT | fa-lebas-2.jpg",
    ),
  },
  {
    name: "lunch to be bought at an address that is a menu, each link with the button beside it",
    lang: "ja",
    url: "http://shop.localhost/php/menu.php",
    body: `<main><table><tr>${["照り焼き弁当", "夏野菜カレー", "豆腐サラダ"].map((name, i) => `<td><a href="item_piece.php?id=${i}"><img src="../images/bento${i}.jpg" width="200" height="200" alt="${name}"><p>${name}</p><p>68${i}円</p></a><button>カートに入れる</button></td>`).join("")}</tr></table></main>`,
    kind: "listing",
    products: expected(
      "照り焼き弁当 | 680 | JPY | bento0.jpg",
      "夏野菜カレー | 681 | JPY | bento1.jpg",
      "豆腐サラダ | 682 | JPY | bento2.jpg",
    ),
  },
  {
    name: "raised cents behind a price without a sign",
    lang: "en",
    url: "http://shop.localhost/laptop-15",
    head: "<title>App</title>",
    body: `<div class="page"><div class="product-title">Laptop Mill 15</div><img src="/i/laptop.jpg" width="400" height="400"><div><div class="product-price">2.999<sup>99</sup></div><div class="product-old">3.499<sup>99</sup></div><button>Adauga in cos</button></div></div>`,
    kind: "product",
    products: [expectedMain("Laptop Mill 15 | 2999.99 | | laptop.jpg")],
    layout: true,
  },
];
