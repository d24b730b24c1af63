import { expected, type PageCase } from "./page-case.ts";

const picture = (slug: string): string => `<img src="/i/${slug}.jpg" width="220" height="280">`;
const GRID = "<style>.g{display:grid;grid-template-columns:repeat(3,240px);gap:20px}</style>";

/** Lists whose prices, buttons or country are told by signs that few shops use. */
export const SHOPS_BY_OTHER_SIGNS: readonly PageCase[] = [
  {
    name: "a price alone on a button with a picture of a basket",
    lang: "de",
    head: GRID,
    body: `<div class="g">${["lampe", "becher"].map((slug, i) => `<div class="productcard">${picture(slug)}<div><h3>${slug} Erle</h3><p>Aus hellem Holz.</p><button class="cartbutton"><p>${19 + i},99€</p><img src="/i/cart-in.png" width="20" height="20"></button></div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected("lampe Erle | 19.99 | EUR | lampe.jpg", "becher Erle | 20.99 | EUR | becher.jpg"),
    layout: true,
  },
  {
    name: "wares without links, each with a Dutch button that adds it, on a site with a basket",
    lang: "nl",
    head: GRID,
    body: `<nav><a href="/winkelwagen.php">Winkelwagen</a></nav><div class="g">${["trui", "muts"].map((slug, i) => `<div>${picture(slug)} <h2>Linde ${slug}</h2><p>Maat: S</p><p>Prijs: € ${64 + i},95</p><button>Toevoegen aan winkelwagen</button></div>`).join("")}</div>`,
    kind: "listing",
    products: expected("Linde trui | 64.95 | EUR | trui.jpg", "Linde muts | 65.95 | EUR | muts.jpg"),
  },
  {
    name: "a table of wares without links, one of them out of stock",
    lang: "pl",
    body: `<a href="/koszyk">Koszyk</a><table>${["Kubek", "Deska", "Koc"].map((name, i) => `<tr><td><img src="/i/pl-${i}.jpg" width="100" height="100"></td><td>${name} Olcha</td><td>${39 + i}.50 PLN</td><td>${i === 1 ? "<button disabled>Brak w magazynie</button>" : `<form action="?a=add&id=${i}"><button>Dodaj do koszyka</button></form>`}</td></tr>`).join("")}</table>`,
    kind: "listing",
    products: expected(
      "Kubek Olcha | 39.5 | PLN | pl-0.jpg",
      "Deska Olcha | 40.5 | PLN | pl-1.jpg",
      "Koc Olcha | 41.5 | PLN | pl-2.jpg",
    ),
    layout: true,
  },
  {
    name: "rupees that are icons of a font",
    lang: "en",
    head: GRID,
    body: `<div class="g">${["jeans", "kurta"].map((slug, i) => `<div><img src="/i/${slug}.jpg" width="220" height="280"><p>Rowan ${slug}</p><p class="fa fa-rupee"><b> ${i + 1},299 </b></p> M.R.P :<p class="fa fa-rupee"><strike>${i + 3},499</strike></p><a href="#"><input type="button" value="Buy Now"></a></div>`).join("")}</div>`,
    kind: "listing",
    products: expected("Rowan jeans | 1299 | INR | jeans.jpg", "Rowan kurta | 2299 | INR | kurta.jpg"),
  },
  {
    name: "yuan on a Chinese page that says it is English",
    lang: "en",
    head: GRID,
    body: `<p>全场包邮，七天无理由退换，下单后四十八小时内发货，欢迎新老顾客选购本店四季服饰与家居用品</p><div class="g">${["睡衣", "汤碗"].map((name, i) => `<div><a href="/goods/${i + 3}">${picture(`zh-${i}`)}<h3>白杨 ${name}</h3></a><span>￥${99 + i}.50</span></div>`).join("")}</div>`,
    kind: "listing",
    products: expected("白杨 睡衣 | 99.5 | CNY | zh-0.jpg", "白杨 汤碗 | 100.5 | CNY | zh-1.jpg"),
  },
  {
    name: "a category whose name stands in each tile, below a link to the basket with its sum",
    lang: "vi",
    url: "http://shop.localhost/danh-muc/tui/",
    head: `<title>Túi xách - Cây Bàng</title>${GRID}`,
    body: `<div><a class="header-cart-link" href="/gio-hang">Giỏ hàng / 0₫</a></div><div class="g">${["canvas", "len"].map((slug, i) => `<div class="product-small"><a href="/san-pham/${slug}">${picture(slug)}</a><p class="category">Túi xách</p><p class="product-title"><a href="/san-pham/${slug}">Túi ${slug} Lá Cọ</a></p><span>${29 + i}0.000₫</span></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Túi canvas Lá Cọ | 290000 | VND | canvas.jpg",
      "Túi len Lá Cọ | 300000 | VND | len.jpg",
    ),
    layout: true,
  },
  {
    name: "pesos of the country that the foot of a page names",
    lang: "es",
    head: GRID,
    body: `<div class="g">${["argollas", "dije"].map((slug, i) => `<div><a href="/joyas/${slug}">${picture(slug)}<h3>${slug} Aliso</h3></a><span>$ ${52 + i}0.960</span></div>`).join("")}</div><footer>Calle 85 # 12-10, Bogotá, Colombia. Precios en pesos colombianos.</footer>`,
    kind: "listing",
    products: expected(
      "argollas Aliso | 520960 | COP | argollas.jpg",
      "dije Aliso | 530960 | COP | dije.jpg",
    ),
  },
  {
    name: "dinars of a country that nothing tells, and a button spelt as it is said",
    lang: "ar",
    head: GRID,
    body: `<div class="g">${["سترة", "قميص"].map((name, i) => `<div>${picture(`ar-${i}`)}<h3>${name} صفصاف</h3><p>سعر ${50 + i}.00 د</p><button>اضف الى السلة</button></div>`).join("")}</div><a href="/cart">السلة</a>`,
    kind: "listing",
    products: expected("سترة صفصاف | 50 | | ar-0.jpg", "قميص صفصاف | 51 | | ar-1.jpg"),
  },
  {
    name: "NT before amounts, hearts beside pictures",
    lang: "zh-Hant",
    head: GRID,
    body: `<h1>最新商品</h1><div class="g">${["芋頭", "草莓"].map((name, i) => `<div class="item"><div>${picture(`tw-${i}`)}<img src="/i/heart-gray.png" width="24" height="24"></div><p class="latest-name">${name}煉乳冰</p><p class="latest-pri">NT2${i}0</p></div>`).join("")}</div>`,
    kind: "listing",
    products: expected("芋頭煉乳冰 | 200 | TWD | tw-0.jpg", "草莓煉乳冰 | 210 | TWD | tw-1.jpg"),
    layout: true,
  },
  {
    name: "a rebate in money behind the price, in Dutch",
    lang: "nl",
    head: GRID,
    body: `<div class="g">${["laarzen", "fles"].map((slug, i) => `<div><a href="/shop/${slug}">${picture(slug)}<h2>${slug} Griend</h2></a><div><span>7${i},20 €</span><span>1${i},80 € korting</span><span>-20%</span></div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected("laarzen Griend | 70.2 | EUR | laarzen.jpg", "fles Griend | 71.2 | EUR | fles.jpg"),
  },
  {
    name: "headings with the class names of a kit that says how things look",
    lang: "fr",
    head: GRID,
    body: `<div class="g">${["60 W", "150 W"].map((power, i) => `<div class="card group"><img src="/i/lampe-${i}.jpg" alt="Lampe solaire Baobab ${power}" width="220" height="280"><h3 class="font-semibold group-hover:text-navy transition-colors"><a href="/lampes/baobab-${i}">Lampe solaire Baobab ${power}</a></h3><span>${power}</span><div>4${i} 000 FCFA</div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Lampe solaire Baobab 60 W | 40000 | XOF | lampe-0.jpg",
      "Lampe solaire Baobab 150 W | 41000 | XOF | lampe-1.jpg",
    ),
  },
];
