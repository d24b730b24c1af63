import { BIG, expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

/** Names that no markup marks, told by their letters, their cell, by what is pressed; and what is joined to them by mistake. */
export const NAMES_THAT_STAND_OUT: readonly PageCase[] = [
  {
    name: "a bold name above the picture and a longer text below it",
    head: `${GRID}<style>.n{font-weight:700;font-size:20px}</style>`,
    body: `<a href="/cart">Cart</a><div class="g">${["Dawn Ring", "Ivy Band", "Tide Cuff"].map((name, i) => `<div><p class="n"><span>${name}</span></p><a href="/ring/${i}">${picture(`ring-${i}`)}</a><div><p>a plain one made out of silver ${i}</p><p>Sold at €4${i}</p></div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Dawn Ring | 40 | EUR | ring-0",
      "Ivy Band | 41 | EUR | ring-1",
      "Tide Cuff | 42 | EUR | ring-2",
    ),
    layout: true,
  },
  {
    name: "cells without a head, the name before what describes it",
    lang: "nl",
    body: `<table>${[
      ["Donder", "Doos met dertig zware kaarsen"],
      ["Vlam", "Drie stuks, lang en zwaar"],
      ["Nachtlicht", "Brandt vijf uur lang"],
    ]
      .map(
        ([name, about], i) =>
          `<tr><td><a href="details.php?id=${i}">${picture(`kaars-${i}`)}</a></td><td>${name}</td><td>${about}</td><td>€1${i}.50</td><td><a href="cart.php?add=${i}">Bestellen</a></td></tr>`,
      )
      .join("")}</table>`,
    kind: "listing",
    products: expected(
      "Donder | 10.5 | EUR | kaars-0",
      "Vlam | 11.5 | EUR | kaars-1",
      "Nachtlicht | 12.5 | EUR | kaars-2",
    ),
  },
  {
    name: "names that are pressed, under the same heading for the sizes of each",
    head: GRID,
    body: `<div class="g">${["Linen wrap", "Cotton set", "Satin shirt"].map((name, i) => `<article><button type="button"><img src="/i/wrap-${i}.jpg" alt="${name}" width="220" height="280"></button><button type="button">${name}</button><span>£8${i}</span><h4>Choose a size</h4><button type="button">S</button><button type="button">Add to bag</button></article>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Linen wrap | 80 | GBP | wrap-0",
      "Cotton set | 81 | GBP | wrap-1",
      "Satin shirt | 82 | GBP | wrap-2",
    ),
  },
  {
    name: "cards whose insides are in shadow roots, their pictures called alike",
    lang: "pt-BR",
    body: `<main>${["Bolsa Caramelo", "Mochila Encerada", "Carteira Slim"].map((name, i) => `<product-card><template shadowrootmode="open"><div class="card"><img src="/i/couro-${i}.jpg" alt="Imagem do Produto" width="200" height="240"><h3>${name}</h3><p class="price">R$ 19${i},00</p></div></template></product-card>`).join("")}</main>`,
    kind: "listing",
    products: expected(
      "Bolsa Caramelo | 190 | BRL | couro-0",
      "Mochila Encerada | 191 | BRL | couro-1",
      "Carteira Slim | 192 | BRL | couro-2",
    ),
    layout: true,
  },
  {
    name: "a price behind the name in its heading, the first tile right below the heading of all",
    lang: "pt-BR",
    body: `<h2>Cardápio da loja</h2>${["Café moído", "Filtro de pano", "Caneca lisa"].map((name, i) => `<div><div class="card">${picture(`cafe-${i}`)}<div><h5>${name} - R$ ${i + 5}.50</h5><p>Feito aqui, embalado à mão.</p><button>Adicionar ao carrinho</button></div></div></div>`).join("")}`,
    kind: "listing",
    products: expected(
      "Café moído | 5.5 | BRL | cafe-0",
      "Filtro de pano | 6.5 | BRL | cafe-1",
      "Caneca lisa | 7.5 | BRL | cafe-2",
    ),
  },
  {
    name: "a badge of the best price before the name, both as large as all else",
    lang: "ar",
    url: "http://shop.localhost/pages/productPage.php",
    body: `<header><a href="parts.php">قطع</a> <a href="cart.php">السلة</a></header><div id="main">${BIG("filter")}<br><div class="did">افضل سعر</div><div class="did">خصم ٥٪</div><div><strong>فلتر زيت صغير</strong></div><div id="price">27 ر.س</div><form><input type="number" value="0"><button>إضافه للسلة</button></form></div>`,
    kind: "product",
    products: [expectedMain("فلتر زيت صغير | 27 | SAR | filter.jpg")],
    layout: true,
  },
  {
    name: "the page of one ware where nothing is pressed to buy and a link says that there is a basket",
    url: "http://shop.localhost/details.php?prd=14",
    body: `<a href="index.php">Acasa</a> <a href="cos.php">Coș</a><div class="detail">${BIG("palton")}<section><h1>Palton din lână</h1><div><span>349.90LEI</span></div></section><button type="button">XS</button><button type="button">S</button><p>Palton cu guler și mâneci lungi.</p></div><h1><span>Tallow &amp; Finch</span></h1>`,
    kind: "product",
    products: [expectedMain("Palton din lână | 349.9 | RON | palton.jpg")],
    layout: true,
  },
  {
    name: "texts without a heading beside what buys, the price a number alone, at the address of details",
    lang: "ko",
    url: "http://shop.localhost/shop_detail?p_no=31",
    head: "<title>Bitte</title><style>.d{width:1000px;display:flex;flex-direction:row-reverse}.s{width:400px}</style>",
    body: `<header><a href="/">Bitte</a><a href="/cart">CART</a></header><div class="d"><div class="s"><div>라운드 울 가디건_아이보리</div><div>59000</div><div><p>사이즈</p><select><option>S</option><option>M</option></select></div><div><button>구매하기</button></div></div><div>${BIG("cardigan")}</div></div>`,
    kind: "product",
    products: [expectedMain("라운드 울 가디건_아이보리 | 59000 | KRW | cardigan.jpg")],
    layout: true,
  },
  {
    name: "a button that buys at an address that is called product, and no price",
    lang: "pl",
    url: "http://shop.localhost/product.jsp",
    body: `<nav><a href="products.jsp">Buty</a> <a href="cart.jsp">Koszyk</a></nav><div>${BIG("buty")}<div><h2>Trzewik Wrona</h2><h5>Bardzo wygodny i lekki but na co dzień</h5><button>42</button><button>43</button><button id="buyButton">Kup</button></div></div>`,
    kind: "product",
    products: [expectedMain("Trzewik Wrona | | | buty.jpg")],
    layout: true,
  },
  {
    name: "facts with labels in cells, and a picture of a cart that is pressed",
    url: "http://shop.localhost/view8.aspx?id=8",
    body: `<form method="post"><a href="Home.aspx">Home</a> <a href="AddToCart.aspx">Show it</a><table><tr><td>${BIG("necklace")}</td><td><table><tr><td>Id:<span>8</span></td></tr><tr><td>Name:  Glass Bead Necklace</td></tr><tr><td>Price:  4200</td></tr><tr><td>Size:  420 mm</td></tr><tr><td><input type="image" src="images/cart.jpg" width="120" height="40"></td></tr></table></td></tr></table></form>`,
    kind: "product",
    products: [expectedMain("Glass Bead Necklace | 4200 | | necklace.jpg")],
    layout: true,
  },
];
