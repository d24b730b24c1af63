import { BIG, expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

/** Pictures under a frame that all share, names beside their makers, and amounts whose parts stand far from each other. */
export const FRAMES_AND_MAKERS: readonly PageCase[] = [
  {
    name: "a see-through frame over each picture, the same on all",
    head: `${GRID}<style>.shot{position:relative;width:220px;height:280px}.shot img{width:220px;height:280px;display:block}.shot>img{position:absolute;left:0;top:0}.shot img.over{opacity:.15}</style>`,
    body: `<div class="g">${[
      "Rust corduroy skirt",
      "Pine corduroy skirt",
      "Plum corduroy skirt",
      "Sky corduroy skirt",
    ]
      .map(
        (name, i) =>
          `<a class="item" href="/skirts/${i}"><div class="shot"><img src="/i/skirt-${i}.jpg" alt="${name}"><div style="position:absolute;left:0;bottom:0;z-index:10"><img class="over" src="/i/week-of-joy.png" alt="overlay"></div></div><div>${name}</div><div><span>RM</span><span>${i + 4}9.00</span></div></a>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Rust corduroy skirt | 49 | MYR | skirt-0.jpg",
      "Pine corduroy skirt | 59 | MYR | skirt-1.jpg",
      "Plum corduroy skirt | 69 | MYR | skirt-2.jpg",
      "Sky corduroy skirt | 79 | MYR | skirt-3.jpg",
    ),
    layout: true,
  },
  {
    name: "a bar drawn behind a heading, beside what was looked at before",
    lang: "zh",
    url: "http://shop.localhost/index.php/cat/3",
    head: `${GRID}<style>.bar{height:27px;width:220px}</style>`,
    body: `<div><h1 class="bar" style="background:url(/i/bar.gif) repeat-x"><a href=""><font>所有分类</font></a></h1><div><dl><dt>类型</dt><dd><p><a href="/cat/3" title="裙子">裙子</a></p></dd></dl></div><h1 class="bar" style="background:url(/i/bar.gif) repeat-x">浏览历史</h1><div><ul><li><div><div><a href="/goods/24" title="亚麻裙">亚麻裙</a></div><div><b>￥120.00元</b></div></div></li></ul></div></div><div class="g">${[
      "雪纺衬衫",
      "棉麻短裤",
      "羊毛围巾",
    ]
      .map(
        (name, i) =>
          `<div class="goodsbox"><a href="/goods/${i + 1}"><img src="/i/goods-${i}.jpg" alt="${name}" width="220" height="280"></a><a href="/goods/${i + 1}" title="${name}">${name}</a><br><b>￥${i + 1}98.00元</b></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "雪纺衬衫 | 198 | CNY | goods-0.jpg",
      "棉麻短裤 | 298 | CNY | goods-1.jpg",
      "羊毛围巾 | 398 | CNY | goods-2.jpg",
    ),
    layout: true,
  },
  {
    name: "the maker in the name, in a part that is called the brand",
    head: GRID,
    body: `<ol class="g">${[
      ["OTTER & VALE", "Round neck tee in rust"],
      ["Hollin", "Straight jeans in ink"],
      ["Marisco", "Linen shirt dress in sand"],
    ]
      .map(
        ([maker, name], i) =>
          `<li class="product-item"><a href="/p/${i}">${picture(`maker-${i}`)}</a><strong class="product name"><span class="item-brand"> ${maker} </span> <a href="/p/${i}">${name}</a></strong><span class="price">£${i + 2}9.00</span></li>`,
      )
      .join("")}</ol>`,
    kind: "listing",
    products: expected(
      "Round neck tee in rust | 29 | GBP | maker-0.jpg",
      "Straight jeans in ink | 39 | GBP | maker-1.jpg",
      "Linen shirt dress in sand | 49 | GBP | maker-2.jpg",
    ),
  },
  {
    name: "dinars to three decimals, the sign in an element of its own",
    head: GRID,
    body: `<ul class="g">${["Indigo abaya", "Sand abaya", "Rose abaya"]
      .map(
        (name, i) =>
          `<li><a href="/shop/abaya-${i}">${picture(`abaya-${i}`)}<h2>${name}</h2></a><span class="price"><ins><span class="amount"><span>KD</span>&nbsp;${i + 1}4.500</span></ins> <del><span class="amount"><span>KD</span>&nbsp;${i + 1}9.000</span></del></span></li>`,
      )
      .join("")}</ul>`,
    kind: "listing",
    products: expected(
      "Indigo abaya | 14.5 | KWD | abaya-0.jpg",
      "Sand abaya | 24.5 | KWD | abaya-1.jpg",
      "Rose abaya | 34.5 | KWD | abaya-2.jpg",
    ),
  },
  {
    name: "a price in a table with a hidden field, above what the delivery costs",
    lang: "ko",
    url: "http://shop.localhost/item/detail.do?itemId=27",
    body: `<div>${BIG("nubi")}</div><div><h2>쪽빛 누비 조끼</h2><table><tr><th><span>판매가</span></th><td><span><strong>64900</strong><input name="itemPrice" value="64900" type="hidden"></span></td></tr><tr><th><span>배송비</span></th><td><span class="delv_price"><strong>3,000</strong> (30,000 이상 구매 시 무료)</span></td></tr></table><form action="/item/addcart.do"><select name="amount"><option>1</option></select><input type="submit" id="addcart" value="장바구니"></form></div>`,
    kind: "product",
    products: [expectedMain("쪽빛 누비 조끼 | 64900 | KRW | nubi.jpg")],
  },
  {
    name: "what is recommended beside an empty basket, under the address of the check-out",
    url: "http://shop.localhost/za/checkout/cart/",
    head: GRID,
    body: `<h1>Shopping Cart</h1><p>You have no items in your shopping cart.</p><h2>Recommended Products</h2><div class="g">${[
      "Cobalt kettle cosy",
      "Clay table runner",
      "Moss tea towel",
    ]
      .map(
        (name, i) =>
          `<div class="product-item-info"><a href="/za/linen-${i}.html">${picture(`linen-${i}`)}</a><a href="/za/linen-${i}.html">${name}</a><span class="price">R${i + 1}89</span><h4>Add To Cart</h4></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Cobalt kettle cosy | 189 | ZAR | linen-0.jpg",
      "Clay table runner | 289 | ZAR | linen-1.jpg",
      "Moss tea towel | 389 | ZAR | linen-2.jpg",
    ),
  },
  {
    name: "a menu whose page is called as the French call it",
    lang: "de",
    url: "http://shop.localhost/carte.php",
    head: "<title>Menu Restaurant</title>",
    body: `<nav><a href="index.php">Startseite</a><a href="carte.php">Karte</a></nav>${[
      ["Vorspeise:", "Kartoffelsalat 3.50€"],
      ["Hauptspeise:", "Käsespätzle 9.90€"],
      ["Nachspeise:", "Apfelstrudel 4.20€"],
    ]
      .map(([course, dish], i) => `<h2>${course}</h2><div><h4>${dish}</h4>${picture(`gang-${i}`)}</div>`)
      .join("")}`,
    kind: "none",
    products: [],
  },
  {
    name: "no prices and no links, each with a button that opens the product",
    lang: "ro",
    url: "http://shop.localhost/categorie/bijuterii",
    head: GRID,
    body: `<app-root><a href="/">Atelier Salcia</a><p>Au fost identificate 4 produse</p><div class="g">${[
      "Inel din aur alb cu safir",
      "Cercei lungi cu perle",
      "Brățară fixă din argint",
      "Pandantiv lacrimă cu topaz",
    ]
      .map(
        (name, i) =>
          `<div class="card">${picture(`bijuterie-${i}`)}<h5>${name}</h5><button>Arata produs</button><small>Adaugat in ${i + 1} martie 2024</small></div>`,
      )
      .join("")}</div></app-root>`,
    kind: "listing",
    products: expected(
      "Inel din aur alb cu safir | | | bijuterie-0.jpg",
      "Cercei lungi cu perle | | | bijuterie-1.jpg",
      "Brățară fixă din argint | | | bijuterie-2.jpg",
      "Pandantiv lacrimă cu topaz | | | bijuterie-3.jpg",
    ),
  },
  {
    name: "makers as headings over the pictures, the names as the addresses have them",
    head: `${GRID}<style>.over{position:absolute;left:0;bottom:0}</style>`,
    body: `<h3>Similar styles</h3><div class="g">${[
      ["Ferrow", "slate-blue-slim-suit", "Slate Blue Slim Suit"],
      ["Calder Stone", "ivory-dinner-jacket", "Ivory Dinner Jacket"],
      ["Ferrow", "black-bow-tie", "Black Satin Bow Tie"],
    ]
      .map(
        ([maker, slug, name]) =>
          `<a href="/catalog/products/${slug}"><div style="position:relative;width:220px;height:280px;background-image:url(/i/${slug}.jpg)"><div class="over"><h4>${maker}</h4><p>${name}</p></div></div></a>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Slate Blue Slim Suit | | | slate-blue-slim-suit.jpg",
      "Ivory Dinner Jacket | | | ivory-dinner-jacket.jpg",
      "Black Satin Bow Tie | | | black-bow-tie.jpg",
    ),
    layout: true,
  },
];
