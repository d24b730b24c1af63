import { BIG, expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

const named = (slug: string, name: string): string =>
  `<img src="/i/${slug}.jpg" alt="${name}" width="220" height="280">`;

/** Lines that frameworks and line breaks cut into pieces, numbers that stand for themselves, and codes beside them. */
export const IN_PIECES: readonly PageCase[] = [
  {
    name: "a line that a framework writes in pieces, as a bare text of a list item",
    head: '<style>ul{display:flex;gap:5%}img{display:block;width:220px;height:280px}</style><meta property="og:locale" content="en_IN">',
    body: `<h1>Kurtas</h1><ul>${[
      ["indigo", "Indigo kurta", 1450],
      ["madder", "Madder kurta", 1690],
      ["turmeric", "Turmeric kurta", 1380],
    ]
      .map(
        ([slug, name, price]) =>
          `<li>${named(String(slug), String(name))}${name}<!-- --> <br>Hand block print<br>Rs<!-- -->${price}<!-- -->/-</li>`,
      )
      .join("")}</ul>`,
    kind: "listing",
    products: expected(
      "Indigo kurta | 1450 | INR | indigo.jpg",
      "Madder kurta | 1690 | INR | madder.jpg",
      "Turmeric kurta | 1380 | INR | turmeric.jpg",
    ),
  },
  {
    name: "a price on its own line behind one with a comma in it",
    lang: "es",
    head: GRID,
    body: `<a href="carrito.php">Carrito (0)</a><div class="g">${[
      ["manoplas", "Manoplas de fieltro", "Forro suave, varios tamaños", "21.95"],
      ["bufanda", "Bufanda de punto", "Lana de oveja", "34.5"],
      ["gorra", "Gorra de pana", "Visera corta", "18"],
    ]
      .map(
        ([slug, name, about, price]) =>
          `<div class="card">${named(slug ?? "", name ?? "")}<h5>${name}</h5><p>${about} <br> <mark> ${price} € </mark></p><a class="btn" href="ver.php?id=${slug}">Comprar</a></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Manoplas de fieltro | 21.95 | EUR | manoplas.jpg",
      "Bufanda de punto | 34.5 | EUR | bufanda.jpg",
      "Gorra de pana | 18 | EUR | gorra.jpg",
    ),
  },
  {
    name: "fractions without a sign, as a program prints them, among what is suggested",
    lang: "vi",
    url: "http://shop.localhost/product?id=7",
    head: GRID,
    body: `<a href="cart">Giỏ hàng</a><div>${BIG("ao-len")}<div><h2>Áo len cổ lọ</h2><div>Giá: 390000.0</div><form action="cart"><button>Thêm vào giỏ</button></form></div></div><h3>Gợi ý tương tự</h3><div class="g">${[
      ["ao-khoac", "Áo khoác dạ", 8],
      ["khan-len", "Khăn len dày", 9],
      ["mu-len", "Mũ len tai bèo", 11],
    ]
      .map(
        ([slug, name, id]) =>
          `<div class="card">${named(String(slug), String(name))}<a href="product?id=${id}">${name}</a><div>${id}50000.0</div></div>`,
      )
      .join("")}</div><footer>Cửa hàng ở Đà Nẵng</footer>`,
    kind: "product",
    products: [
      expectedMain("Áo len cổ lọ | 390000 | VND | ao-len.jpg"),
      ...expected(
        "Áo khoác dạ | 850000 | VND | ao-khoac.jpg",
        "Khăn len dày | 950000 | VND | khan-len.jpg",
        "Mũ len tai bèo | 1150000 | VND | mu-len.jpg",
      ),
    ],
    layout: true,
  },
  {
    name: "the number of the model and the label of the price are no names, the picture's is",
    lang: "ar",
    head: GRID,
    body: `<div class="g">${[
      ["k4471", "حقيبة جلد 1", 310],
      ["k2206", "حقيبة جلد 2", 280],
      ["k9035", "حقيبة جلد 3", 345],
    ]
      .map(
        ([slug, name, price]) =>
          `<div class="box">${named(String(slug), String(name))}<div><p><b>رقم المودل:${String(slug).slice(1)}</b></p><p><b>السعر:${price}رس</b></p><input type="button" value="اضف الى السلة"></div></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "حقيبة جلد 1 | 310 | SAR | k4471.jpg",
      "حقيبة جلد 2 | 280 | SAR | k2206.jpg",
      "حقيبة جلد 3 | 345 | SAR | k9035.jpg",
    ),
  },
  {
    name: "what can be bought or hired, at a price in guaraníes for each",
    lang: "es",
    head: GRID,
    body: `<h2>Nuestra colección</h2><div class="g">${[
      ["alba", "Alba", "1.650.000", "420.000"],
      ["brisa", "Brisa", "2.900.000", "810.000"],
      ["coral", "Coral", "970.000", "240.000"],
    ]
      .map(
        ([slug, name, price, hire]) =>
          `<article class="pieza">${picture(slug ?? "")}<span>Gala</span><h3>${name}</h3><p>Tallas: S, M</p><div><div><span>Precio de compra</span><strong>Gs. ${price}</strong></div><div><span>Alquiler</span><strong>Gs. ${hire}</strong></div></div><button>Ver detalles</button><button>Reservar</button></article>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Alba | 1650000 | PYG | alba.jpg",
      "Brisa | 2900000 | PYG | brisa.jpg",
      "Coral | 970000 | PYG | coral.jpg",
    ),
  },
  {
    name: "colours of one product as small pictures that lead to their own pages",
    url: "http://shop.localhost/products/cable-cardigan-moss",
    head: "<style>.s img{width:50px;height:75px}</style>",
    body: `<a href="/cart">Bag (0)</a><div>${BIG("cardigan-moss")}</div><div><h1>Cable cardigan</h1><p><s>£140</s> £112</p><form action="/cart/add"><p>Colour: Moss</p><div class="s"><a href="/products/cable-cardigan-moss"><img src="/i/swatch-moss_50x75.jpg" alt="Moss"></a><a href="/products/cable-cardigan-oat"><img src="/i/swatch-oat_50x75.jpg" alt="Oat"></a></div><button>Add to bag</button></form></div>`,
    kind: "product",
    products: [expectedMain("Cable cardigan | 112 | GBP | cardigan-moss.jpg")],
    layout: true,
  },
  {
    name: "a button that markup calls buying, whatever it says",
    lang: "fr",
    url: "http://shop.localhost/jupe",
    body: `<nav><a href="/">Accueil</a><a href="/jupes">Jupes</a></nav><section><div>${BIG("jupe")}</div><div><div class="nom"><h2>Jupe plissée Amel</h2></div><div><p>2900DA</p></div><div><span>choisir la taille</span><span>S</span><span>M</span></div><p>Une jupe ample en crêpe. <br>Taille haute</p><input type="number"><div class="buy"><button>achetez-la</button></div></div></section>`,
    kind: "product",
    products: [expectedMain("Jupe plissée Amel | 2900 | DZD | jupe.jpg")],
    layout: true,
  },
  {
    name: "a shop whose folder is called cart, with a script that shows one product",
    lang: "th",
    url: "http://shop.localhost/cart/products.php",
    body: `<table border="1"><tr><td>ภาพ</td><td>ชื่อสินค้า</td><td>ราคา</td><td>รายละเอียดสินค้า</td></tr>${[
      ["soap", "สบู่มะขาม", 45],
      ["balm", "ลิปบาล์มน้ำผึ้ง", 89],
      ["oil", "น้ำมันมะพร้าวสกัดเย็น", 159],
    ]
      .map(
        ([slug, name, price], i) =>
          `<tr><td><img src="pic/${slug}.jpg" width="80" height="100"></td><td>${name}</td><td>${price}.00</td><td><a href="cart\\product_detail.php?Product_ID=${i + 1}">คลิก</a></td></tr>`,
      )
      .join("")}</table>`,
    kind: "listing",
    products: expected(
      "สบู่มะขาม | 45 | THB | soap.jpg",
      "ลิปบาล์มน้ำผึ้ง | 89 | THB | balm.jpg",
      "น้ำมันมะพร้าวสกัดเย็น | 159 | THB | oil.jpg",
    ),
    layout: true,
  },
  {
    name: "pictures alone, each called by its name and leading to its page, under a heading that announces them",
    lang: "ru",
    url: "http://shop.localhost/product/31",
    body: `<a href="/basket">Корзина</a><form action="/basket/add/"><div><h2>Брошь «Клевер»</h2><table><tr><td><b>Цвет:</b> серебро</td></tr></table><input type="submit" value="в корзину"></div><div>${BIG("klever")}<div class="analog"><h3>Похожие броши</h3><ul>${[
      ["vasilek", "Брошь «Василёк»", 34],
      ["ryabina", "Брошь «Рябина»", 35],
      ["omela", "Брошь «Омела»", 38],
    ]
      .map(
        ([slug, name, id]) =>
          `<li><a href="/product/${id}"><img src="/i/${slug}.jpg" alt="${name}" width="80" height="96"></a></li>`,
      )
      .join("")}</ul></div></div></form>`,
    kind: "product",
    products: [
      expectedMain("Брошь «Клевер» | | | klever.jpg"),
      ...expected(
        "Брошь «Василёк» | | | vasilek.jpg",
        "Брошь «Рябина» | | | ryabina.jpg",
        "Брошь «Омела» | | | omela.jpg",
      ),
    ],
    layout: true,
  },
];
