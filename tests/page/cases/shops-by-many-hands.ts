import { expected, expectedMain, type PageCase } from "./page-case.ts";

const GRID = "<style>.g{display:flex;flex-wrap:wrap;gap:16px}.g>*{width:220px}img{display:block}</style>";
const picture = (slug: string): string => `<img src="/i/${slug}.jpg" alt="" width="220" height="280">`;

/** A tile as a template indents it: the price and the state beside it lie far apart in the source. */
const indented = (slug: string, name: string, price: string, state = ""): string => `
      <a class="thumb" href="/product/${slug}">
        ${picture(slug)}
        <div class="thumb-name">${name}</div>
        <div class="thumb-price">
          <span class="sign">£</span>${price}
${" ".repeat(60)}
          ${state && `<div class="thumb-state">${state}</div>`}
${" ".repeat(60)}
        </div>
      </a>`;

const bought = (slug: string, name: string, price: string): string =>
  `<div class="cart-item"><a href="/${slug}">${picture(slug)}</a><div><a href="/${slug}">${name}</a> <span>Velikost: M</span></div><span>${price}</span><button type="button" aria-label="Odstrani"><svg></svg></button></div>`;

const withDialog = (slug: string, name: string, price: string): string =>
  `<div class="card">${picture(slug)}<div class="card-body"><h5>${name}</h5><p>${price}</p><a href="/${slug}">See</a><div class="modal" style="display:none"><h5>Rust corduroy overshirt</h5><img src="/i/overshirt.jpg" width="300" height="300"><p>€120.00</p><button>Add to cart</button></div></div></div>`;

const onButton = (slug: string, name: string, price: string): string =>
  `<div class="piece"><h2>${name}</h2>${picture(slug)}<div><a href="/store/${slug}">Read more</a><button>Add to cart for ${price}</button></div></div>`;

/** How shops write, of which each does one thing that no other page here does. */
export const SHOPS_BY_MANY_HANDS: readonly PageCase[] = [
  {
    name: "prices cut in two in a source laid out by white space, a state beside one of them",
    head: GRID,
    body: `<h1>Prints</h1><div class="g">${indented("moth", "Moth print", "9.00")}${indented("bus", "Night bus print", "22.00", "On sale")}</div>`,
    kind: "listing",
    products: expected("Moth print | 9 | GBP | moth.jpg", "Night bus print | 22 | GBP | bus.jpg"),
    layout: true,
  },
  {
    name: "name and price in one link",
    lang: "ja",
    head: GRID,
    body: `<h1>贈り物</h1><div class="g">${[
      ["furoshiki", "風呂敷（藍）", "2,530円(税込)"],
      ["yunomi", "湯のみペア", "8,800円(税込)"],
    ]
      .map(
        ([slug, name, price]) =>
          `<div>${picture(slug ?? "")}<a class="name" href="/?pid=${slug}">${name}<span class="price">${price}</span></a></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected("風呂敷（藍） | 2530 | JPY | furoshiki.jpg", "湯のみペア | 8800 | JPY | yunomi.jpg"),
  },
  {
    name: "the brand as a small line in the heading of each tile, above its name",
    head: GRID,
    body: `<h1>Rompers</h1><div class="g">${[
      ["romper", "Willow Knits", "Footed romper in fern", "$38.00"],
      ["cap", "Moss Mill", "Merino pilot cap", "$19.50"],
    ]
      .map(
        ([slug, brand, name, price]) =>
          `<article><a href="/${slug}">${picture(slug ?? "")}</a><h6><a href="/${slug}"><small>${brand}</small><br>${name}</a></h6><p>${price}</p></article>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Footed romper in fern | 38 | USD | romper.jpg",
      "Merino pilot cap | 19.5 | USD | cap.jpg",
    ),
  },
  {
    name: "a badge that says how much less it costs",
    head: GRID,
    body: `<h1>Sneakers</h1><div class="g"><article><ul><li>-€7.00</li></ul><a href="/31-canvas">${picture("canvas")}</a><h3>Canvas sneaker</h3><span class="was">€49.00</span> <span>€42.00</span></article><article><a href="/32-court">${picture("court")}</a><h3>Court sneaker</h3><span>€64.00</span></article></div>`,
    kind: "listing",
    products: expected("Canvas sneaker | 42 | EUR | canvas.jpg", "Court sneaker | 64 | EUR | court.jpg"),
  },
  {
    name: "a large logo that leads home, beside it what shipping costs",
    lang: "cs",
    head: GRID,
    body: `<div id="top"><a id="logo" href="/"><img src="/images/logo.png" width="240" height="125" alt="Krok Krok - oblečení pro Vás"></a><a href="/kosik">Košík: 2 ks za 1 239 Kč</a></div><div class="g"><div><a href="/cepice">${picture("cepice")}</a><h3>Čepice z merina</h3><b>390 Kč</b></div><div><a href="/sala">${picture("sala")}</a><h3>Šála z merina</h3><b>590 Kč</b></div></div>`,
    kind: "listing",
    products: expected("Čepice z merina | 390 | CZK | cepice.jpg", "Šála z merina | 590 | CZK | sala.jpg"),
    layout: true,
  },
  {
    name: "a product page whose words name another ware with its price",
    lang: "pl",
    body: `<h1>Naszyjnik z bursztynem</h1><div style="display:flex"><div><img src="/i/naszyjnik.jpg" width="400" height="400"><p>Mleczny bursztyn w oprawie ze srebra próby 925. Każdy kamień ma inny rysunek. Pasują do niego <a href="/produkt/kolczyki">kolczyki z bursztynem</a> (189,00 zł).</p></div><div><s>329,00 zł</s><br><span>279,00 zł</span><form><input type="submit" value="Dodaj do koszyka"></form></div></div>`,
    kind: "product",
    products: [expectedMain("Naszyjnik z bursztynem | 279 | PLN | naszyjnik.jpg")],
    layout: true,
  },
  {
    name: "a name above a block with the price, in which facts follow under a heading, the lowest price of a month among them",
    lang: "pl",
    body: `<div><h1>Naszyjnik „Mgła”</h1></div><div style="display:flex"><div><img src="/i/mgla.jpg" width="400" height="400"></div><div><p><s>329,00 zł</s></p><p>279,00 zł</p><form><input type="submit" value="Dodaj do koszyka"></form><h2>Informacje dodatkowe</h2><p><span>Najniższa cena z 30 dni:</span> 269,00 zł</p></div></div>`,
    kind: "product",
    products: [expectedMain("Naszyjnik „Mgła” | 279 | PLN | mgla.jpg")],
    layout: true,
  },
  {
    name: "signs of money of Belarus, Egypt and Arabia, and a code behind a dollar sign",
    head: GRID,
    body: `<h1>Shawls</h1><div class="g">${[
      ["minsk", "Linen shawl", "92,50 BYN"],
      ["cairo", "Cotton shawl", "L.E 120.00"],
      ["jeddah", "Silk shawl", "السعر:250رس"],
      ["quebec", "Wool shawl", "$45.99 CAD"],
    ]
      .map(
        ([slug, name, price]) =>
          `<div><a href="/${slug}">${picture(slug ?? "")}</a><h3>${name}</h3><p>${price}</p></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Linen shawl | 92.5 | BYN | minsk.jpg",
      "Cotton shawl | 120 | EGP | cairo.jpg",
      "Silk shawl | 250 | SAR | jeddah.jpg",
      "Wool shawl | 45.99 | CAD | quebec.jpg",
    ),
  },
  {
    name: "a basket by its heading and its lines, without quantities",
    lang: "sl",
    url: "http://shop.localhost/index.php?route=checkout/cart",
    body: `<h1>Košarica <span>(2)</span></h1><div>${bought("bodi", "Bodi z dolgimi rokavi", "17,90€")}${bought("tunika", "Tunika pikice", "24,50€")}</div>`,
    kind: "none",
    products: [],
    layout: true,
  },
  {
    name: "the same closed dialog with another ware in every card",
    head: GRID,
    body: `<h1>All</h1><div class="g">${withDialog("shirt", "Linen camp shirt", "€59.00")}${withDialog("tank", "Rib tank", "€19.00")}${withDialog("skirt", "Pleated skirt", "€79.00")}</div>`,
    kind: "listing",
    products: expected(
      "Linen camp shirt | 59 | EUR | shirt.jpg",
      "Rib tank | 19 | EUR | tank.jpg",
      "Pleated skirt | 79 | EUR | skirt.jpg",
    ),
    layout: true,
  },
  {
    name: "the price on the button that buys, and nowhere else",
    head: GRID,
    body: `<div class="g">${onButton("hoodie", "Oversized hoodie", "49€")}${onButton("dress", "Velvet midi dress", "79.90€")}${onButton("boots", "Platform boots", "120€")}</div>`,
    kind: "listing",
    products: expected(
      "Oversized hoodie | 49 | EUR | hoodie.jpg",
      "Velvet midi dress | 79.9 | EUR | dress.jpg",
      "Platform boots | 120 | EUR | boots.jpg",
    ),
    layout: true,
  },
  {
    name: "a home page with a slide as its main heading and a closed quick view",
    body: `<section><div style="width:900px;height:400px;background-image:url(/i/slide-1.jpg)"><h1>Stay cool, summer 2031</h1><a href="/shop" class="btn">See more</a></div></section><div class="modal quick-view" style="display:none"><img src="/i/quick.jpg" width="300" height="300"><h3>Jacket</h3><p>Choose a size</p><button>Add to cart</button></div>`,
    kind: "none",
    products: [],
    layout: true,
  },
  {
    name: "concerts with a town and a date",
    lang: "pl",
    body: `<div style="display:flex">${["kwasni", "nocny"].map((slug) => `<a href="#" style="width:400px;height:260px;background-image:url('/i/${slug}.jpg')"><span><h3>${slug === "nocny" ? "Nocny Promień" : "Kwaśne Jabłka"}</h3><span>Katowice, 23.05.2031</span> <span class="price">od 79 zł</span></span></a>`).join("")}</div>`,
    kind: "none",
    products: [],
    layout: true,
  },
  {
    name: "a tile that asks for the price among others, in a folder of its own",
    head: GRID,
    body: `<h1>Crochet</h1><div class="g">${[
      ["hats/bear", "Bear ear beanie", "£22.50"],
      ["bags/ruffle", "Ruffle tote", "£48.00"],
      ["flowers/lily", "Wedding bouquet", "Price on request"],
    ]
      .map(
        ([slug = "", name, price]) =>
          `<div class="group">${picture(slug.replace("/", "-"))}<h3>${name}</h3><p>${price}</p><a href="/products/${slug}">View</a></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Bear ear beanie | 22.5 | GBP | hats-bear.jpg",
      "Ruffle tote | 48 | GBP | bags-ruffle.jpg",
      "Wedding bouquet | | | flowers-lily.jpg",
    ),
  },
  {
    name: "a ware sold out without a price, said so on its picture, in any language",
    lang: "fa",
    head: GRID,
    body: `<ul class="g">${[
      ["manto", "مانتو کتان", "<span>890,000 تومان</span>", ""],
      ["shawl", "شال نخی", "<span>245,000 تومان</span>", ""],
      ["satin", "پیراهن ساتن", "", '<span class="out-of-stock">ناموجود</span>'],
    ]
      .map(
        ([slug = "", name, price, state]) =>
          `<li class="product"><a class="link product__link" href="/${slug}.html">${state}${picture(slug)}</a><h3>${name}</h3>${price}</li>`,
      )
      .join("")}</ul>`,
    kind: "listing",
    products: expected(
      "مانتو کتان | 890000 | IRT | manto.jpg",
      "شال نخی | 245000 | IRT | shawl.jpg",
      "پیراهن ساتن | | | satin.jpg",
    ),
    layout: true,
  },
  {
    name: "a layer of what was looked at, which is not displayed, at the end of a page",
    lang: "ko",
    body: `<h1>원피스</h1><div>${picture("dress")}<h3><a href="/product/1">코듀로이 원피스</a></h3><p>44,500원</p></div><div class="recent-layer" style="display:none"><h2>최근 본 상품</h2><ul><li><a href="/product/412"><img src="/i/recent.jpg" alt="가방"></a><p>72,000원</p></li></ul></div>`,
    kind: "listing",
    products: expected("코듀로이 원피스 | 44500 | KRW | dress.jpg"),
    layout: true,
  },
  {
    name: "a page about a download that other sites offer as their product",
    body: `<section><img src="/i/waves.jpg" width="900" height="300"><h3>Do you love this kit of patterns?</h3><p>It can be yours for free.</p><a href="https://elsewhere.example/product/kit" class="btn">Download</a></section>`,
    kind: "none",
    products: [],
    layout: true,
  },
  {
    name: "a banner with a link among the words of a product page, its picture in another column",
    body: `<table><tr><td><img src="/products/dome.jpg" width="300" height="300"></td><td><h1>Copper dome</h1><p>Style and glamour.</p><a href="/price-promise"><img src="/i/promise.gif" width="300" height="150"></a><form action="/add_to_basket.php" method="post">£340.00 (inc VAT) <input type="submit" value="Add to basket"></form></td></tr></table>`,
    kind: "product",
    products: [expectedMain("Copper dome | 340 | GBP | dome.jpg")],
    layout: true,
  },
  {
    name: "lazy pictures whose address leaves the width to a script, another picture where no script runs",
    head: GRID,
    body: `<h1>Dresses</h1><div class="g">${["dawn", "moravia"]
      .map(
        (slug) =>
          `<div><a href="/products/${slug}"><div style="width:220px;height:280px"><img style="width:220px;height:280px" data-src="/files/${slug}-front_{width}x.jpg" data-widths="[200,400]" alt=""><noscript><img src="/files/${slug}-back_600x.jpg"></noscript></div></a><h2>The ${slug} dress</h2><span>$428</span></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "The dawn dress | 428 | USD | dawn-front",
      "The moravia dress | 428 | USD | moravia-front",
    ),
    layout: true,
  },
  {
    name: "a seal nearer to the name of the product than its own picture",
    lang: "de",
    body: `<div><div><img src="/i/holzbirne.jpg" width="500" height="500"></div><form><div><h1>Pflanzset Holzbirne</h1><p>8,90 €</p><button>In den Warenkorb</button></div><div><img src="/i/siegel.png" width="150" height="150" alt="spenden"></div></form></div>`,
    kind: "product",
    products: [expectedMain("Pflanzset Holzbirne | 8.9 | EUR | holzbirne.jpg")],
    layout: true,
  },
  {
    name: "a list with a single ware, below it promotions that ask to order",
    url: "http://shop.localhost/collections/all",
    head: GRID,
    body: `<main><h1>Products</h1><div class="g"><div><a href="/collections/all/products/linden">${picture("linden")}<h3>Linden</h3><span>SFr. 45.00</span></a></div></div></main><section class="g"><div><a href="">${picture("order")}</a><h4>Order Linden</h4><a href="" class="btn">Order now</a></div><div><a href="">${picture("sample")}</a><h4>Try it first</h4><a href="" class="btn">Order a sample</a></div></section>`,
    kind: "listing",
    products: expected("Linden | 45 | CHF | linden.jpg"),
    layout: true,
  },
  {
    name: "the table of a shop keeper, who edits and deletes",
    lang: "en-IN",
    body: `<h2>Products</h2><table>${["kettle", "basket"].map((slug, i) => `<tr><td>${i + 1}</td><td>Steel ${slug}</td><td><img src="/i/${slug}.png" width="100" height="100"></td><td>₹45${i}</td><td><a href="edit.php?id=${i}">Edit</a> <a href="delete.php?id=${i}">Delete</a></td></tr>`).join("")}</table>`,
    kind: "none",
    products: [],
    layout: true,
  },
  {
    name: "a column of news in which an amount stands",
    body: `<div style="width:240px"><h3>Related</h3><ul>${["io", "maps", "wallet"].map((slug) => `<li><a href="/2031-05-14/${slug}"><img src="/i/${slug}.jpg" width="190" height="127"></a><h4><a href="/2031-05-14/${slug}">What to expect of ${slug}</a></h4></li>`).join("")}</ul><p>Shares <span>$34.55</span></p></div>`,
    kind: "none",
    products: [],
    layout: true,
  },
];
