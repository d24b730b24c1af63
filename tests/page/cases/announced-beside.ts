import { expected, expectedMain, type PageCase, picture } from "./page-case.ts";

const BIG = (slug: string): string => `<img src="/i/${slug}.jpg" width="400" height="500">`;

/** Product pages that announce others beside their own, and those whose name or price only a table, a class or a place tells. */
export const ANNOUNCED_BESIDE: readonly PageCase[] = [
  {
    name: "related products without a price or a link under a heading that announces them",
    lang: "es",
    url: "http://shop.localhost/ficha.html?ref=7",
    head: "<title>Tienda</title>",
    body: `<div>${BIG("mochila")}<h2>Mochila Sendero</h2><p>Precio: UYU 2350</p><button>Comprar</button></div><div><h5>Productos relacionados</h5><div class="row"><div class="product"><div>${picture("rinonera")}<p>Riñonera Arroyo</p></div></div><div class="product"><div>${picture("bolso")}<p>Bolso Fin de Semana</p></div></div></div></div><h4>Comentarios</h4>`,
    kind: "product",
    products: [
      expectedMain("Mochila Sendero | 2350 | UYU | mochila.jpg"),
      ...expected("Riñonera Arroyo | | | rinonera.jpg", "Bolso Fin de Semana | | | bolso.jpg"),
    ],
    layout: true,
  },
  {
    name: "similar products without a price that lead to the page they are on",
    lang: "pl",
    url: "http://shop.localhost/produkt.html",
    body: `<div class="produkt"><figure>${BIG("czapka")}</figure><h4>Czapka Modrzew</h4><h3>230zł</h3><a href="/koszyk.html">Dodaj do koszyka</a></div><div class="podobne"><h3>Podobne produkty</h3>${["Czapka Buk", "Czapka Grab", "Szalik Olcha"].map((name, i) => `<div class="pozycja"><a href="/produkt.html">${picture(`podobny-${i}`)}</a><h5>${name}</h5></div>`).join("")}</div>`,
    kind: "product",
    products: [
      expectedMain("Czapka Modrzew | 230 | PLN | czapka.jpg"),
      ...expected(
        "Czapka Buk | | | podobny-0.jpg",
        "Czapka Grab | | | podobny-1.jpg",
        "Szalik Olcha | | | podobny-2.jpg",
      ),
    ],
    layout: true,
  },
  {
    name: "other products without a price in the block of the page's own, from other folders",
    lang: "ru",
    url: "http://shop.localhost/platki/ozero",
    body: `<div class="container"><h1>Платок Озеро</h1><div class="row">${BIG("ozero")}<div><b>1290 руб.</b><button>В корзину</button></div></div><h3>Смотрите также</h3><div class="quotation"><div class="slider"><div class="item"><a href="/shali/tuman">${picture("tuman")}<label><span>Шаль Туман</span></label></a></div><div class="item"><a href="/platki/les">${picture("les")}<label><span>Платок Лес</span></label></a></div></div></div></div>`,
    kind: "product",
    products: [
      expectedMain("Платок Озеро | 1290 | RUB | ozero.jpg"),
      ...expected("Шаль Туман | | | tuman.jpg", "Платок Лес | | | les.jpg"),
    ],
    layout: true,
  },
  {
    name: "related products whose amounts have no sign, beside one that has",
    lang: "id",
    url: "http://shop.localhost/product/14",
    body: `<div>${BIG("kaos")}<div><h1>Kaos Rimba</h1><p>Rp 149.000</p><button>Masukkan Keranjang</button></div></div><div><h2>Anda mungkin juga menyukai</h2><div class="grid"><div class="card"><a href="/product/20">${picture("hoodie")}<b>Hoodie Kabut</b><p>Hoodie</p><h4>285.000</h4></a></div><div class="card"><a href="/product/21">${picture("celana")}<b>Celana Krem</b><p>Celana</p><h4>219.000</h4></a></div></div></div>`,
    kind: "product",
    products: [
      expectedMain("Kaos Rimba | 149000 | IDR | kaos.jpg"),
      ...expected("Hoodie Kabut | 285000 | IDR | hoodie.jpg", "Celana Krem | 219000 | IDR | celana.jpg"),
    ],
    layout: true,
  },
  {
    name: "articles and pictures of customers below a product are announced by no such heading",
    url: "http://shop.localhost/products/alder-coat",
    body: `<div>${BIG("coat")}<div><h1>Alder coat</h1><p>$240.00</p><button>Add to cart</button></div></div><div><h2>From the journal</h2><div class="card">${picture("wool")}<h3>How we comb wool</h3></div><div class="card">${picture("dye")}<h3>A day at the dye house</h3></div></div><div><h2>Worn by you</h2><div class="card">${picture("worn-1")}<p>Ida in Turku</p></div><div class="card">${picture("worn-2")}<p>Noor in Ghent</p></div></div>`,
    kind: "product",
    products: [expectedMain("Alder coat | 240 | USD | coat.jpg")],
    layout: true,
  },
  {
    name: "the price struck, the one to pay behind it without a sign, an instalment below",
    lang: "pt",
    url: "http://shop.localhost/produto-1.php",
    body: `<div>${BIG("camisa")}<div><div class="titulo-produto"><h2>Camisa Branca</h2><small>cod.: 102459</small></div><div><span style="text-decoration:line-through">R$ 249,99</span> | 219,99<br><small>5x R$ 43,99</small></div><button>Adicionar à Sacola</button><button class="comprar">Comprar</button></div></div>`,
    kind: "product",
    products: [expectedMain("Camisa Branca | 219.99 | BRL | camisa.jpg")],
    layout: true,
  },
  {
    name: "a name in a paragraph that is called so in the shop's own language",
    lang: "vi",
    url: "http://shop.localhost/xem?ma=17",
    head: "<title>Cửa hàng</title>",
    body: `<div><div><p>Người mẫu cao 1m65 đang mặc size M</p>${BIG("vay")}</div><div><p class="hangsanxuat">Lụa Mây</p><p class="tensanpham">Chân váy Sương</p><div><del>399,000 VND</del> (GIẢM GIÁ 25 %)</div><p>299,000 VND</p><button>Thêm vào giỏ hàng</button></div></div>`,
    kind: "product",
    products: [expectedMain("Chân váy Sương | 299000 | VND | vay.jpg")],
    layout: true,
  },
  {
    name: "a name in a table of facts",
    lang: "ko",
    url: "http://shop.localhost/view?no=218",
    head: "<title>거래 상세</title>",
    body: `<div><div>${BIG("namu")}</div><div><h3>판매중</h3><table><tbody><tr><th>상품명</th><td>나무 단추 가방</td></tr><tr><th>분류</th><td>가방</td></tr><tr><th>판매가격</th><td>19,000원</td></tr></tbody></table><a href="#" class="btn">구매하기</a></div></div>`,
    kind: "product",
    products: [expectedMain("나무 단추 가방 | 19000 | KRW | namu.jpg")],
    layout: true,
  },
  {
    name: "numbers of articles behind names",
    lang: "bg",
    body: `<div class="g">${["Купа Орех", "Престилка Лен", "Чаша Троян"].map((name, i) => `<div class="item"><a href="/p/${i}">${picture(`ean-${i}`)}</a><div class="name"><a href="/p/${i}">${name}</a> <span class="code_prod">(EAN: <span>380001841${i}</span>)</span></div><div>25.00 лв.</div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Купа Орех | 25 | BGN | ean-0.jpg",
      "Престилка Лен | 25 | BGN | ean-1.jpg",
      "Чаша Троян | 25 | BGN | ean-2.jpg",
    ),
  },
  {
    name: "products of the same maker, whose names lie over their pictures",
    lang: "vi",
    url: "http://shop.localhost/chi-tiet-san-pham/16",
    body: `<main><div>${BIG("may-in")}<h1>Máy in Mạch 35</h1><p>12.500.000đ</p><button>Thêm vào giỏ</button></div><div><div class="title-same"><p>SẢN PHẨM CÙNG THƯƠNG HIỆU</p></div><div class="projects">${["Mạch 45", "Mạch 60", "Mạch C12"].map((name, i) => `<div class="photocopy"><a href="/chi-tiet-san-pham/2${i}">${picture(`mach-${i}`)}<div class="overlay"><h4>Máy in ${name}</h4></div></a></div>`).join("")}</div></div></main>`,
    kind: "product",
    products: [
      expectedMain("Máy in Mạch 35 | 12500000 | VND | may-in.jpg"),
      ...expected(
        "Máy in Mạch 45 | | | mach-0.jpg",
        "Máy in Mạch 60 | | | mach-1.jpg",
        "Máy in Mạch C12 | | | mach-2.jpg",
      ),
    ],
    layout: true,
  },
];
