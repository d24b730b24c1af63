import { BIG, expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

const basket = `<img class="icon" src="/i/wishlist.png" width="20" height="20">`;

/** Pages on which small pictures stand for buttons or are stamped on others, and words that mean one thing here and another there. */
export const SIGNS_AND_STAMPS: readonly PageCase[] = [
  {
    name: "a basket drawn as a small picture beside the price, and nothing else to press",
    head: GRID,
    body: `<a href="#cart" class="cart-top">Basket</a><h2>Blouses</h2><div class="g">${[
      "Plum wrap blouse",
      "Sand office blouse",
      "Teal bow blouse",
    ]
      .map(
        (name, i) =>
          `<div class="card"><p>${name}</p>${picture(`blouse-${i}`)}<p>${basket} ${i + 3}2.00 $<img src="/i/addtocart.png" width="20" height="20"></p></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Plum wrap blouse | 32 | USD | blouse-0.jpg",
      "Sand office blouse | 42 | USD | blouse-1.jpg",
      "Teal bow blouse | 52 | USD | blouse-2.jpg",
    ),
  },
  {
    name: "the lowest price of sizes, beside a button that is only a drawing",
    lang: "cs",
    url: "http://shop.localhost/produkty.html",
    body: `<nav><a href="/kosik.html">Košík</a></nav>${["Vrba", "Topol", "Javor"]
      .map(
        (name, i) =>
          `<section><div class="row"><div class="gallery"><a href="/dam/${i}.jpg">${picture(`taska-${i}`)}</a></div><div class="text"><h2>${name}</h2><button class="variant">S</button><button class="variant">L</button><div class="cena">od ${i + 5}90,-</div><div><input disabled><button class="addToCart" disabled><span></span></button></div></div></div></section>`,
      )
      .join("")}`,
    kind: "listing",
    products: expected(
      "Vrba | 590 | CZK | taska-0.jpg",
      "Topol | 690 | CZK | taska-1.jpg",
      "Javor | 790 | CZK | taska-2.jpg",
    ),
  },
  {
    name: "a model whose number looks like dollars of Taiwan",
    lang: "vi",
    head: GRID,
    body: `<div class="g">${[1, 2, 3]
      .map(
        (i) =>
          `<div class="item"><a href="/ao-nt${i}">${picture(`ao-${i}`)}</a><h3><a href="/ao-nt${i}">Áo dài lụa NT${i}</a></h3><small>${i}80.000₫</small></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Áo dài lụa NT1 | 180000 | VND | ao-1.jpg",
      "Áo dài lụa NT2 | 280000 | VND | ao-2.jpg",
      "Áo dài lụa NT3 | 380000 | VND | ao-3.jpg",
    ),
  },
  {
    name: "what one costs, and as low as what in larger numbers",
    head: GRID,
    body: `<ol class="g">${["Cedar socks", "Rust socks", "Ink socks"]
      .map(
        (name, i) =>
          `<li><a href="/socks-${i}">${picture(`socks-${i}`)}</a><strong><a href="/socks-${i}">${name}</a></strong><div class="price-box"><span class="custom">$${i + 7}.00</span><a href="/socks-${i}"><span>As low as</span> <span>$${i + 5}.50</span></a></div><button>Add to Cart</button></li>`,
      )
      .join("")}</ol>`,
    kind: "listing",
    products: expected(
      "Cedar socks | 7 | USD | socks-0.jpg",
      "Rust socks | 8 | USD | socks-1.jpg",
      "Ink socks | 9 | USD | socks-2.jpg",
    ),
  },
  {
    name: "a corner with a stamp in a link of its own, before the picture",
    head: `${GRID}<style>.cell{position:relative}.corner{position:absolute;left:0;top:0}</style>`,
    body: `<div class="g">${["Heather cardigan", "Oat cardigan", "Moss cardigan"]
      .map(
        (name, i) =>
          `<div class="cell"><a href="/p/${i}"><img class="corner" src="/i/save${i}.png" width="110" height="110" alt=""></a><br><a href="/p/${i}"><img src="/i/cardigan-${i}.jpg" width="220" height="280" alt="${name}"></a><br><a href="/p/${i}">${name}</a><br><s>£6${i}.00</s> <span>£4${i}.00</span></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Heather cardigan | 40 | GBP | cardigan-0.jpg",
      "Oat cardigan | 41 | GBP | cardigan-1.jpg",
      "Moss cardigan | 42 | GBP | cardigan-2.jpg",
    ),
    layout: true,
  },
  {
    name: "a strip of offers between the name and the price, the picture beside them",
    lang: "zh",
    url: "http://shop.localhost/dayi/31.html",
    body: `<div style="overflow:hidden"><div style="float:right;width:620px"><h3>女士双排扣羊毛大衣 驼色</h3><img src="/i/youhui.png" width="600" height="80"><p>价格：￥899.00</p><p>运费：0.00</p><a href="#">立即购买</a> <a href="#">加入购物车</a></div><div style="float:left">${BIG("tuose-dayi")}</div></div>`,
    kind: "product",
    products: [expectedMain("女士双排扣羊毛大衣 驼色 | 899 | CNY | tuose-dayi.jpg")],
    layout: true,
  },
  {
    name: "a form of choices that are put away, with a banner of ways to pay",
    lang: "vi",
    url: "http://shop.localhost/products/vay-lua",
    body: `<main><div class="product-block-list"><div class="item"><div class="card">${BIG("vay-lua")}</div></div><div class="item"><div class="card"><h1>Váy lụa cánh sen</h1><div class="price-list"><span>780,000 đ</span> <s>936,000 đ</s></div><form action="/cart/add" method="post"><div style="display:none"><span class="info-title">Giá:</span><div class="price-list"><span>780,000 đ</span></div></div><button type="submit"><div>MUA NGAY</div><div>780,000 đ</div></button><div class="payment"><img src="/i/thanh-toan.png" width="400" height="120" alt=""></div></form></div></div><div class="item"><h5>Thường được mua cùng</h5><div class="product-item"><a href="/products/khan"><img src="/i/khan.jpg" width="120" height="120" alt="Khăn choàng"></a><a href="/products/khan">Khăn choàng</a><span>150,000 đ</span></div></div></div></main>`,
    kind: "product",
    products: [
      expectedMain("Váy lụa cánh sen | 780000 | VND | vay-lua.jpg"),
      ...expected("Khăn choàng | 150000 | VND | khan.jpg"),
    ],
    layout: true,
  },
  {
    name: "the only price under a label, and an old kind of button outside the columns",
    lang: "sk",
    url: "http://shop.localhost/index.php/sk/shirt/jezko",
    body: `<div class="page"><div style="float:left">${BIG("jezko")}</div><div style="float:left"><div style="font-size:20px">Ježko z Terchovej</div><div><div>Veľkosť</div><div>M</div></div><div><div>Cena</div><div style="font-size:20px">17.50 EUR</div></div><div><select name="pieces"><option>1</option><option>2</option></select></div></div><div style="clear:both"><input type="button" name="kupis" value="Do košíka"></div><div>Bavlnené tričko.</div></div>`,
    kind: "product",
    products: [expectedMain("Ježko z Terchovej | 17.5 | EUR | jezko.jpg")],
    layout: true,
  },
  {
    name: "a label spread over its column by spaces",
    lang: "zh",
    url: "http://shop.localhost/product/detail.html?id=7",
    body: `<div><div>${BIG("paobufu")}</div><ul><li><h2>速干跑步外套 湖蓝</h2></li><li><label>价 格：</label><span><b>169.00</b></span></li><li><label>库 存：</label><span>86</span></li></ul></div>`,
    kind: "product",
    products: [expectedMain("速干跑步外套 湖蓝 | 169 | CNY | paobufu.jpg")],
  },
  {
    name: "the lines of a basket, with steps and a word that takes them out",
    lang: "tr",
    url: "http://shop.localhost/Sepet/basket.php",
    body: `<h2>Sepetim</h2><div class="list">${["Deri kemer", "Yün bere", "İpek fular"]
      .map(
        (name, i) =>
          `<div class="list-item"><div>${picture(`sepet-${i}`)}<div><h5>${name}</h5><p>Fiyat: ₺${i + 1}49</p><button>-</button><button>1</button><button>+</button></div></div><button>Sil</button></div>`,
      )
      .join("")}</div><p>Toplam: ₺747</p><button>Siparişi Onayla</button>`,
    kind: "none",
    products: [],
  },
  {
    name: "news in the markup of products, at an address that says so",
    lang: "vi",
    url: "http://shop.localhost/xem-tin-tuc",
    body: `<a href="/gio-hang">Giỏ hàng</a><div id="all-product"><h3>Bảng tin</h3><ul>${[
      "Cách giặt áo len không bị dãn",
      "Mua hai tặng một áo thun",
      "Váy dạ tiệc cho bé gái",
      "Phiếu quà tặng tháng chín",
    ]
      .map(
        (name, i) =>
          `<li class="product"><a href="${i ? "#" : "/chi-tiet-tin"}" class="thumb">${picture(`tin-${i}`)}</a><div class="data"><a href="${i ? "#" : "/chi-tiet-tin"}" class="title">${name}</a><p>Vài mẹo nhỏ</p><p>Ngày đăng: 0${i + 1}/08/2020</p></div></li>`,
      )
      .join("")}</ul></div>`,
    kind: "none",
    products: [],
  },
  {
    name: "news with stars, in the place of a price",
    lang: "vi",
    url: "http://shop.localhost/tintuc.php",
    head: GRID,
    body: `<h1>TIN TỨC</h1><div class="g">${[
      "Điều gì làm nên một thương hiệu thời trang",
      "Gợi ý mười mẫu túi xách được ưa chuộng",
      "Trao thẻ quà tặng cho ngày lễ thêm đong đầy",
      "Cách giữ an toàn cho khách tại cửa hàng",
    ]
      .map(
        (name, i) =>
          `<div class="box">${picture(`bai-${i}`)}<div class="content"><h3>${name}</h3><p>10h ngày 20 / 4 / 2022</p><div class="price">Một số biện pháp sẽ được áp dụng để mang lại trải nghiệm an tâm...</div><a href="tintuc${i}.html" class="btn">Đọc ngay</a></div></div>`,
      )
      .join("")}</div>`,
    kind: "none",
    products: [],
  },
  {
    name: "what people in a forum say that things cost",
    lang: "pl",
    url: "http://shop.localhost/temat/17",
    body: `<div><h2>Posty w Jaki plecak na uczelnię?</h2><table><tr><td>marek napisał:</td></tr><tr><td><div>Kupiłem używany, wrzucam zdjęcie: ${BIG("plecak")}</div></td></tr></table><table><tr><td>Gosia napisała:</td></tr><tr><td><div>Ładny! Nowy kosztuje ze 240 zł.<br></div></td></tr></table><h2>Dodaj nowy post</h2></div>`,
    kind: "none",
    products: [],
    layout: true,
  },
  {
    name: "all that a studio makes, each leading to its shop elsewhere",
    lang: "cs",
    url: "http://shop.localhost/produkty",
    head: "<title>Produkty</title>",
    body: `<header><a href="/">Pestrá dílna</a><a href="/kontakt">Kontakt</a></header><div class="gallery">${[
      ["ponozky", "Ponožky Vrkoč"],
      ["sukne", "Sukně Mák"],
      ["vesta", "Vesta"],
      ["sal", "Šál Řeka"],
    ]
      .map(
        ([slug, name]) =>
          `<div class="product"><a href="https://eshop.localhost/"><div class="product-image" style="width:220px;height:280px;background-image:url('/i/${slug}.jpg')"></div><h4>${name}</h4></a></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Ponožky Vrkoč | | | ponozky.jpg",
      "Sukně Mák | | | sukne.jpg",
      "Vesta | | | vesta.jpg",
      "Šál Řeka | | | sal.jpg",
    ),
  },
  {
    name: "wares without a price or a link, on what its title calls a shop",
    lang: "uk",
    head: "<title>Лляний магазин</title>",
    body: `<nav><a href="#">Новинки</a><a href="#">Жінки</a></nav><section class="products">${[
      ["suknia", "Вечірня сукня"],
      ["palto", "Пальто оверсайз"],
      ["chelsi", "Шкіряні челсі"],
      ["shoper", "Сумка Шопер"],
    ]
      .map(([slug, name]) => `<div class="product">${picture(slug ?? "")}<h3>${name}</h3></div>`)
      .join("")}</section>`,
    kind: "listing",
    products: expected(
      "Вечірня сукня | | | suknia.jpg",
      "Пальто оверсайз | | | palto.jpg",
      "Шкіряні челсі | | | chelsi.jpg",
      "Сумка Шопер | | | shoper.jpg",
    ),
  },
];
