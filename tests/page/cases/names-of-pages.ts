import { BIG, expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

/** Pages of a product whose headings say something else than its name, and lists whose tiles say little. */
export const NAMES_OF_PAGES: readonly PageCase[] = [
  {
    name: "a name in a paragraph that is styled as a heading, above notes that are headings",
    lang: "pl",
    url: "http://shop.localhost/product/12",
    body: `<p class="h1 tytul">Spódnica lniana Wrzos</p><div><div><div>${BIG("wrzos")}</div><div><h2> 149.00zł</h2><p>Dostępne rozmiary</p><a class="btn" href="#">Dodaj do koszyka</a><p>Opis produktu</p><h6>Kolor:</h6><p>Wrzosowy</p><h5>Modelka ma na sobie rozmiar M</h5><h6><a href="/size_tables">Tabela rozmiarów</a></h6></div></div></div>`,
    kind: "product",
    products: [expectedMain("Spódnica lniana Wrzos | 149 | PLN | wrzos.jpg")],
    layout: true,
  },
  {
    name: "a heading that tells the colour beside the price, under the name",
    lang: "id",
    url: "http://shop.localhost/produk/8",
    body: `<header class="navbar"><a href="/">Toko Anyelir</a></header><div class="page"><div><h1> Kirana Blouse </h1><p>Ketersediaan:<b>Tersedia</b></p></div><div class="row"><div>${BIG("kirana")}</div><div><h3>COLOR: <b>Sage</b></h3><p>UKURAN:M</p><h1><b>Rp.215000</b> <a href="#" class="btn">Tambah</a></h1></div></div></div>`,
    kind: "product",
    products: [expectedMain("Kirana Blouse | 215000 | IDR | kirana.jpg")],
    layout: true,
  },
  {
    name: "the maker as the heading, the name in the line behind it",
    url: "http://shop.localhost/client/bag7.php",
    body: `<a href="cart.php">Bag</a><div><div>${BIG("satchel")}</div><div><div><a href="#"><h1 class="info--brand">MARLOWE &amp; PYE</h1></a><p class="info__name">Quilted satchel in plum</p></div><div class="price">$410</div><p>Color: <span>Plum</span></p><button>Add to Bag</button></div></div>`,
    kind: "product",
    products: [expectedMain("Quilted satchel in plum | 410 | USD | satchel.jpg")],
  },
  {
    name: "a heading for the page of any product, in two words, above the name",
    lang: "ko",
    url: "http://shop.localhost/detail.pdt?pdt_no=5",
    head: "<title>상품 상세 정보</title>",
    body: `<h1>상품 상세 정보</h1><div class="product-detail-container"><img src="/i/scarf.jpg" alt="쪽빛 실크 스카프"><h2>쪽빛 실크 스카프</h2><p>상품 번호: 5</p><p class="price">42000원</p><form action="addToCart.pdt"><input type="hidden" name="pdt_no" value="5"><button type="submit">장바구니 담기</button></form></div><a href="products.pdt">목록으로 가기</a><a href="cart.pdt">장바구니로 가기</a>`,
    kind: "product",
    products: [expectedMain("쪽빛 실크 스카프 | 42000 | KRW | scarf.jpg")],
  },
  {
    name: "a box that is headed by what its button says",
    lang: "it",
    url: "http://shop.localhost/prodotto.php?id=4",
    body: `<main><header class="head"><h1>Sciarpa di lana Brina</h1></header><div><div>${BIG("brina")}<h2>DESCRIZIONE</h2><p>Morbida e calda.</p></div><aside><div><h3>Acquista ora</h3><p><del>59,00 €</del> <span>41,50 €</span></p><form><input type="number" name="quantita" value="1"><button>AGGIUNGI AL CARRELLO</button></form></div></aside></div></main>`,
    kind: "product",
    products: [expectedMain("Sciarpa di lana Brina | 41.5 | EUR | brina.jpg")],
    layout: true,
  },
  {
    name: "a name above the block with the price, where the link that buys is plain",
    lang: "fa",
    url: "http://shop.localhost/pages/product/?pid=9",
    body: `<a href="../index/">برگشت</a><div class="container"><span class="title">شال پشمی فیروزه‌ای</span><br><span>بافت دست، رنگ طبیعی</span><div class="block"><div><span>قیمت:</span> <span class="badge">640,000 تومان</span></div><div><span>تعداد موجود در انبار:</span> <span class="badge">14</span></div><div>${BIG("shal")}</div><div><a href="../carts.php?action=ADD&pid=9">افزودن به سبد خرید</a></div></div></div>`,
    kind: "product",
    products: [expectedMain("شال پشمی فیروزه‌ای | 640000 | IRT | shal.jpg")],
    layout: true,
  },
  {
    name: "a remark in brackets as the highest heading",
    lang: "zh",
    url: "http://shop.localhost/home/detail.php?id=31",
    body: `<a href="cart.php">购物车</a><div><div>${BIG("qipao")}<h3>收藏&nbsp;&nbsp;推荐</h3></div><div><h3>织锦缎改良旗袍 长袖修身款</h3><hr><div><h5>本店售价：</h5></div><div>￥688元</div><div><h2>(以下城市可以预约试穿)</h2></div><h3>苏州店</h3><h3>杭州店</h3><a href="">立即购买</a><a href="cart.php">加入购物车</a></div></div>`,
    kind: "product",
    products: [expectedMain("织锦缎改良旗袍 长袖修身款 | 688 | CNY | qipao.jpg")],
    layout: true,
  },
  {
    name: "a price that markup calls one as the last words of a long description",
    lang: "sv",
    url: "http://shop.localhost/product-vantar.php",
    body: `<nav><a href="cart.php">Varukorg</a></nav><section><h3 class="product-page-title">Lovikkavantar i ull</h3>${BIG("vantar")}<p class="about">Stickade för hand i Tornedalen av svensk ull. Varma även när de är våta. <br><br> Tvättas för hand, torkas liggande. Passar de flesta händer och håller i många år.<br><br><span class="product-page-price">380kr</span></p><button>Lägg i varukorgen</button></section>`,
    kind: "product",
    products: [expectedMain("Lovikkavantar i ull | 380 | SEK | vantar.jpg")],
  },
  {
    name: "tiles with a heading of the first rank each, beside a banner",
    lang: "fi",
    head: GRID,
    body: `<nav><a href="/cart">Ostoskori</a></nav><div><h1>Our hats</h1><header><img src="/i/banner.jpg" width="900" height="300"></header><section class="g">${[
      ["lumi", "Lumi", "39.00", true],
      ["halla", "Halla", "1,045.00", false],
      ["routa", "Routa", "52.50", true],
      ["kide", "Kide", "61.00", true],
    ]
      .map(
        ([slug, name, price, sold]) =>
          `<div class="card"><h1>${name}</h1><figure><img src="/i/${slug}.jpg" width="200" height="266"></figure><p>Villaa</p><span class="price">$${price}</span><h2><a href="/products/${slug}" title="${name}"><svg></svg></a></h2>${sold ? "<button>Osta</button>" : ""}</div>`,
      )
      .join("")}</section></div>`,
    kind: "listing",
    products: expected(
      "Lumi | 39 | USD | lumi.jpg",
      "Halla | 1045 | USD | halla.jpg",
      "Routa | 52.5 | USD | routa.jpg",
      "Kide | 61 | USD | kide.jpg",
    ),
    layout: true,
  },
  {
    name: "sold out among what is bought by plain links",
    lang: "de",
    head: GRID,
    body: `<h2>Neuheiten</h2><div class="g">${["Mohnrot", "Kornblau", "Farngrün", "Honiggelb"]
      .map(
        (name, i) =>
          `<div class="article"><div class="entity"><img src="/i/schal-${i}.jpg" width="220" height="280"><h3>Schal ${name}</h3><h3>Preis: 3${i},95 €</h3>${i === 2 ? '<h4 style="color:red">Ausverkauft!</h4>' : `<a class="korb" href="warenkorb.php?action=add&amp;nr=${i}"><p>In Warenkorb legen</p></a>`}</div></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Schal Mohnrot | 30.95 | EUR | schal-0.jpg",
      "Schal Kornblau | 31.95 | EUR | schal-1.jpg",
      "Schal Farngrün | 32.95 | EUR | schal-2.jpg",
      "Schal Honiggelb | 33.95 | EUR | schal-3.jpg",
    ),
    layout: true,
  },
  {
    name: "prices before the names in their headings, in a page that a program draws",
    lang: "pl",
    head: GRID,
    body: `<div id="__nuxt"><nav><a href="/koszyk">Koszyk</a></nav><main class="g">${[
      ["kilim", "Kilim w pasy", "<small>219 zł</small>"],
      ["pled", "Pled z wełny", "<small><span>99 zł</span> <span><s>129 zł</s></span></small>"],
      ["poduszka", "Poduszka haftowana", "<small>59 zł</small>"],
    ]
      .map(
        ([slug, name, price]) =>
          `<div class="card">${picture(slug ?? "")}<h3>${price}\n    ${name}\n  </h3></div>`,
      )
      .join("")}</main></div>`,
    kind: "listing",
    products: expected(
      "Kilim w pasy | 219 | PLN | kilim.jpg",
      "Pled z wełny | 99 | PLN | pled.jpg",
      "Poduszka haftowana | 59 | PLN | poduszka.jpg",
    ),
    layout: true,
  },
  {
    name: "no prices, in rows of two, each bought where it stands under words about it",
    lang: "pt",
    url: "http://shop.localhost/index.php?p=3",
    head: "<style>.row{display:flex;gap:20px}.row>div{width:420px}</style>",
    body: [
      ["violeta", "Vestido Violeta"],
      ["cereja", "Vestido Cereja"],
      ["anil", "Vestido Anil"],
      ["oliva", "Vestido Oliva"],
      ["canela", "Vestido Canela"],
      ["areia", "Vestido Areia"],
    ]
      .map(([slug, name]) => {
        const about = "Um tecido leve, que acompanha o corpo e guarda a forma ao longo do dia. ".repeat(12);
        return `<div class="col"><div class="card">${picture(slug ?? "")}<h5>${name}</h5><p>${about}</p><a href="#" class="btn">Comprar</a></div></div>`;
      })
      .reduce((rows, tile, i) => `${rows}${i % 2 ? "" : '</div><div class="row">'}${tile}`, "<div>")
      .concat("</div>"),
    kind: "listing",
    products: expected(
      "Vestido Violeta | | | violeta.jpg",
      "Vestido Cereja | | | cereja.jpg",
      "Vestido Anil | | | anil.jpg",
      "Vestido Oliva | | | oliva.jpg",
      "Vestido Canela | | | canela.jpg",
      "Vestido Areia | | | areia.jpg",
    ),
    layout: true,
  },
  {
    name: "no prices and plain links into a basket in the shop's language",
    lang: "pt",
    url: "http://shop.localhost/Vitrine.aspx",
    head: GRID,
    body: `<ul><li><a href="/Cliente/carrinho.aspx">Carrinho</a></li></ul><h1>Vitrine de broches</h1><div class="g">${[
      ["gato", "Broche gato malhado, esmaltado"],
      ["sabia", "Broche sabiá laranjeira, de latão"],
      ["ipe", "Broche ipê amarelo em flor"],
      ["onda", "Broche onda do mar, azul"],
    ]
      .map(
        ([slug, name], i) =>
          `<div class="col">${picture(slug ?? "")}<p>${name}</p><a href="/Cliente/carrinho.aspx?addpid=${i}">Adicionar ao Carrinho</a></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Broche gato malhado, esmaltado | | | gato.jpg",
      "Broche sabiá laranjeira, de latão | | | sabia.jpg",
      "Broche ipê amarelo em flor | | | ipe.jpg",
      "Broche onda do mar, azul | | | onda.jpg",
    ),
    layout: true,
  },
  {
    name: "what is saved, behind its bold label, is no price",
    lang: "ru",
    head: GRID,
    body: `<h1>Промыслы</h1><div class="g">${[
      ["podnos", "Поднос с маками", "3.800,00", "600,00", "3.200,00"],
      ["shal", "Шаль в розах", "6.400,00", "500,00", "5.900,00"],
      ["larec", "Ларец расписной", "2.900,00", "450,00", "2.450,00"],
    ]
      .map(
        ([slug, name, old, saved, now]) =>
          `<div><a href="index.php?action=product_detail&product_id=${slug}">${picture(slug ?? "")}</a><strong><a href="index.php?action=product_detail&product_id=${slug}">${name}</a></strong><div><span>Цена по прайсу: <strong style="text-decoration:line-through">${old} руб.</strong><br><strong>Вы экономите:</strong> ${saved} руб.</span><h2>${now} руб.</h2></div></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Поднос с маками | 3200 | RUB | podnos.jpg",
      "Шаль в розах | 5900 | RUB | shal.jpg",
      "Ларец расписной | 2450 | RUB | larec.jpg",
    ),
    layout: true,
  },
  {
    name: "a drawing that opens a closer look, large while no style has come",
    lang: "ru",
    head: GRID,
    body: `<h1>Обувь</h1><div class="g">${["Кеды синие", "Туфли вишнёвые", "Сапоги жёлтые"]
      .map(
        (name, i) =>
          `<div class="card"><a href="#quick-view"><img src="/i/card__zoom.svg" width="220" height="240"><span>Быстрый просмотр</span></a><a href="#">${picture(`obuv-${i}`)}</a><a href="" class="card__title">${name}</a><p>Артикул: 20521${i}</p><div><p><span>82${i}</span> руб/пара</p><p><span>990${i}</span> руб/коробка</p></div><a href="#" class="btn">Добавить в корзину</a></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Кеды синие | 820 | RUB | obuv-0.jpg",
      "Туфли вишнёвые | 821 | RUB | obuv-1.jpg",
      "Сапоги жёлтые | 822 | RUB | obuv-2.jpg",
    ),
    layout: true,
  },
  {
    name: "a page that says what was put into the basket",
    lang: "ja",
    url: "http://shop.localhost/View/main/cart_add.php",
    body: `<a href="./cart.php">カート</a><main><div><div>商品をカートに追加しました。</div><div class="item">${BIG("tetsubin")}<div class="name">鉄瓶 0.8L</div><div class="price">13,500円（税込）</div></div></div><button>ショッピングを続ける</button><button>購入手続き</button></main>`,
    kind: "none",
    products: [],
    layout: true,
  },
  {
    name: "houses, told by their bedrooms",
    lang: "es",
    url: "http://shop.localhost/inmuebles.php",
    head: `<title>Inmuebles</title>${GRID}`,
    body: `<h4>Lista de Inmuebles</h4><div class="g">${[
      "Casa, Usaquén",
      "Apartamento, Laureles",
      "Finca, Rionegro",
    ]
      .map(
        (name, i) =>
          `<div class="property"><a href="detalle.php"><div>${picture(`casa-${i}`)}</div><div class="tag price">$${i + 3}85.000.000</div><h3>Venta</h3><p>${name}</p><ul><li>Alcobas: 3</li><li>Baños: 2</li></ul></a></div>`,
      )
      .join("")}</div>`,
    kind: "none",
    products: [],
  },
  {
    name: "evenings of a school with what it costs to get in",
    lang: "hu",
    head: GRID,
    body: `<div class="g">${["Tavaszi hangverseny", "Farsangi bál", "Diáknap"]
      .map(
        (name, i) =>
          `<div class="card">${picture(`est-${i}`)}<h5>${name}</h5><p>A díszteremben, este.<br>Belépő: 1 ${i}00 Ft.</p><a href="rendezvenyek.php" class="btn">Érdekel</a></div>`,
      )
      .join("")}</div>`,
    kind: "none",
    products: [],
  },
  {
    name: "motorbikes for hire, told by their engines",
    head: GRID,
    body: `<h2>Motorbike Rentals</h2><div class="g">${["Lagoon 110", "Heron 125", "Dune 155"]
      .map(
        (name, i) =>
          `<div class="tile">${picture(`moto-${i}`)}<h3>${name}</h3><p>Automatic • 1${i}5cc</p><div>$${i + 5} / Day</div></div>`,
      )
      .join("")}</div>`,
    kind: "none",
    products: [],
  },
  {
    name: "a maker that one tile alone has, where those of others come again",
    head: GRID,
    body: `<h1>Saris</h1><div class="g">${[
      ["ochre", "Vale House", "Ochre georgette sari"],
      ["ivory", "Vale House", "Ivory chanderi sari"],
      ["rose", "Loom of Kashi", "Rose banarasi sari"],
      ["sage", "Vale House", "Sage organza sari"],
    ]
      .map(
        ([slug, maker, name], i) =>
          `<div><a href="/saris/${slug}">${picture(slug ?? "")}<div><h6>${maker}</h6><h4>${name}</h4><h5>£${i + 1}40</h5></div></a></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Ochre georgette sari | 140 | GBP | ochre.jpg",
      "Ivory chanderi sari | 240 | GBP | ivory.jpg",
      "Rose banarasi sari | 340 | GBP | rose.jpg",
      "Sage organza sari | 440 | GBP | sage.jpg",
    ),
  },
];
