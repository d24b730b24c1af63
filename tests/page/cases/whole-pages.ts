import { expected, expectedMain, type PageCase } from "./page-case.ts";

const header = `<div class="section-header"><header class="site-header"><a href="/"><img src="/i/logo.png" alt="Tallow &amp; Finch" width="180" height="60"></a><nav><ul><li><a href="/collections/new">New</a></li><li><a href="/collections/sale">Sale from €19</a></li></ul></nav><details><summary>Search</summary><form><input name="q"></form></details></header></div>
<side-cart class="drawer" style="position:fixed;top:0;right:-400px;width:380px;height:100%"><div class="drawer__inner"><h2>Your cart</h2><div class="cart-item"><img src="/i/in-cart.jpg" width="96" height="120"><a href="/products/in-cart">Felted mittens</a><span>€25,00</span></div><p>Free shipping over €75</p></div></side-cart>`;

const footer = `<footer><img src="/i/pay-a.svg" width="38" height="24"><img src="/i/pay-b.svg" width="38" height="24"><p>© 2025 Tallow &amp; Finch</p></footer>`;

const themeCard = (slug: string, title: string, price: string): string =>
  `<li class="grid__item"><div class="card-wrapper product-card-wrapper"><div class="card card--standard"><div class="card__inner"><div class="card__media"><div class="media media--hover"><img srcset="/i/${slug}.jpg?width=165 165w,/i/${slug}.jpg?width=360 360w,/i/${slug}.jpg?width=940 940w" src="/i/${slug}.jpg?width=533" sizes="25vw" alt="${title} on a hanger" loading="lazy" width="400" height="500"><img src="/i/${slug}-back.jpg?width=533" style="opacity:0" alt="" loading="lazy" width="400" height="500"></div></div><div class="card__content" style="display:none"><h3 class="card__heading"><a href="/products/${slug}">${title}</a></h3></div></div><div class="card__content"><div class="card__information"><h3 class="card__heading h5"><a href="/products/${slug}" class="full-unstyled-link">${title}</a></h3><span class="visually-hidden">Vendor:</span><div class="caption-with-letter-spacing">Tallow &amp; Finch</div>${price}</div><div class="card__badge"><span class="badge">Sale</span></div></div></div></div></li>`;
const onSale = `<div class="price price--on-sale"><div class="price__regular" style="display:none"><span class="visually-hidden">Regular price</span><span class="price-item">€89,00 EUR</span></div><div class="price__sale"><span class="visually-hidden">Regular price</span><span><s class="price-item">€89,00 EUR</s></span><span class="visually-hidden">Sale price</span><span class="price-item price-item--sale">€59,00 EUR</span></div><small class="unit-price hidden"><span>Unit price</span><span>/</span><span>per</span></small></div>`;
const plain = (price: string): string =>
  `<div class="price"><div class="price__regular"><span class="visually-hidden">Regular price</span><span class="price-item">${price} EUR</span></div></div>`;

const themeGrid = `<ul class="grid product-grid">${themeCard("camp-shirt", "Linen camp shirt", onSale)}${themeCard("tea-dress", "Ditsy tea dress", plain("€120,00"))}${themeCard("wool-beret", "Wool beret", plain("From €30,00"))}</ul>`;
const themeProducts = expected(
  "Linen camp shirt | 59 | EUR | camp-shirt.jpg",
  "Ditsy tea dress | 120 | EUR | tea-dress.jpg",
  "Wool beret | 30 | EUR | wool-beret.jpg",
);

const pluginTile = (id: number, slug: string, title: string, price: string): string =>
  `<li class="product type-product post-${id} status-publish instock product_cat-shirts has-post-thumbnail"><a href="/product/${slug}/" class="loop-link"><span class="onsale">Angebot!</span><img width="300" height="300" src="/uploads/${slug}-300x300.jpg" class="attachment-thumbnail" alt="" srcset="/uploads/${slug}-300x300.jpg 300w, /uploads/${slug}-150x150.jpg 150w"><h2 class="loop-product__title">${title}</h2><div class="star-rating"><span>Bewertet mit <strong>4.67</strong> von 5</span></div><span class="price">${price}</span></a><a href="?add-to-cart=${id}" class="button add_to_cart_button">In den Warenkorb</a></li>`;
const split = (amount: string): string =>
  `<span class="amount"><bdi>${amount}&nbsp;<span>&euro;</span></bdi></span>`;

/** Whole pages, with all that stands around the products. */
export const WHOLE_PAGES: readonly PageCase[] = [
  {
    name: "a hosted shop's collection: headings twice, prices regular and on sale, a cart drawer, a menu",
    body: `${header}<main><section><h1>New in</h1><p>Light things for long days.</p></section><div class="facets"><details><summary>Price</summary><span>The highest price is €120,00</span><label>€ <input></label></details></div>${themeGrid}<section class="collage"><a href="/collections/linen"><img src="/i/linen.jpg" width="600" height="400"><h2>All linen</h2></a></section></main>${footer}`,
    kind: "listing",
    products: themeProducts,
  },
  {
    name: "a hosted shop's product page: gallery with thumbnails, variants, a sticky bar, recommendations",
    head: `<script type="application/ld+json">{"@context":"http://schema.org/","@type":"Product","name":"Moss cord overshirt","url":"http://shop.localhost/products/overshirt","image":["/i/overshirt-1.jpg"],"offers":[{"@type":"Offer","price":140.0,"priceCurrency":"EUR","url":"/products/overshirt?variant=1"}]}</script>`,
    body: `${header}<main><section class="product"><div class="product__media-wrapper"><ul class="product__media-list"><li><img src="/i/overshirt-1.jpg" width="600" height="750"></li><li><img src="/i/overshirt-2.jpg" width="600" height="750"></li></ul><ul class="thumbnail-list"><li><button><img src="/i/overshirt-1.jpg?width=80" width="80" height="100"></button></li><li><button><img src="/i/overshirt-2.jpg?width=80" width="80" height="100"></button></li></ul></div><div class="product__info-wrapper"><p>Tallow &amp; Finch</p><div class="product__title"><h1>Moss cord overshirt</h1></div>${plain("€140,00")}<fieldset class="color-picker"><label><input type="radio" name="Color" value="Moss" checked>Moss</label><label><input type="radio" name="Color" value="Rust">Rust</label></fieldset><form action="/cart/add"><button name="add">Add to cart</button></form><p>Pay in 3 instalments of €46,67</p><img src="/i/care.png" width="24" height="24"></div></section>
      <div class="sticky-bar" style="position:fixed;bottom:0;left:0"><img src="/i/overshirt-1.jpg?width=60" width="60" height="75"><b>Moss cord overshirt</b><span>€140,00</span><button>Add to cart</button></div>
      <section><h2>Goes with</h2>${themeGrid}</section><section><h2>Reviews</h2><div><img src="/i/review-1.jpg" width="200" height="200"><b>Ines</b><p>Wears in well.</p></div></section></main>${footer}`,
    kind: "product",
    products: [expectedMain("Moss cord overshirt | 140 | EUR | overshirt-1.jpg"), ...themeProducts],
  },
  {
    name: "a plugin's archive in German: prices split around the sign, ratings, buttons outside the link",
    lang: "de",
    body: `${header}<main><h1>Hemden</h1><form><select><option>Preis: 0 € bis 50 €</option></select></form><ul class="products columns-3">${pluginTile(1, "leinenhemd", "Leinenhemd mit Stehkragen", `<del>${split("79,90")}</del> <ins>${split("59,90")}</ins>`)}${pluginTile(2, "cordhemd", "Cordhemd", `${split("45,00")} – ${split("65,00")}`)}</ul></main><aside><h2>Beliebt</h2><ul><li><a href="/product/leinenhemd/"><img src="/uploads/leinenhemd-100x100.jpg" width="60" height="60"><span>Leinenhemd mit Stehkragen</span></a>${split("59,90")}</li></ul></aside>${footer}`,
    kind: "listing",
    products: expected(
      "Leinenhemd mit Stehkragen | 59.9 | EUR | leinenhemd-300x300.jpg",
      "Cordhemd | 45 | EUR | cordhemd-300x300.jpg",
    ),
  },
  {
    name: "a hand-written shop: cards of a common style sheet, dollars in Canada, a blog strip and a newsletter",
    lang: "en-CA",
    body: `<div class="container"><h1>Tallow &amp; Finch</h1><div class="row"><div class="col-md-4"><div class="card"><img class="card-img-top" src="/img/boots.jpg" alt="boots" height="260"><div class="card-body"><h5 class="card-title">Oiled field boots</h5><p class="card-text">Resoled as often as you like.</p><p>$189</p><a href="boots.html" class="btn btn-primary">See more</a></div></div></div><div class="col-md-4"><div class="card"><img class="card-img-top" src="/img/tote.jpg" alt="tote" height="260"><div class="card-body"><h5 class="card-title">Sailcloth tote</h5><p class="card-text">Holds a weekend.</p><p>$65</p><a href="tote.html" class="btn btn-primary">See more</a></div></div></div></div>
      <div class="row"><div class="col-md-4"><div class="card"><img class="card-img-top" src="/img/post.jpg" height="260"><div class="card-body"><h5 class="card-title">Caring for oiled leather</h5><p class="card-text">A brush and ten minutes.</p><a href="post.html" class="btn">Read</a></div></div></div></div><form><h4>Letters</h4><p>Get $10 off your first order</p><input type="email"></form></div>`,
    kind: "listing",
    products: expected("Oiled field boots | 189 | CAD | boots.jpg", "Sailcloth tote | 65 | CAD | tote.jpg"),
  },
  {
    name: "a builder's home page: hero, category tiles, a carousel of products, testimonials, logos of the press",
    lang: "sv",
    body: `<header><nav><a href="/">Hem</a></nav></header><main><section style="background-image:url('/i/hero.jpg')"><h1>Höstens ull</h1><a href="/kollektion">Se allt</a></section><section><div><a href="/kategori/trojor/"><img src="/i/k1.jpg" width="300" height="300"><p>Tröjor</p></a></div><div><a href="/kategori/kappor/"><img src="/i/k2.jpg" width="300" height="300"><p>Kappor</p></a></div></section>
      <section><div class="swiper"><div class="swiper-slide swiper-slide-duplicate" aria-hidden="true"><a href="/p/kofta"><img src="/i/kofta.jpg" width="280" height="350"></a><p>Stickad kofta</p><p>1 299,00 kr</p></div><div class="swiper-slide"><a href="/p/troja"><img src="/i/troja.jpg" width="280" height="350"></a><p>Lammullströja</p><p>899 kr</p></div><div class="swiper-slide"><a href="/p/kofta"><img src="/i/kofta.jpg" width="280" height="350"></a><p>Stickad kofta</p><p>1 299,00 kr</p></div></div></section>
      <section><div><img src="/i/anna.jpg" width="90" height="90"><p>”Så mjuk!”</p><b>Alva</b></div></section><section><img src="/i/press1.png" width="160" height="60"><img src="/i/press2.png" width="160" height="60"></section></main><footer><p>Fri frakt över 500 kr</p></footer>`,
    kind: "listing",
    products: expected("Lammullströja | 899 | SEK | troja.jpg", "Stickad kofta | 1299 | SEK | kofta.jpg"),
  },
];
