import type { PageCase } from "./page-case.ts";

const page = (name: string, body: string, more: Partial<PageCase> = {}): PageCase => ({
  name,
  body,
  kind: "none",
  products: [],
  ...more,
});

const head = `<header class="top"><a class="brand" href="/"><img src="/img/logo.svg" alt="Oast House" width="130" height="44"></a><nav><a href="/women">Women</a><a href="/men">Men</a><a href="/sale">Sale</a></nav><a href="/cart"><img src="/img/cart.png" width="24" height="24"> (2) £84.00</a></header>`;
const foot = `<footer><div>Free UK delivery over £60</div><img src="/img/cards.png" width="200" height="30"></footer>`;

/** Pages of shops on which nothing is offered. */
export const PAGES_WITHOUT_PRODUCTS: readonly PageCase[] = [
  page(
    "about us: a story with figures, a team, the press, a gift to charity",
    `${head}<main><h1>About Oast House</h1><div class="story"><img src="/img/mill.jpg" width="800" height="500"><p>In 1998 we bought a loom for £300 and never looked back.</p></div><div class="grid"><div class="card"><img src="/img/joan.jpg" width="240" height="240"><h3>Joan Atherley</h3><p>Founder</p></div><div class="card"><img src="/img/piet.jpg" width="240" height="240"><h3>Piet Marrow</h3><p>Weaver</p></div></div><div class="grid"><div class="card"><img src="/img/trees.jpg" width="240" height="240"><h3>£1 for every order</h3><p>goes to hedgerow planting</p></div><div class="card"><img src="/img/bees.jpg" width="240" height="240"><h3>£12,400</h3><p>given since 2019</p></div></div></main>${foot}`,
  ),
  page(
    "a journal entry with prices in the text, its writer, further entries",
    `${head}<article class="post"><h1>Five coats under £200 that outlast fashion</h1><p class="by"><img src="/img/av.jpg" width="60" height="60"> Words by Ola Brandt</p><figure><img src="/img/coats.jpg" width="900" height="600"><figcaption>Left to right, £120 to £195</figcaption></figure><p>The first costs £120 and is worth every penny of it.</p><p>Our favourite, at £195, has horn buttons.</p></article><section><h2>Read next</h2><div class="posts"><a class="post-card" href="/journal/darning"><img src="/img/darn.jpg" width="300" height="200"><h3>Darning for beginners</h3><time>4 May</time></a><a class="post-card" href="/journal/moths"><img src="/img/moth.jpg" width="300" height="200"><h3>Moths: a £5 remedy</h3><time>28 April</time></a></div></section>${foot}`,
  ),
  page(
    "delivery and returns: a table of prices, icons, a map",
    `${head}<main><h1>Delivery &amp; returns</h1><div class="icons"><div><img src="/img/van.png" width="64" height="64"><h4>Standard</h4><p>£3.95</p></div><div><img src="/img/bolt.png" width="64" height="64"><h4>Next day</h4><p>£6.95</p></div><div><img src="/img/globe.png" width="64" height="64"><h4>Worldwide</h4><p>from £12.00</p></div></div><table><tr><td>Europe</td><td>£9.00</td></tr><tr><td>Elsewhere</td><td>£14.00</td></tr></table><img src="/img/map.jpg" width="700" height="300"></main>${foot}`,
    { layout: true },
  ),
  page(
    "a landing page of categories with the classes of products and lowest prices",
    `${head}<main><h1>Women</h1><div class="product-grid">${["dresses", "coats", "knitwear", "skirts"].map((slug, i) => `<div class="product-card"><a href="/women/${slug}"><img src="/img/cat-${slug}.jpg" width="300" height="380" alt=""></a><div class="product-card__body"><a class="product-card__title" href="/women/${slug}">Shop ${slug}</a><p>from £${29 + 10 * i}</p></div></div>`).join("")}</div></main>${foot}`,
  ),
  page(
    "a page of gifts to a cause, amounts on buttons and beside pictures",
    `${head}<main><h1>Support the mill</h1><div class="tiers"><div class="tier"><img src="/img/thread.jpg" width="280" height="200"><h3>Thread</h3><p class="amount">£10</p><p>Your name in the book.</p><a href="/give/10">Give</a></div><div class="tier"><img src="/img/cloth.jpg" width="280" height="200"><h3>Cloth</h3><p class="amount">£50</p><p>A day at the loom.</p><a href="/give/50">Give</a></div></div><p>Every donation is matched.</p></main>${foot}`,
  ),
  page(
    "an empty basket with what one might like put away in a hidden drawer",
    `${head}<main><h1>Your basket is empty</h1><p>Spend £60 for free delivery.</p><a href="/women"><img src="/img/women-banner.jpg" width="900" height="300"></a></main><div class="drawer-cart" aria-hidden="true" style="position:fixed;right:-420px;top:0;width:400px"><div class="line"><img src="/img/belt.jpg" width="90" height="110"><a href="/p/belt">Harness belt</a><span>£45.00</span></div></div>${foot}`,
  ),
  page(
    "a lookbook: large pictures, captions, no price",
    `${head}<main><h1>Autumn, by the river</h1><div class="look"><figure><img src="/img/l1.jpg" width="600" height="800"><figcaption>Look 1. Wool, water, light.</figcaption></figure><figure><img src="/img/l2.jpg" width="600" height="800"><figcaption>Look 2. Reed and rust.</figcaption></figure></div></main>${foot}`,
  ),
  page(
    "gift vouchers explained: amounts as choices, one picture",
    `${head}<main><h1>About our gift service</h1><img src="/img/wrap.jpg" width="500" height="400"><p>We wrap for free on orders over £40, else £3.50 a piece.</p><label><input type="radio"> £3.50</label></main>${foot}`,
  ),
  page(
    "find a store: photos, addresses, opening hours",
    `${head}<main><h1>Our shops</h1><div class="grid"><div class="card"><a href="/shops/york"><img src="/img/york.jpg" width="300" height="200"><h3>York</h3></a><p>12 Stonegate, open 9.30 to 17.30</p></div><div class="card"><a href="/shops/bath"><img src="/img/bath.jpg" width="300" height="200"><h3>Bath</h3></a><p>4 Milsom Street, alterations from £12</p></div></div></main>${foot}`,
  ),
  page(
    "workshops with dates and fees",
    `${head}<main><h1>Workshops</h1><article class="event"><a href="/events/darning"><img src="/img/ws1.jpg" width="300" height="200"></a><h3>Visible mending</h3><time>12 March, 18:00</time><p>£35 per person</p><a href="/events/darning">Book a place</a></article><article class="event"><a href="/events/dye"><img src="/img/ws2.jpg" width="300" height="200"></a><h3>Indigo dyeing</h3><time>19 March, 18:00</time><p>£60 per person</p><a href="/events/dye">Book a place</a></article></main>${foot}`,
  ),
  page(
    "pricing cards of a service under a bar whose menu holds portraits",
    `<div><div class="bar"><a href="https://code.localhost/us">Source code</a><div class="dropdown"><a class="nav-link">Bell</a><div class="dropdown-menu" style="display:none"><a href="#"><span style="display:block;width:60px;height:60px;background-image:url(/img/joan.jpg)"></span><strong>Joan</strong> pushed a change</a></div></div></div><h1>Pricing cards</h1><div class="grid"><div class="card"><div>Premium</div><div>$49</div><ul><li>Ten users</li></ul><a class="btn" href="#">Choose plan</a></div></div></div>`,
    { layout: true },
  ),
  page(
    "a check-out in one script for all pages, its lines in small pictures",
    `<main><h1>Оформление заказа</h1><table>${["Платье", "Сумка"].map((name, i) => `<tr><td><a href="/index.php?route=product/product&product_id=${i + 4}"><img src="/i/o-${i}.jpg" width="60" height="70"></a></td><td><a href="/index.php?route=product/product&product_id=${i + 4}">${name} синее</a></td><td>${i + 1}290 грн.</td></tr>`).join("")}</table><button>Подтвердить</button></main>`,
    { lang: "ru", url: "http://shop.localhost/index.php?route=checkout/checkout", layout: true },
  ),
  page(
    "a basket that one script for all pages shows, with its way to order",
    `<main><img src="/i/butler.jpg" width="300" height="300"><table><tr><td>Tasche Erle</td><td>17,80 €</td></tr></table><h3>Lieferadresse</h3><p>Ahornweg 12</p><button class="bestellen"> Bestellen </button></main>`,
    { lang: "de", url: "http://shop.localhost/index.php?site=warenkorb", layout: true },
  ),
  page(
    "the next of a journal's entries, a sentence of which names prices",
    `<main><article><h1>秋のストール</h1><p>去年みつけたストールを巻いています。</p></article><nav><a href="/2023/09/20/market/"><img src="/i/market.jpg" width="400" height="200"><div>次へ</div><div>朝市で買ったもの</div><div>かぼちゃ 200円、無花果 500円。</div></a></nav></main>`,
    { lang: "ja", layout: true },
  ),
  page(
    "a landing page with a picture far from its link to a product",
    `<div class="wrapper"><div><h1>The time is now</h1><a href="/product/design-system">Details of it</a></div><div><img src="/i/ill.png" width="500" height="400"></div>${"<div><h5>For makers</h5><p>There is nothing I really wanted to do in life that I was not able to get good at, and that is my skill.</p><a href='#'>Learn more</a></div>".repeat(12)}</div>`,
    { layout: true },
  ),
  page(
    "an order that was placed, told in a plain line",
    `<div class="card"><span>order #5469</span><div>Thank you for your order!</div><p><b>Payment summary</b></p>${["White", "Grey"].map((shade, i) => `<div class="row"><img src="/i/order-${i}.jpg" width="160" height="160"><p><b>Rowan lamp</b></p><p>${shade}</p><p><b>$${99 + i}</b></p></div>`).join("")}<a href="/track">Track your order</a></div>`,
    { url: "http://shop.localhost/orderdetail?id=5469", layout: true },
  ),
  page(
    "a basket shown in full, its lines without a way to remove them",
    `<main><h2>Chosen by you</h2>${["Bag", "Scarf"].map((name, i) => `<div class="cart-line"><a href="/wares/${i}"><img src="/i/line-${i}.jpg" width="120" height="120"></a><h3>${name} Rowan</h3><input type="number" value="1"><b>€${40 + i}.00</b></div>`).join("")}</main>`,
    { url: "http://shop.localhost/cart?view=full", layout: true },
  ),
];
