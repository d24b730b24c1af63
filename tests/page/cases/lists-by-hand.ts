import { BIG, expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

/** One member of a list for each name, with its place in the list. */
const each = (names: readonly string[], member: (name: string, i: number) => string): string =>
  names.map(member).join("");

const FOUR = ["Plum Velvet Skirt", "Ochre Linen Shirt", "Teal Wool Scarf", "Rust Suede Belt"] as const;

/** Shops written by hand, each with a habit of its own. */
export const LISTS_BY_HAND: readonly PageCase[] = [
  {
    name: "numbers without a sign, linked by the number of the ware to a script of the shop's own",
    lang: "ko",
    body: `<div class="row">${each(["체크 셔츠", "플리츠 스커트", "캔버스 가방", "니트 조끼"], (name, i) => `<div class="col"><div><a href="shopView.sh?goodsId=G0${i}&menu=5">${picture(`ko-${i}`)}</a></div><div>${name}</div><div>${i + 3}9000</div></div>`)}</div>`,
    kind: "listing",
    products: expected(
      "체크 셔츠 | 39000 | KRW | ko-0",
      "플리츠 스커트 | 49000 | KRW | ko-1",
      "캔버스 가방 | 59000 | KRW | ko-2",
      "니트 조끼 | 69000 | KRW | ko-3",
    ),
  },
  {
    name: "a maker whose name begins as a badge does",
    lang: "fr",
    body: `<div class="g">${each(["New Harbour", "Sandale cuir", "Sac de raphia"], (name, i) => `<div class="produit">${picture(`fr-${i}`)}<h4 class="NomProduit">${name}</h4><p class="description">Lorem ipsum dolor sit amet.</p><h5 class="prix">1${i} 000 fcfa</h5><button>Ajouter au panier</button></div>`)}</div>`,
    head: GRID,
    kind: "listing",
    products: expected(
      "New Harbour | 10000 | XOF | fr-0",
      "Sandale cuir | 11000 | XOF | fr-1",
      "Sac de raphia | 12000 | XOF | fr-2",
    ),
  },
  {
    name: "the maker behind the name and a stroke, in an element of its own",
    body: `<div class="g">${each(FOUR, (name, i) => `<div class="card"><a href="/w/${i}">${picture(`slash-${i}`)}</a><div class="card__name">${name} / <span>Tallow</span></div><div>€${i + 2}5.00</div></div>`)}</div>`,
    head: GRID,
    kind: "listing",
    products: expected(
      "Plum Velvet Skirt | 25 | EUR | slash-0",
      "Ochre Linen Shirt | 35 | EUR | slash-1",
      "Teal Wool Scarf | 45 | EUR | slash-2",
      "Rust Suede Belt | 55 | EUR | slash-3",
    ),
  },
  {
    name: "a table of wares without links, with how many are left in a cell of its own",
    lang: "id",
    head: "<title>Toko Kain Sederhana</title>",
    body: `<table><tr><th>Foto</th><th>Nama</th><th>Harga</th><th>Stok</th></tr>${each(["Kebaya Kutu Baru", "Sarung Tenun", "Selendang Sutra"], (name, i) => `<tr><td><img src="/i/kain-${i}.jpg" width="96" height="96"></td><td>${name}</td><td>Rp ${i + 1}75.000</td><td>1${i}</td></tr>`)}</table>`,
    kind: "listing",
    products: expected(
      "Kebaya Kutu Baru | 175000 | IDR | kain-0",
      "Sarung Tenun | 275000 | IDR | kain-1",
      "Selendang Sutra | 375000 | IDR | kain-2",
    ),
    layout: true,
  },
  {
    name: "a name with a colon, and a picture of the words that buy",
    lang: "de",
    url: "https://shop.localhost/leinenhemd_ocker.php",
    body: `<div id="content"><h1>Leinenhemd Ocker:</h1><table><tr><td>${BIG("hemd")}</td><td><h2>Leinenhemd Ocker: </h2><p class="preis">&euro; 47,99</p><h3>Größen:</h3><p>S, M, L</p><a href="warenkorb.php"><img src="/i/in_den_warenkorb.png" width="220" height="50"></a><ul><li>Weicher Kragen aus Jersey</li><li>Langarm</li></ul></td></tr></table></div>`,
    kind: "product",
    products: [expectedMain("Leinenhemd Ocker | 47.99 | EUR | hemd")],
  },
  {
    name: "a ware without a price, in a form that buys it, told by markup and address",
    url: "https://books.localhost/shop/sailing/the-plum-sail.html",
    layout: true,
    head: "<title>The Plum Sail, a Pattern Book - Sailing - Books</title>",
    body: `<p><a href="/shop/checkout/cart/">My Cart</a></p><div class="product-view"><div class="product-essential"><form action="/shop/checkout/cart/add/product/50/" method="post">${BIG("sail")}<div class="product-shop"><div class="product-name"><h2>The Plum Sail, a Pattern Book</h2></div><p>Author:</p></div></form></div></div>`,
    kind: "product",
    products: [expectedMain("The Plum Sail, a Pattern Book | | | sail")],
  },
  {
    name: "a ware without a price under a heading that any has, in Romanian",
    lang: "ro",
    url: "https://lemn.localhost/produs.php?id=6",
    body: `<div><h1>Detalii Produs</h1></div><div class="row"><div>${BIG("lemn")}</div><div><h1>Tocător rotund din frasin</h1><p>Prețul se stabilește telefonic.</p><form method="post" action="add_to_cart.php"><button type="submit">Adaugă în coș</button></form></div></div>`,
    kind: "product",
    products: [expectedMain("Tocător rotund din frasin | | | lemn")],
  },
  {
    name: "wares without a sign at their prices, beside others that have one",
    lang: "zh",
    body: `<h2>排行榜</h2><ul>${each(["速干背心", "高腰长裤", "运动外套"], (name, i) => `<li><a href="/a/${i}">${picture(`rank-${i}`)}</a><a href="/a/${i}">${name}</a><b>￥${i + 5}9</b></li>`)}</ul><ul>${each(["春夏短袖瑜伽服", "健身长裤加厚款", "儿童舞蹈鞋软底", "印花瑜伽外套女"], (name, i) => `<li><a href="javascript:;" onclick="go(${i})">${picture(`zh-${i}`)}</a><dl><dt><a href="javascript:;">${name}</a></dt><dd class="orange">1${i}8.0</dd><dd><a href="#" title="加入购物车" class="btn">加入购物车</a></dd></dl></li>`)}</ul>`,
    kind: "listing",
    products: expected(
      "速干背心 | 59 | CNY | rank-0",
      "高腰长裤 | 69 | CNY | rank-1",
      "运动外套 | 79 | CNY | rank-2",
      "春夏短袖瑜伽服 | 108 | CNY | zh-0",
      "健身长裤加厚款 | 118 | CNY | zh-1",
      "儿童舞蹈鞋软底 | 128 | CNY | zh-2",
      "印花瑜伽外套女 | 138 | CNY | zh-3",
    ),
  },
  {
    name: "the price by one way of paying below the one that holds for all",
    lang: "pt-BR",
    url: "https://loja.localhost/products/colar",
    body: `<div><h1>Colar de contas verdes</h1>${BIG("colar")}<div><strong class="pdp-main">R$ 189,00</strong></div><div class="pdp__price-pix-row"><span>ou</span> <strong class="pdp__price-pix">R$ 179,55</strong></div><button>Adicionar ao carrinho</button></div>`,
    kind: "product",
    products: [expectedMain("Colar de contas verdes | 189 | BRL | colar")],
  },
  {
    name: "a catalogue that is all in the head of its page",
    body: `<h1>Our catalogue of bags</h1><header><table><tr>${each(["Plum Duffel", "Ochre Satchel", "Teal Pouch"], (name, i) => `<td><img src="/i/bag-${i}.jpg" width="120" height="120"><br>${name}<br>Price: <strike>$9${i}.00</strike> $8${i}.00<form action="keep" method="post"><input type="submit" value="Add to Cart"></form></td>`)}</tr></table></header>`,
    kind: "listing",
    products: expected(
      "Plum Duffel | 80 | USD | bag-0",
      "Ochre Satchel | 81 | USD | bag-1",
      "Teal Pouch | 82 | USD | bag-2",
    ),
  },
  {
    name: "wares in a folder of projects, beside the product of the page",
    lang: "tr",
    url: "https://shop.localhost/lab/projects/kilim/detail.php",
    body: `<div class="prd-detail"><h1>Kayık Yaka Triko</h1>${BIG("triko")}<div>149,00 TL</div><button>Sepete Ekle</button></div><ul>${each(["Desenli Şal", "El Çantası", "Bere"], (name, i) => `<li><a href="#">${picture(`tr-${i}`)}</a><div><a href="#">${name}</a></div><div>${i + 5}9,00 TL</div></li>`)}</ul>`,
    kind: "product",
    products: [
      expectedMain("Kayık Yaka Triko | 149 | TRY | triko"),
      ...expected("Desenli Şal | 59 | TRY | tr-0", "El Çantası | 69 | TRY | tr-1", "Bere | 79 | TRY | tr-2"),
    ],
  },
  {
    name: "bags with Brunei dollars, one file of a picture spelled nearly as a trolley is in Malay",
    body: `<ul>${each(["Rosso Tote", "Petrolio Crossbody", "Polka Satchel"], (name, i) => `<li><a href="/photos/${i === 1 ? "tonipetrolio" : `bag${i}`}.jpg"><img src="/photos/${i === 1 ? "tonipetrolio" : `bag${i}`}.jpg" width="300" height="250"></a><div class="caption">${name}</div><div>BND ${i + 3}00</div></li>`)}</ul>`,
    kind: "listing",
    products: expected(
      "Rosso Tote | 300 | BND | bag0",
      "Petrolio Crossbody | 400 | BND | tonipetrolio",
      "Polka Satchel | 500 | BND | bag2",
    ),
  },
  {
    name: "the page of a dress, which its trail ends in, with a basket and a price in a list of facts",
    lang: "fr",
    url: "https://mode.localhost/details.php",
    body: `<ul class="breadcrumb"><li><a href="/accueil.php">Accueil</a></li><li class="active">Robe longue prune</li></ul><div class="row"><h1>Robe Longue Prune</h1><table><tr><td>${BIG("robe")}</td><td><p>Couturier : Atelier Sureau<br>Matière : 96% lin<br>Prix : 129.99€<br>Temps de livraison : 6 jours</p></td><td><a href="#" class="btn"> Panier</a></td></tr></table></div>`,
    kind: "product",
    products: [expectedMain("Robe Longue Prune | 129.99 | EUR | robe")],
    layout: true,
  },
  {
    name: "wares without prices that are ordered in Vietnamese, under names that come again",
    lang: "vi",
    body: each(
      ["Túi", "Giày"],
      (group, g) =>
        `<h4>${group}</h4><div class="row">${each(["đỏ mận", "xanh rêu", "vàng nghệ"], (name, i) => `<div class="card">${picture(`vi-${g}${i}`)}<div class="card-body"><h5 class="card-title">${group} thời trang ${name}</h5><form action="" method="post"><button type="submit" class="btn">Đặt mua</button></form></div></div>`)}</div>`,
    ),
    kind: "listing",
    products: expected(
      "Túi thời trang đỏ mận | | | vi-00",
      "Túi thời trang xanh rêu | | | vi-01",
      "Túi thời trang vàng nghệ | | | vi-02",
      "Giày thời trang đỏ mận | | | vi-10",
      "Giày thời trang xanh rêu | | | vi-11",
      "Giày thời trang vàng nghệ | | | vi-12",
    ),
  },
  {
    name: "a list whose wares can be bought after a login, in Indonesian",
    body: `<div class="row">${each(["Kebaya Plum", "Sarung Oker", "Selendang Teal"], (name, i) => `<div class="col"><div class="card">${picture(`login-${i}`)}<h5 class="card-title">${name}</h5><p class="card-text">Harga : Rp. ${i + 1}00.000</p><p>Silakan <a href="/login">login</a> untuk menambahkan produk ke keranjang.</p></div></div>`)}</div>`,
    kind: "listing",
    products: expected(
      "Kebaya Plum | 100000 | IDR | login-0",
      "Sarung Oker | 200000 | IDR | login-1",
      "Selendang Teal | 300000 | IDR | login-2",
    ),
  },
  {
    name: "a list in which one ware has no picture, and a logo that never came",
    body: `<div><img id="logo" alt="" hidden> Tallow</div><h1>Shop with ease</h1><div class="wares">${each(FOUR, (name, i) => `<article class="product-card"><div class="product-image">${i === 2 ? "<i>◇</i>" : picture(`some-${i}`)}</div><div class="product-info"><span class="product-category">Spring</span><h3 class="product-name">${name}</h3><div><strong class="current-price">€${i + 2}5.00</strong></div><button type="button">Add to bag</button></div></article>`)}</div>`,
    head: "<style>.wares{display:grid;grid-template-columns:repeat(3,240px)}</style>",
    kind: "listing",
    products: expected(
      "Plum Velvet Skirt | 25 | EUR | some-0",
      "Ochre Linen Shirt | 35 | EUR | some-1",
      "Rust Suede Belt | 55 | EUR | some-3",
    ),
  },
  {
    name: "a bag whose price is asked for, in a folder of numbered pages",
    lang: "es",
    url: "https://tienda.localhost/tienda/17",
    body: `<div><div>${BIG("bolso")}</div><div><h1>Bolso de cuero graneado</h1><p>Consultar precio</p><a href="https://wa.me/580000000000" class="btn">Consultar por WhatsApp</a></div></div>`,
    kind: "product",
    products: [expectedMain("Bolso de cuero graneado | | | bolso")],
  },
];
