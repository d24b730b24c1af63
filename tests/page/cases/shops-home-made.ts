import { expected, expectedMain, type PageCase } from "./page-case.ts";

const hashed = (at: number, name: string, whole: string, cents: string): string =>
  `<div class="css-k1p8v0"><div class="css-0"><div class="css-9ztw2a" style="background-image:url(&quot;/_img/${at}.jpg&quot;);background-size:cover;height:320px" role="img" aria-label="${name}"></div><button class="css-u3q" aria-label="Save for later"><img src="/_img/heart.png" alt="" width="18" height="18"></button></div><a class="css-1dx" href="/s/${at}"><div class="css-7aa"><div class="css-b1">${name}</div><div class="css-b2"><span>$</span><span>${whole}</span><sup>${cents}</sup></div></div></a></div>`;

const shadow = (slug: string, name: string, price: string): string =>
  `<loom-tile><template shadowrootmode="open"><style>.f{width:220px}img{width:220px;height:280px}</style><a class="f" href="/goods/${slug}"><img src="/g/${slug}.jpg" alt=""><span part="n">${name}</span><span part="c">${price}</span></a></template></loom-tile>`;

const virtual = (at: number, name: string, price: string): string =>
  `<li class="_2fQx" style="position:absolute;transform:translate3d(${(at % 3) * 300}px,${Math.floor(at / 3) * 480}px,0);width:280px"><article class="_k9Ab"><a class="_lnk" href="/en/pd/${at}-${name.toLowerCase().replaceAll(" ", "-")}.html" tabindex="-1" aria-hidden="true"><img class="_im" src="/cdn/${at}/main.jpg?w=280" srcset="/cdn/${at}/main.jpg?w=280 280w,/cdn/${at}/main.jpg?w=560 560w" alt="" width="280" height="373"></a><div class="_bd"><h3 class="_nm"><a href="/en/pd/${at}-${name.toLowerCase().replaceAll(" ", "-")}.html">${name}</a></h3><p class="_pr">${price}</p><ul class="_sz"><li><button>XS</button></li><li><button>S</button></li><li><button>M</button></li></ul></div></article></li>`;

const php = (id: number, name: string, price: string): string =>
  `<div class="item" style="float:left;width:200px;text-align:center"><a href="product.php?id=${id}"><img src="images/products/${id}.jpg" width="170" height="200" border="0"></a><br><a href="product.php?id=${id}"><font size="2">${name}</font></a><br><font color="red"><b>Price: ${price}</b></font><br><a href="cart.php?add=${id}"><img src="images/buy.gif" width="60" height="20"></a></div>`;

const slide = (slug: string, name: string, price: string, clone = ""): string =>
  `<div class="owl-item${clone}" style="width:220px;float:left"><div class="product-block"><div class="block-image"><a href="detail.html?p=${slug}"><img src="/assets/${slug}.jpg" alt="${name}" width="220" height="260"></a><div class="hover"><ul><li><i class="fa fa-heart"></i></li><li><i class="fa fa-retweet"></i></li></ul></div></div><div class="block-text"><span>Dresses</span><h6>${name}</h6><h5>${price}</h5></div></div></div>`;

/** Shops that somebody built alone: with a framework, with custom elements, by hand, long ago. */
export const SHOPS_HOME_MADE: readonly PageCase[] = [
  {
    name: "hashed class names, pictures as backgrounds, prices in pieces, and data that claims one product",
    head: `<style>.css-grid{display:grid;grid-template-columns:repeat(3,300px)}</style><script type="application/ld+json">{"@context":"https://schema.org","@type":"Product","name":"Moor & Mire","offers":{"@type":"AggregateOffer","lowPrice":"24","highPrice":"260","priceCurrency":"USD"}}</script>`,
    body: `<div id="__root"><div class="css-head"><a href="/"><svg width="90" height="20"></svg></a></div><h1 class="css-h">Moor &amp; Mire</h1><div class="css-grid">${hashed(71, "Peat wax jacket", "260", "00")}${hashed(72, "Sedge rollneck", "118", "50")}${hashed(73, "Bog oak belt", "24", "00")}</div></div>`,
    kind: "listing",
    products: expected(
      "Peat wax jacket | 260 | USD | 71.jpg",
      "Sedge rollneck | 118.5 | USD | 72.jpg",
      "Bog oak belt | 24 | USD | 73.jpg",
    ),
  },
  {
    name: "tiles inside open shadow roots",
    body: `<main><h1>Goods</h1><div style="display:flex">${shadow("apron", "Waxed apron", "£64")}${shadow("smock", "Fisher smock", "£88")}</div></main>`,
    kind: "listing",
    products: expected("Waxed apron | 64 | GBP | apron.jpg", "Fisher smock | 88 | GBP | smock.jpg"),
    layout: true,
  },
  {
    name: "a virtual list: tiles placed by transforms, two links each, sizes as buttons, before and now run together",
    body: `<div class="_app"><div class="_fl"><span>Price</span><span>£10 – £200</span></div><ul class="_vl" style="position:relative;height:960px">${virtual(0, "Carded jumper", "<span>Was £90.00</span><span>Now £60.00</span>")}${virtual(1, "Felted clogs", "£75.00")}${virtual(2, "Twill overalls", "<del>£120.00</del><strong>£84.00</strong>")}${virtual(3, "Knee socks", "£12.00")}</ul></div>`,
    kind: "listing",
    products: expected(
      "Carded jumper | 60 | GBP | 0/main.jpg",
      "Felted clogs | 75 | GBP | 1/main.jpg",
      "Twill overalls | 84 | GBP | 2/main.jpg",
      "Knee socks | 12 | GBP | 3/main.jpg",
    ),
  },
  {
    name: "a shop of 2006: floats, font tags, a basket picture in each tile, best sellers repeated at the side",
    body: `<table width="960"><tr><td width="160" valign="top"><b>Best sellers</b><br><a href="product.php?id=8"><img src="images/products/8_s.jpg" width="60" height="70"></a><br>Velvet cape<br>US$ 89.50<hr><a href="page.php?p=about">About us</a></td><td valign="top"><h2>Capes and cloaks</h2>${php(7, "Hooded wool cloak", "US$ 124.90")}${php(8, "Velvet cape", "US$ 89.50")}${php(9, "Rain poncho", "US$ 24.90")}<br clear="all">Page 1 2 3</td></tr></table>`,
    kind: "listing",
    products: expected(
      "Hooded wool cloak | 124.9 | USD | 7.jpg",
      "Velvet cape | 89.5 | USD | 8.jpg",
      "Rain poncho | 24.9 | USD | 9.jpg",
    ),
    layout: true,
  },
  {
    name: "a template's home page: hero slides, category tiles with lowest prices, a carousel with clones, voices, a picture feed, a pop-up",
    head: `<style>.owl-stage{width:3000px}.owl-stage-outer{overflow:hidden;width:900px}.pop{position:fixed;bottom:10px;left:10px}</style><script type="application/ld+json">{"@context":"https://schema.org","@graph":[{"@type":"WebSite","name":"Ashlar"},{"@type":"Product","name":"Tiered maxi dress","offers":{"price":"59.00","priceCurrency":"USD"}}]}</script>`,
    body: `<div id="preloader"><img src="/assets/spin.gif"></div><section class="hero"><div class="slide" style="background-image:url(/assets/hero1.jpg);height:400px"><span>Autumn</span><h1>New season, old soul</h1><p>Up to 40% off, from only $19</p><a href="shop.html" class="btn">Shop now</a></div></section>
    <section class="cats"><div class="cat"><img src="/assets/c1.jpg" width="360" height="240"><h3>Dresses</h3><p>From $29</p><a href="shop.html?c=1">Discover</a></div><div class="cat"><img src="/assets/c2.jpg" width="360" height="240"><h3>Knitwear</h3><p>From $39</p><a href="shop.html?c=2">Discover</a></div></section>
    <section><h2>Trending</h2><div class="owl-carousel"><div class="owl-stage-outer"><div class="owl-stage">${slide("wrap", "Wrap midi dress", "$72.00", " cloned")}${slide("tier", "Tiered maxi dress", "$59.00 <span>$85.00</span>")}${slide("slip", "Satin slip dress", "$64.00")}${slide("wrap", "Wrap midi dress", "$72.00")}${slide("tier", "Tiered maxi dress", "$59.00 <span>$85.00</span>", " cloned")}</div></div></div></section>
    <section class="voices"><div><img src="/assets/p1.jpg" width="80" height="80"><p>Best $64 I ever spent on a dress.</p><b>Maren O.</b></div></section><section class="feed"><a href="#"><img src="/assets/f1.jpg" width="200" height="200"></a><a href="#"><img src="/assets/f2.jpg" width="200" height="200"></a></section>
    <div class="pop recent-sale"><img src="/assets/slip.jpg" width="70" height="70"><p>Someone in Leeds bought <a href="detail.html?p=slip">Satin slip dress</a></p><small>$64.00 – 4 minutes ago</small></div><footer><form><h4>Join and get $10 off</h4><input></form></footer>`,
    kind: "listing",
    products: expected(
      "Tiered maxi dress | 59 | USD | tier.jpg",
      "Satin slip dress | 64 | USD | slip.jpg",
      "Wrap midi dress | 72 | USD | wrap.jpg",
    ),
  },
  {
    name: "a product page by a framework: hashed classes, swatches as radio buttons, a look completed below",
    head: `<style>.w{display:flex}.g{width:600px}.g img{width:600px;height:750px}.more{display:flex}</style>`,
    body: `<div id="app"><div class="x1"><a href="/">Saltmarsh</a></div><div class="w"><div class="g"><img src="/m/gilet-1.jpg" alt="Quilted gilet front"><img src="/m/gilet-2.jpg" alt=""></div><div class="d"><div class="d1"><h1>Quilted gilet</h1></div><div class="d2"><span>€ 165,00</span></div><div class="d3">Incl. VAT. Free delivery from € 100</div><div role="radiogroup" aria-label="Colour"><button role="radio" aria-checked="true" aria-label="Samphire"></button><button role="radio" aria-checked="false" aria-label="Slate"></button></div><div class="d4"><button>Add to bag</button><button>♡</button></div></div></div>
    <h2>Complete the look</h2><div class="more"><div><a href="/p/cap"><img src="/m/cap.jpg" width="250" height="300"></a><div><a href="/p/cap">Waxed cap</a></div><div>€ 45,00</div></div><div><a href="/p/cord"><img src="/m/cord.jpg" width="250" height="300"></a><div><a href="/p/cord">Needlecord trousers</a></div><div>€ 120,00</div></div></div></div>`,
    kind: "product",
    products: [
      expectedMain("Quilted gilet | 165 | EUR | gilet-1.jpg"),
      ...expected("Waxed cap | 45 | EUR | cap.jpg", "Needlecord trousers | 120 | EUR | cord.jpg"),
    ],
  },
  {
    name: "a template's product page: the price in the h1, the name in a div, thumbnails, related products",
    head: `<style>.row{display:flex}.thumbs img{width:80px;height:100px}.big img{width:480px;height:600px}.rel{display:flex}</style><meta property="og:type" content="product"><meta property="og:title" content="Corduroy pinafore">`,
    body: `<div class="nav-top"><ul><li><a href="/">Home</a></li><li><a href="/shop">Shop</a></li></ul></div><div class="row"><div class="thumbs"><img src="/t/pin-1.jpg"><img src="/t/pin-2.jpg"></div><div class="big"><img src="/t/pin-1-large.jpg"></div><div class="info"><div class="product-name">Corduroy pinafore</div><div class="rating">★★★★☆ (18)</div><h1>$88.00</h1><p>Soft eight-wale cord with deep pockets.</p><label>Size <select><option>S</option><option>M</option></select></label><input type="number" value="1"><button class="btn add">Add To Cart</button></div></div><h2>Related products</h2><div class="rel"><div class="single-product"><img src="/t/tights.jpg" width="240" height="300"><h3>Ribbed tights</h3><p>$18.00</p></div><div class="single-product"><img src="/t/turtle.jpg" width="240" height="300"><h3>Turtleneck tee</h3><p>$32.00</p></div></div>`,
    kind: "product",
    products: [
      expectedMain("Corduroy pinafore | 88 | USD | pin-1-large.jpg"),
      ...expected("Ribbed tights | 18 | USD | tights.jpg", "Turtleneck tee | 32 | USD | turtle.jpg"),
    ],
    layout: true,
  },
];
