import { expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

/** Lists of wares that only their markup, a number or a button tells; and what else such shops do. */
export const SHELVES: readonly PageCase[] = [
  {
    name: "a list without prices whose markup calls its members products, by long names",
    lang: "es",
    head: GRID,
    body: `<div class="g">${["Body ajustado con abertura", "Bolso cubo con bolsa interior", "Blusa de cuello profundo", "Shorts de cintura con cordón"].map((name, i) => `<section class="S-product-item"><div><a href="/prenda-p-34${i}-cat-18.html">${picture(`prenda-${i}`)}</a></div><div class="S-product-item__name"><a href="/prenda-p-34${i}-cat-18.html">${name}</a></div></section>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Body ajustado con abertura | | | prenda-0.jpg",
      "Bolso cubo con bolsa interior | | | prenda-1.jpg",
      "Blusa de cuello profundo | | | prenda-2.jpg",
      "Shorts de cintura con cordón | | | prenda-3.jpg",
    ),
    layout: true,
  },
  {
    name: "two lists without prices or links, names called so, in Korean",
    lang: "ko",
    head: GRID,
    body: ["best", "all"]
      .map(
        (list, l) =>
          `<ul class="g">${["울 핸드메이드 긴 코트", "로렌 캐시미어 가디건", "밀라 트위드 자켓 세트", "코지 기모 와이드 슬랙스"].map((name, i) => `<li>${picture(`${list}-${i}`)}<div><h3 class="goods_name">${name} ${l + 1}</h3><p>데일리</p></div></li>`).join("")}</ul>`,
      )
      .join(""),
    kind: "listing",
    products: expected(
      ...["best", "all"].flatMap((list, l) =>
        [
          "울 핸드메이드 긴 코트",
          "로렌 캐시미어 가디건",
          "밀라 트위드 자켓 세트",
          "코지 기모 와이드 슬랙스",
        ].map((name, i) => `${name} ${l + 1} | | | ${list}-${i}.jpg`),
      ),
    ),
    layout: true,
  },
  {
    name: "amounts without any sign in a shop with a basket, in Korean",
    lang: "ko",
    head: GRID,
    body: `<a class="cart" href="/shop/cart.php">장바구니</a><ul class="g">${["기모맨투맨", "꽈배기롱니트", "코지울가디건", "체크플리츠"].map((name, i) => `<li class="slide"><a href="/shop/view.php?index_no=66${i}">${picture(`bare-${i}`)}</a><div><span>3${i}<em>%</em></span> <span>12,900</span></div><div class="subject"><a href="/shop/view.php?index_no=66${i}">${name}</a></div><span>구매 5945</span></li>`).join("")}</ul>`,
    kind: "listing",
    products: expected(
      "기모맨투맨 | 12900 | KRW | bare-0.jpg",
      "꽈배기롱니트 | 12900 | KRW | bare-1.jpg",
      "코지울가디건 | 12900 | KRW | bare-2.jpg",
      "체크플리츠 | 12900 | KRW | bare-3.jpg",
    ),
    layout: true,
  },
  {
    name: "wares without prices or links, each with a button that buys",
    head: GRID,
    body: `<nav><a href="cart.html">Cart</a></nav><h1>Watches</h1><div class="g">${["Chronograph", "Leather Strap", "Green Oval", "Vintage"].map((name, i) => `<div class="card">${picture(`watch-${i}`)}<h3>${name}</h3><button>Add To Cart</button></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Chronograph | | | watch-0.jpg",
      "Leather Strap | | | watch-1.jpg",
      "Green Oval | | | watch-2.jpg",
      "Vintage | | | watch-3.jpg",
    ),
    layout: true,
  },
  {
    name: "models of a maker, all with the lowest of their prices",
    lang: "ru",
    head: GRID,
    body: `<div class="g">${["Norr Court Zoom Cage 2", "Sky Force 1 Ultra", "Alder Runner 7"].map((name, i) => `<a class="card" href="/catalog/${i}.html">${picture(`model-${i}`)}<p>${name}</p><p>от 4 699 ₽</p></a>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Norr Court Zoom Cage 2 | 4699 | RUB | model-0.jpg",
      "Sky Force 1 Ultra | 4699 | RUB | model-1.jpg",
      "Alder Runner 7 | 4699 | RUB | model-2.jpg",
    ),
    layout: true,
  },
  {
    name: "blankets, and files that are called placeholders of something",
    head: GRID,
    body: `<div class="g">${["blanket-moss", "placeholder_ring_oak", "pixelated-scarf"].map((file, i) => `<div class="card"><a href="/p/${i}">${picture(file)}</a><h3><a href="/p/${i}">Ware ${i}</a></h3><span>$40.00</span></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Ware 0 | 40 | USD | blanket-moss.jpg",
      "Ware 1 | 40 | USD | placeholder_ring_oak.jpg",
      "Ware 2 | 40 | USD | pixelated-scarf.jpg",
    ),
    layout: true,
  },
  {
    name: "each price in two currencies, the shop's own first",
    lang: "en",
    head: GRID,
    body: `<div class="g">${["Chanderi", "Kota", "Tussar"].map((name, i) => `<div class="card"><a href="/p/${i}">${picture(`silk-${i}`)}</a><h3><a href="/p/${i}">${name}</a></h3><span>₹3,499</span> <span>$52</span></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Chanderi | 3499 | INR | silk-0.jpg",
      "Kota | 3499 | INR | silk-1.jpg",
      "Tussar | 3499 | INR | silk-2.jpg",
    ),
  },
  {
    name: "name and price in one heading",
    lang: "de",
    url: "http://shop.localhost/jsp/ProduktW4View.jsp",
    body: `<table><tr><td><img src="/i/tee.jpg" width="300" height="400"></td><td><h4>Lagune Tee 14,99 €</h4><button>In den Warenkorb</button></td></tr></table>`,
    kind: "product",
    products: [expectedMain("Lagune Tee | 14.99 | EUR | tee.jpg")],
    layout: true,
  },
  {
    name: "kinds of wares below a list that is announced",
    url: "http://shop.localhost/products/silk-saree",
    body: `<div><img src="/i/saree.jpg" width="400" height="500"><div><h1>Silk saree</h1><p>$88.00</p><button>Add to cart</button></div></div><section><h2>You may also like</h2><div class="row">${["Kota", "Tussar"].map((name, i) => `<div class="item"><a href="/products/${i}">${picture(`also-${i}`)}</a><a href="/products/${i}">${name}</a><span>$60.00</span></div>`).join("")}</div></section><section><h2>All categories</h2><div class="row">${["Sarees", "Dupattas"].map((name) => `<div class="kind"><a href="/landing/${name}">${picture(`kind-${name}`)}</a><a href="/landing/${name}">${name}</a></div>`).join("")}</div></section>`,
    kind: "product",
    products: [
      expectedMain("Silk saree | 88 | USD | saree.jpg"),
      ...expected("Kota | 60 | USD | also-0.jpg", "Tussar | 60 | USD | also-1.jpg"),
    ],
    layout: true,
  },
  {
    name: "what one saves, told in Portuguese beside the price and its parts",
    lang: "pt-br",
    head: GRID,
    body: `<div class="g">${["Sandália", "Tênis", "Sapato"].map((name, i) => `<div class="item"><a href="/i/zoom-${i}.png">${picture(`sapato-${i}`)}</a><h2>${name} Amieiro</h2><p>Por: R$95,92 ou até 4x de R$ 23,98</p><a href="#" class="comprar">Comprar</a><p>Economize: R$ 19.98</p></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Sandália Amieiro | 95.92 | BRL | sapato-0.jpg",
      "Tênis Amieiro | 95.92 | BRL | sapato-1.jpg",
      "Sapato Amieiro | 95.92 | BRL | sapato-2.jpg",
    ),
    layout: true,
  },
  {
    name: "a wish list in a table whose links buy and remove",
    url: "http://shop.localhost/wishlist.php",
    body: `<h2>Wish list</h2><table>${["Half Silk Saree", "Ladies Hand Bag", "Cotton Shirt"].map((name, i) => `<tr><td>${i + 1}</td><td>${name}</td><td><img src="/i/wish-${i}.jpg" width="100" height="90"></td><td>$24.50</td><td><a href="details.php?proid=${i}">Buy Now</a> || <a href="?listid=${i}">Remove</a></td></tr>`).join("")}</table>`,
    kind: "listing",
    products: expected(
      "Half Silk Saree | 24.5 | USD | wish-0.jpg",
      "Ladies Hand Bag | 24.5 | USD | wish-1.jpg",
      "Cotton Shirt | 24.5 | USD | wish-2.jpg",
    ),
    layout: true,
  },
  {
    name: "no product: plays with tickets, called products, with dates for prices",
    lang: "ru",
    head: GRID,
    body: `<h1>Афиша</h1><div class="g">${["Деньги", "Краткий курс", "Безумство", "О Вере"].map((name, i) => `<div class="product-item">${picture(`play-${i}`)}<h3>${name}</h3><span class="price">28 ноября</span><button>Купить билеты</button></div>`).join("")}</div>`,
    kind: "none",
    products: [],
    layout: true,
  },
  {
    name: "three wares without a price, called tiles of products",
    lang: "de",
    head: GRID,
    body: `<h1>Espenhof</h1><section><h2>Neue Stücke</h2><div class="g">${["Sommer Kleid", "Kurze Jacke", "Weite Hose"].map((name, i) => `<div class="product-card"><img src="/i/stueck-${i}.jpg" width="220" height="280" alt="Produkt ${i}"><h3>${name}</h3></div>`).join("")}</div></section>`,
    kind: "listing",
    products: expected(
      "Sommer Kleid | | | stueck-0.jpg",
      "Kurze Jacke | | | stueck-1.jpg",
      "Weite Hose | | | stueck-2.jpg",
    ),
  },
  {
    name: "wares whose prices are still to come",
    head: GRID,
    body: `<h1>Women's shoes</h1><div class="g">${["Ankle boots", "Slide sandals", "Ballet flats", "Tassel loafers"].map((name, i) => `<div class="shoe-item"><div>${picture(`shoe-${i}`)}</div><div><h3>${name}</h3><p class="shoe-color">Black</p><p class="shoe-price"></p></div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Ankle boots | | | shoe-0.jpg",
      "Slide sandals | | | shoe-1.jpg",
      "Ballet flats | | | shoe-2.jpg",
      "Tassel loafers | | | shoe-3.jpg",
    ),
  },
  {
    name: "no product: what a shop keeper sees",
    lang: "zh",
    url: "http://shop.localhost/admin/product?action=index",
    body: `<table>${["精华水", "洗面奶", "羽绒服", "茶几"].map((name, i) => `<tr><td>${name}</td><td><a href="/product?id=73${i}"><img src="/i/admin-${i}.jpg" width="60" height="60"></a></td><td>152.0</td><td><a href="/admin/product?action=edit&id=73${i}">修改</a></td><td><a href="#">删除</a></td></tr>`).join("")}</table>`,
    kind: "none",
    products: [],
    layout: true,
  },
];
