import { BIG, each, expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

const THREE = ["Plum Velvet Skirt", "Ochre Linen Shirt", "Teal Wool Scarf"];

/** Wares in the folder of their group, pictures that something turns in place of, savings in an element of their own. */
export const FOLDERS_AND_SIGNS: readonly PageCase[] = [
  {
    name: "wares whose pages lie in the folder of a group, called products and with their prices",
    url: "https://shop.localhost/c/women.html",
    head: GRID,
    body: `<div class="g">${each(THREE, (name, i) => `<div class="product-card"><a href="/c/ware-${i}">${picture(`card-${i}`)}</a><a href="/c/ware-${i}"><span class="product-card__title">${name}</span></a><div><del>€89.00</del> <ins>€${i + 4}5.00</ins></div></div>`)}</div>`,
    kind: "listing",
    products: expected(
      "Plum Velvet Skirt | 45 | EUR | card-0",
      "Ochre Linen Shirt | 55 | EUR | card-1",
      "Teal Wool Scarf | 65 | EUR | card-2",
    ),
  },
  {
    name: "pictures in whose place a small spinner turns",
    lang: "de",
    head: GRID,
    layout: true,
    body: `<div class="g">${each(THREE, (name, i) => `<div class="box"><a href="/Damen/ware-${i}.html"><img src="/img/spinner.gif" width="24" height="24" data-src="/generated/390/turn-${i}.jpg" alt="${name}"></a><a href="/Damen/ware-${i}.html">${name}</a><div>${i + 4}5,00 €</div></div>`)}</div>`,
    kind: "listing",
    products: expected(
      "Plum Velvet Skirt | 45 | EUR | turn-0",
      "Ochre Linen Shirt | 55 | EUR | turn-1",
      "Teal Wool Scarf | 65 | EUR | turn-2",
    ),
  },
  {
    name: "what is saved, in an element of its own behind its label, less than the price",
    lang: "ru",
    head: GRID,
    body: `<div class="g">${each(["Пальто шерстяное", "Джинсы прямые", "Кардиган серый"], (name, i) => `<div><a href="/shop/ware-${i}">${picture(`ru-${i}`)}</a><a href="/shop/ware-${i}">${name}</a><div><span><b>${i + 12}&nbsp;990&nbsp;руб.</b></span><span><s>18&nbsp;990&nbsp;руб.</s></span><span> Вы экономите:&nbsp;<bdi><span>${i + 1}&nbsp;000&nbsp;руб.</span></bdi></span></div></div>`)}</div>`,
    kind: "listing",
    products: expected(
      "Пальто шерстяное | 12990 | RUB | ru-0",
      "Джинсы прямые | 13990 | RUB | ru-1",
      "Кардиган серый | 14990 | RUB | ru-2",
    ),
  },
  {
    name: "a price as the highest heading, below the name",
    lang: "tr",
    url: "https://shop.localhost/urun-detay.html",
    body: `<a href="/sepet">Sepet</a><div>${BIG("inci")}</div><div><h3>İnci Gelin Çanta</h3><p>Boncukları elle işlenmiş, özel günler için.</p><h2>Fiyat : 4000₺</h2><input type="number" value="1"><button>Sepete Ekle</button></div>`,
    kind: "product",
    products: [expectedMain("İnci Gelin Çanta | 4000 | TRY | inci")],
  },
  {
    name: "the shop's name as the first heading, which leads to its page for one country",
    url: "https://prints.localhost/us/two-vessels.html",
    head: "<title>Print Parlor - Lena Osk Two Vessels</title>",
    body: `<h1><a href="/us/">Print Parlor</a></h1><h2><strong><a href="/us/brands/lena-osk/">Lena Osk</a></strong><div id="Product_title">Two Vessels</div></h2><div>${BIG("vessels")}</div><p>$120.00</p><form><input type="number" name="quantity" value="1"><button>Add to cart</button></form>`,
    kind: "product",
    products: [expectedMain("Two Vessels | 120 | USD | vessels")],
  },
  {
    name: "pesos of a country that the foot names, on a page in Spanish that says it is in English",
    head: GRID,
    body: `<nav><a href="/m">Mujer</a> <a href="/h">Hombre</a></nav> <div class="g">${each(["Zapatilla Blanca", "Botita Marrón", "Sandalia Roja"], (name, i) => `<div class="product"><a href="/w/${i}">${picture(`ar-${i}`)}</a><h3>${name}</h3><p>$ ${i + 8}990</p></div>`)}</div><footer> <h3>Ayuda</h3> <h3>Contacto</h3> <p>Tienda Seis - Buenos Aires, Argentina</p></footer>`,
    kind: "listing",
    products: expected(
      "Zapatilla Blanca | 8990 | ARS | ar-0",
      "Botita Marrón | 9990 | ARS | ar-1",
      "Sandalia Roja | 10990 | ARS | ar-2",
    ),
  },
  {
    name: "prices with the tax in brackets behind larger ones without",
    lang: "ja",
    url: "https://towels.localhost/item/118",
    head: `${GRID}<style>.p{font-size:28px}</style>`,
    body: `<div>${BIG("nuno")}</div><h1>今治織タオル ネイビー</h1><div><p class="p">698<span>円</span></p><p>(税込 767円)</p></div><button>かごに追加</button><h2>関連商品</h2><div class="g">${each(["ふんわりタオル グレー", "陶器マグカップ", "木の器"], (name, i) => `<div><a href="/item/${i}">${picture(`ware-${i}`)}</a><p><a href="/item/${i}">${name}</a></p><div><p>${i + 1}00<span>円</span></p></div><p>(税込 ${i + 1}${i + 1}0円)</p></div>`)}</div>`,
    kind: "product",
    products: [
      expectedMain("今治織タオル ネイビー | 767 | JPY | nuno"),
      ...expected(
        "ふんわりタオル グレー | 110 | JPY | ware-0",
        "陶器マグカップ | 220 | JPY | ware-1",
        "木の器 | 330 | JPY | ware-2",
      ),
    ],
  },
];
