import { expected, expectedMain, type PageCase } from "./page-case.ts";

const hebrew = (at: number, name: string, price: string): string =>
  `<div class="col"><div class="item"><a href="/he/p/${at}"><picture><source media="(min-width:800px)" srcset="/h/${at}-l.jpg"><img src="/h/${at}-s.jpg" width="260" height="340" alt=""></picture><h4>${name}</h4></a><p>${price}</p></div></div>`;

const student = (file: string, name: string, price: string, old = ""): string => `
   <div class="pro" onclick="window.location.href='sproduct.html';">
     <img src="img/products/${file}.jpg" alt="">
     <div class="des"><span>loomly</span><h5>${name}</h5><div class="star"><i class="fas fa-star"></i><i class="fas fa-star"></i></div><h4>${price}${old ? ` <del>${old}</del>` : ""}</h4></div>
     <a href="#"><i class="fal fa-shopping-cart cart"></i></a>
   </div>`;

const rdfa = (slug: string, name: string, price: string): string =>
  `<li typeof="Product"><a property="url" href="/w/${slug}"><img property="image" src="/w/${slug}.png" width="220" height="220"></a><h3 property="name">${name}</h3><div property="offers" typeof="Offer"><span property="priceCurrency" content="CZK"></span><span property="price" content="${price.replace(/\D/g, "")}">${price}</span></div></li>`;

const titled = (slug: string, text: string): string =>
  `<div class="box"><img src="assets/${slug}.jpg" height="240"><h3>${text}</h3><button class="buy">Buy</button></div>`;

/** Shops that were put together like no other: one way each. */
export const SHOPS_UNLIKE_ANY: readonly PageCase[] = [
  {
    name: "a Hebrew shop, right to left, another file for wide screens",
    lang: "he",
    body: `<div dir="rtl"><header><h1>חנות הבד</h1></header><div style="display:flex">${hebrew(1, "חולצת פשתן לבנה", "₪249.00")}${hebrew(2, "חצאית קפלים", "320 ₪")}${hebrew(3, "מעיל צמר", "1,190 ₪")}</div><footer>משלוח חינם מעל 300 ₪</footer></div>`,
    kind: "listing",
    products: expected(
      "חולצת פשתן לבנה | 249 | ILS | 1-l.jpg",
      "חצאית קפלים | 320 | ILS | 2-l.jpg",
      "מעיל צמר | 1190 | ILS | 3-l.jpg",
    ),
    layout: true,
  },
  {
    name: "a student's shop: tiles that open by script, stars, a cart link to nowhere, features and a newsletter around",
    head: "<style>.pro-container{display:flex;flex-wrap:wrap}.pro{width:23%}.pro img{width:100%}.fe-box{width:180px}.fe-box img{width:100%}</style>",
    body: `<section id="header"><a href="#"><img src="img/logo.png" class="logo" alt=""></a><ul id="navbar"><li><a class="active" href="index.html">Home</a></li></ul></section><section id="hero"><h4>Trade-in-offer</h4><h2>Super value deals</h2><h1>On all products</h1><p>Save more with coupons & up to 70% off!</p><button>Shop Now</button></section><section id="feature"><div class="fe-box"><img src="img/features/f1.png"><h6>Free Shipping</h6></div><div class="fe-box"><img src="img/features/f2.png"><h6>Save Money</h6></div></section><section id="product1"><h2>Featured Products</h2><div class="pro-container">${student("f1", "Cartoon Astronaut T-Shirt", "$78")}${student("f2", "Palm Leaf Camp Shirt", "$64", "$80")}${student("f3", "Rosebud Blouse", "$ 55")}${student("f4", "Cropped Cargo", "$118.50")}</div></section><section id="newsletter"><h4>Sign Up For Newsletters</h4><input placeholder="Your email"></section>`,
    kind: "listing",
    products: expected(
      "Cartoon Astronaut T-Shirt | 78 | USD | f1.jpg",
      "Palm Leaf Camp Shirt | 64 | USD | f2.jpg",
      "Rosebud Blouse | 55 | USD | f3.jpg",
      "Cropped Cargo | 118.5 | USD | f4.jpg",
    ),
  },
  {
    name: "RDFa in each tile, crowns",
    lang: "cs",
    body: `<main vocab="https://schema.org/"><h1>Plstěné doplňky</h1><ul>${rdfa("klobouk", "Plstěný klobouk", "1 290 Kč")}${rdfa("brož", "Brož z vlny", "350 Kč")}</ul></main>`,
    kind: "listing",
    products: expected("Plstěný klobouk | 1290 | CZK | klobouk.png", "Brož z vlny | 350 | CZK | /w/bro"),
  },
  {
    name: "name and price in one heading, a button without a link",
    body: `<h1>Our tops</h1><div style="display:flex">${titled("a", "Boxy tee - $25")}${titled("b", "Ribbed vest - $18.50")}${titled("c", "Puff blouse - $42")}</div>`,
    kind: "listing",
    products: expected(
      "Boxy tee | 25 | USD | a.jpg",
      "Ribbed vest | 18.5 | USD | b.jpg",
      "Puff blouse | 42 | USD | c.jpg",
    ),
  },
  {
    name: "a drawer and a just-bought pop-up whose names tell nothing, a mega menu in a custom element",
    head: "<style>.zz9{position:fixed;top:0;right:0;width:340px;transform:translateX(100%)}.zz7{position:fixed;left:12px;bottom:12px}.mm{display:none}.g{display:flex}</style>",
    body: `<top-bar><nav-panel class="mm"><ul><li><a href="/p/menu"><img src="/x/menu.jpg" width="200" height="250"></a><b>Menu parka</b><i>€210</i></li></ul></nav-panel></top-bar><div class="zz9"><h2>Bag</h2><div><img src="/x/bagged.jpg" width="90" height="110"><a href="/p/bagged">Bagged tee</a> <span>€30</span></div></div><div class="g"><div><a href="/p/parka"><img src="/x/parka.jpg" width="260" height="330"></a><p><a href="/p/parka">Storm parka</a></p><p>€310</p></div><div><a href="/p/smock"><img src="/x/smock.jpg" width="260" height="330"></a><p><a href="/p/smock">Dyer's smock</a></p><p>€95</p></div></div><div class="zz7"><img src="/x/parka.jpg" width="64" height="64"><span>Ada in Ghent bought Storm parka for €310</span></div>`,
    kind: "listing",
    products: expected("Storm parka | 310 | EUR | parka.jpg", "Dyer's smock | 95 | EUR | smock.jpg"),
    layout: true,
  },
  {
    name: "a listing with a product's Open Graph, a list of items with prices as text, prices drawn by script only in data",
    head: `<meta property="og:type" content="product"><script type="application/ld+json">{"@type":"ItemList","itemListElement":[{"@type":"ListItem","position":1,"item":{"@type":"Product","name":"Moleskin trousers","url":"/wares/1","offers":{"@type":"Offer","price":"1,045.00","priceCurrency":"NOK"}}},{"@type":"ListItem","position":2,"item":{"@type":"Product","name":"Fulled waistcoat","url":"/wares/2","offers":{"@type":"Offer","price":"895","priceCurrency":"NOK"}}}]}</script>`,
    body: `<main><h1>Wares</h1><div style="display:flex"><a href="/wares/1"><img src="/n/1.jpg" width="280" height="280"><span>Moleskin trousers</span></a><a href="/wares/2"><img src="/n/2.jpg" width="280" height="280"><span>Fulled waistcoat</span></a></div></main>`,
    kind: "listing",
    products: expected("Moleskin trousers | 1045 | NOK | 1.jpg", "Fulled waistcoat | 895 | NOK | 2.jpg"),
  },
  {
    name: "a product page by hand: no heading of the first rank, a table, one picture, dinars",
    lang: "ar-KW",
    body: `<div dir="rtl"><table><tr><td><img src="/k/bisht.jpg" width="400" height="500"></td><td><h2>بشت صوف فاخر</h2><p>السعر: 12.500 د.ك</p><form action="/cart/add"><input type="submit" value="أضف إلى السلة"></form></td></tr></table></div>`,
    kind: "product",
    products: [expectedMain("بشت صوف فاخر | 12.5 | KWD | bisht.jpg")],
  },
  {
    name: "clothes to subscribe to: per month, with the price to buy beside",
    body: `<main><h1>Wear it monthly</h1><div style="display:flex"><div><a href="/wear/trench"><img src="/s/trench.jpg" width="260" height="330"></a><h3>Cotton trench</h3><p>$29/month</p><p>or $290 to keep</p></div><div><a href="/wear/suit"><img src="/s/suit.jpg" width="260" height="330"></a><h3>Hopsack suit</h3><p>$49/month</p><p>or $520 to keep</p></div></div></main>`,
    kind: "listing",
    products: expected("Cotton trench | 290 | USD | trench.jpg", "Hopsack suit | 520 | USD | suit.jpg"),
  },
];
