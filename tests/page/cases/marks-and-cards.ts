import { BIG, each, expected, GRID, type PageCase, picture } from "./page-case.ts";

const THREE = ["Plum Velvet Skirt", "Ochre Linen Shirt", "Teal Wool Scarf"] as const;

/** Marks, stand-ins and cards that are not what they look like. */
export const MARKS_AND_CARDS: readonly PageCase[] = [
  {
    name: "a turning mark as large as an icon, in whose place a picture comes",
    head: GRID,
    layout: true,
    body: `<div class="g">${each(THREE, (name, i) => `<div class="product"><a href="/w/${i}"><img src="/gfx/loader.gif?r=1" width="16" height="16" class="lazy" data-src="/i/late-${i}.webp" alt="${name}"></a><h3><a href="/w/${i}">${name}</a></h3><strong>€${i + 4}5.00</strong></div>`)}</div>`,
    kind: "listing",
    products: expected(
      "Plum Velvet Skirt | 45 | EUR | late-0",
      "Ochre Linen Shirt | 55 | EUR | late-1",
      "Teal Wool Scarf | 65 | EUR | late-2",
    ),
  },
  {
    name: "the picture of a button among the facts of a tile",
    lang: "ko",
    head: GRID,
    body: `<ul class="g">${each(["자두색 스커트", "리넨 셔츠", "울 스카프"], (name, i) => `<li id="box-${i}"><div class="thumbnail"><a href="/product/${i}">${picture(`kr-${i}`)}</a></div><div class="description"><strong class="name"><a href="/product/${i}">${name}</a></strong><ul class="spec"><li>판매가 : ${i + 2}4,000원</li><li>할인 기간 : <a href="#none"><img src="/skin/btn_details.gif" width="80" height="90" alt="자세히"></a></li></ul></div></li>`)}</ul>`,
    kind: "listing",
    products: expected(
      "자두색 스커트 | 24000 | KRW | kr-0",
      "리넨 셔츠 | 34000 | KRW | kr-1",
      "울 스카프 | 44000 | KRW | kr-2",
    ),
  },
  {
    name: "cards without links but one to the basket, which says that it shows details",
    lang: "pt",
    head: GRID,
    body: `<div class="g">${each(["Anel ameixa", "Brinco ocre", "Colar verde"], (name, i) => `<div class="col"><div class="card">${picture(`anel-${i}`)}<div class="card-body"><h5 class="card-title">${name}</h5></div><ul><li>R$ ${i + 5}0,00</li><li>Prata</li></ul><a href="sacola.html">Detalhes</a></div></div>`)}</div>`,
    kind: "listing",
    products: expected(
      "Anel ameixa | 50 | BRL | anel-0",
      "Brinco ocre | 60 | BRL | anel-1",
      "Colar verde | 70 | BRL | anel-2",
    ),
  },
  {
    name: "a large card whose name and price lead to its page, and whose pictures do not",
    url: "https://shop.localhost/index.php?page=home-v9",
    head: GRID,
    layout: true,
    body: `<h2>Deals of the week</h2><div class="g">${each(THREE, (name, i) => `<div class="product"><a href="/w/${i}">${picture(`deal-${i}`)}<h2>${name}</h2><span>€${i + 4}5.00</span></a><a class="button" href="/cart?add=${i}">Add to cart</a></div>`)}</div><div class="featured product"><div>${BIG("deal-9")}</div><a href="/w/9"><span>€89.00</span><h2>Violet Felt Cape</h2></a><a class="button" href="/cart?add=9">Add to cart</a></div>`,
    kind: "listing",
    products: expected(
      "Plum Velvet Skirt | 45 | EUR | deal-0",
      "Ochre Linen Shirt | 55 | EUR | deal-1",
      "Teal Wool Scarf | 65 | EUR | deal-2",
      "Violet Felt Cape | 89 | EUR | deal-9",
    ),
  },
  {
    name: "the page of an event, with seats to buy and others beside",
    lang: "fr",
    url: "https://billets.localhost/front/detailEvent.php?id=4",
    body: `<a href="panier.php">Panier</a><div>${BIG("finale")}</div><div><h1>Finale de la coupe de handball</h1><h4>25 TND</h4><input type="number" name="quantite" value="1"><a class="btn" href="ajouter.php?id=4">Ajouter au panier</a></div><h2>Autres évènements</h2><div class="g">${each(["Grand derby", "Marathon du golfe", "Gala de boxe"], (name, i) => `<div><a href="detailEvent.php?id=${i}">${picture(`ev-${i}`)}</a><h4>${name}</h4><p>${i + 2}5 TND</p></div>`)}</div>`,
    head: GRID,
    kind: "none",
    products: [],
  },
  {
    name: "cars to lease, whose names nobody knows",
    lang: "nl",
    url: "https://autos.localhost/lease/",
    head: `<title>Lease aanbod - Autobedrijf Berkenlaan</title>${GRID}`,
    body: `<h1>Lease aanbod</h1><div class="g">${each(["Karo Velt 1,6", "Pico Duna EV", "Lumo Prado"], (name, i) => `<div class="item"><h4><a href="/lease/${i}">${name}</a></h4><a href="/lease/${i}">${picture(`auto-${i}`)}</a><ul><li>DIESEL</li><li><span>€ ${i + 2}89 p/m ,-</span></li></ul></div>`)}</div>`,
    kind: "none",
    products: [],
  },
  {
    name: "gift vouchers in Vietnamese",
    lang: "vi",
    url: "https://shop.localhost/voucher",
    head: GRID,
    body: `<a href="/cart">Giỏ hàng</a><h1>Ưu đãi mùa xuân</h1><div class="g">${each(["mùa xuân", "gia đình", "bạn bè"], (name, i) => `<div class="card"><a href="/voucher/${i}">${picture(`phieu-${i}`)}</a><h3>Phiếu quà tặng ${name}</h3><p>${i + 1}99,000 đ</p></div>`)}</div>`,
    kind: "none",
    products: [],
  },
];
