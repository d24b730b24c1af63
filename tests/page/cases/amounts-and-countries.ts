import { BIG, each, expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

const THREE = ["Plum Velvet Skirt", "Ochre Linen Shirt", "Teal Wool Scarf"] as const;

/** Shops whose country, and amounts whose form, is told by little. */
export const AMOUNTS_AND_COUNTRIES: readonly PageCase[] = [
  {
    name: "dollars of the country that the shop's postal address ends in",
    head: GRID,
    body: `<div class="g">${each(THREE, (name, i) => `<div><a href="/w/${i}">${picture(`nz-${i}`)}<h4>${name}</h4></a><span>$${i + 4}9.95</span></div>`)}</div><footer><address>Quay Street<br>Nelson 7010<br>New Zealand</address></footer>`,
    kind: "listing",
    products: expected(
      "Plum Velvet Skirt | 49.95 | NZD | nz-0",
      "Ochre Linen Shirt | 59.95 | NZD | nz-1",
      "Teal Wool Scarf | 69.95 | NZD | nz-2",
    ),
  },
  {
    name: "dollars of the country whose state stands in the shop's address",
    head: GRID,
    body: `<div class="g">${each(THREE, (name, i) => `<div><a href="/w/${i}">${picture(`au-${i}`)}<h4>${name}</h4></a><span>$${i + 4}9.95</span></div>`)}</div><footer><address>8 Wattle Lane<br>Newtown NSW 2042</address></footer>`,
    kind: "listing",
    products: expected(
      "Plum Velvet Skirt | 49.95 | AUD | au-0",
      "Ochre Linen Shirt | 59.95 | AUD | au-1",
      "Teal Wool Scarf | 69.95 | AUD | au-2",
    ),
  },
  {
    name: "dollars of the United States in a shop that sends to other countries",
    head: GRID,
    body: `<div class="g">${each(THREE, (name, i) => `<div><a href="/w/${i}">${picture(`us-${i}`)}<h4>${name}</h4></a><span>$${i + 4}9.95</span></div>`)}</div><footer><p>We ship to Canada and to our friends in New Zealand.</p></footer>`,
    kind: "listing",
    products: expected(
      "Plum Velvet Skirt | 49.95 | USD | us-0",
      "Ochre Linen Shirt | 59.95 | USD | us-1",
      "Teal Wool Scarf | 69.95 | USD | us-2",
    ),
  },
  {
    name: "dollars of Taiwan, told by the letters that its language is written in",
    head: GRID,
    body: `<div class="g">${each(["長袖連身裙", "棉麻襯衫", "羊毛圍巾"], (name, i) => `<div><a href="/w/${i}">${picture(`tw-${i}`)}<h4>${name}</h4></a><span>$${i + 6}90</span></div>`)}</div><footer>實際顏色以收到的商品為準，這個價格與運費無關，請點單前詢問我們的會員服務。單筆滿額免運費，您還需要什麼嗎？</footer>`,
    kind: "listing",
    products: expected(
      "長袖連身裙 | 690 | TWD | tw-0",
      "棉麻襯衫 | 790 | TWD | tw-1",
      "羊毛圍巾 | 890 | TWD | tw-2",
    ),
  },
  {
    name: "pesos of the Dominican Republic, which the foot names",
    lang: "es",
    head: GRID,
    body: `<div class="g">${each(["Falda de lino", "Camisa ocre", "Bufanda verde"], (name, i) => `<div><a href="/w/${i}">${picture(`do-${i}`)}<h4>${name}</h4></a><span>$${i + 1},450.00</span></div>`)}</div><footer>Calle El Conde 40, Santo Domingo, República Dominicana</footer>`,
    kind: "listing",
    products: expected(
      "Falda de lino | 1450 | DOP | do-0",
      "Camisa ocre | 2450 | DOP | do-1",
      "Bufanda verde | 3450 | DOP | do-2",
    ),
  },
  {
    name: "a brand in an element of its own before the bare name",
    head: GRID,
    body: `<div class="g">${each(THREE, (name, i) => `<div>${picture(`bare-${i}`)}<h4><span class="brand">Juniper</span> ${name}</h4><span>€${i + 4}9.95</span><a href="/w/${i}">Buy</a></div>`)}</div>`,
    kind: "listing",
    products: expected(
      "Plum Velvet Skirt | 49.95 | EUR | bare-0",
      "Ochre Linen Shirt | 59.95 | EUR | bare-1",
      "Teal Wool Scarf | 69.95 | EUR | bare-2",
    ),
  },
  {
    name: "a brand in an element of its own in a link, before the bare name and a dash",
    head: GRID,
    body: `<div class="g">${each(THREE, (name, i) => `<div>${picture(`dash-${i}`)}<strong class="item name"><a href="/w/${i}"><span class="brand-name">Juniper - </span> ${name}</a></strong><span>€${i + 4}9.95</span></div>`)}</div>`,
    kind: "listing",
    products: expected(
      "Plum Velvet Skirt | 49.95 | EUR | dash-0",
      "Ochre Linen Shirt | 59.95 | EUR | dash-1",
      "Teal Wool Scarf | 69.95 | EUR | dash-2",
    ),
  },
  {
    name: "a label and the tax around amounts, in Lithuanian",
    lang: "lt",
    head: GRID,
    body: `<div class="g">${each(["Lininis sijonas", "Vilnonis šalikas", "Medvilninė suknelė"], (name, i) => `<div><a href="/p-${i}">${picture(`lt-${i}`)}</a><h4>${name}</h4><p>Kaina: ${i + 3}0,00 Eur su PVM</p></div>`)}</div>`,
    kind: "listing",
    products: expected(
      "Lininis sijonas | 30 | EUR | lt-0",
      "Vilnonis šalikas | 40 | EUR | lt-1",
      "Medvilninė suknelė | 50 | EUR | lt-2",
    ),
  },
  {
    name: "wares under the Romanian word for a shop, which is German for a journal",
    lang: "ro",
    head: GRID,
    body: `<div class="g">${each(["Rochie din in", "Fustă plisată", "Eșarfă de mătase"], (name, i) => `<div><a href="/magazin/articol-${i}">${picture(`ro-${i}`)}<h4>${name}</h4></a><span>${i + 1}50 lei</span></div>`)}</div>`,
    kind: "listing",
    products: expected(
      "Rochie din in | 150 | RON | ro-0",
      "Fustă plisată | 250 | RON | ro-1",
      "Eșarfă de mătase | 350 | RON | ro-2",
    ),
  },
  {
    name: "what it costs, said as such",
    head: GRID,
    body: `<div class="g">${each(THREE, (name, i) => `<div>${picture(`cost-${i}`)}<h4>${name}</h4><p>Cost: ${i + 4}50</p><a href="/w/${i}">Buy</a></div>`)}</div>`,
    kind: "listing",
    products: expected(
      "Plum Velvet Skirt | 450 | | cost-0",
      "Ochre Linen Shirt | 550 | | cost-1",
      "Teal Wool Scarf | 650 | | cost-2",
    ),
  },
  {
    name: "two figures, each with the sign as an icon",
    head: GRID,
    body: `<div class="g">${each(THREE, (name, i) => `<div><a href="/w/${i}">${picture(`icon-${i}`)}</a><h4>${name}</h4><p><i class="fa fa-inr"></i> ${i + 2}99 <del><i class="fa fa-inr"></i> ${i + 4}99</del></p></div>`)}</div>`,
    kind: "listing",
    products: expected(
      "Plum Velvet Skirt | 299 | INR | icon-0",
      "Ochre Linen Shirt | 399 | INR | icon-1",
      "Teal Wool Scarf | 499 | INR | icon-2",
    ),
  },
  {
    name: "the page of one product without a button, whose title begins with its name",
    url: "https://shop.localhost/view.php?nr=7",
    head: "<title>Plum Velvet Skirt - Tallow &amp; Finch</title>",
    body: `<nav><a href="/">Home</a></nav><div class="wrap"><h1>Plum Velvet Skirt</h1>${BIG("plum")}<p>Cut on the bias, lined, with a side zip.</p><p>Price: €85.00</p><p>Call us to order.</p></div>`,
    kind: "product",
    products: [expectedMain("Plum Velvet Skirt | 85 | EUR | plum")],
    layout: true,
  },
  {
    name: "the sign in the element behind the figure, and what is gained below",
    lang: "tr",
    head: GRID,
    body: `<div class="g">${each(["Keten Gömlek", "Kadife Etek", "Yün Atkı"], (name, i) => `<div><a href="/u/${i}">${picture(`kazanc-${i}`)}</a><h4>${name}</h4><span class="price"> <span class="p-count">${i + 2}89,90</span> <span class="p-type">₺ </span> <span class="p-down"> 9% indirim (kazanç 39₺)</span><a href="Sepet.aspx?ekle=${i}" class="btn">Sepete Ekle</a><a href="#yorum" class="btn">Yorumların tümünü burada oku</a></span></div>`)}</div>`,
    kind: "listing",
    products: expected(
      "Keten Gömlek | 289.9 | TRY | kazanc-0",
      "Kadife Etek | 389.9 | TRY | kazanc-1",
      "Yün Atkı | 489.9 | TRY | kazanc-2",
    ),
  },
  {
    name: "crowns behind a dash, on a Danish page that says it is English",
    head: GRID,
    body: `<div class="g">${each(["Uldtørklæde", "Hørskjorte", "Plisseret nederdel"], (name, i) => `<div><a href="/v/${i}">${picture(`dkr-${i}`)}<h4>${name}</h4></a><b>${i + 2}00,- kr.</b></div>`)}</div><p>Køb og nyhed til dig, af hør og uld.</p>`,
    kind: "listing",
    products: expected(
      "Uldtørklæde | 200 | DKK | dkr-0",
      "Hørskjorte | 300 | DKK | dkr-1",
      "Plisseret nederdel | 400 | DKK | dkr-2",
    ),
  },
];
