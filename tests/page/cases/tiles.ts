import { expected, type PageCase } from "./page-case.ts";

const two = expected("Linen camp shirt | 49 | EUR | camp.jpg", "Pleated midi skirt | 69.5 | EUR | skirt.jpg");

const listing = (name: string, body: string, more: Partial<PageCase> = {}): PageCase => ({
  name,
  body,
  kind: "listing",
  products: two,
  ...more,
});

/** The shapes a tile comes in. */
export const TILE_CASES: readonly PageCase[] = [
  listing(
    "tiles as list items with headings",
    `<h1>New in</h1><ul>
      <li><a href="/p/camp"><img src="/i/camp.jpg" alt=""></a><h3><a href="/p/camp">Linen camp shirt</a></h3><span>€49.00</span></li>
      <li><a href="/p/skirt"><img src="/i/skirt.jpg" alt=""></a><h3><a href="/p/skirt">Pleated midi skirt</a></h3><span>€69.50</span></li></ul>`,
  ),
  listing(
    "tiles as articles with everything in one link",
    `<section><article><a href="/p/camp"><img src="/i/camp.jpg"><p>Linen camp shirt</p><p>49,00 €</p></a></article>
      <article><a href="/p/skirt"><img src="/i/skirt.jpg"><p>Pleated midi skirt</p><p>69,50 €</p></a></article></section>`,
  ),
  listing(
    "tiles as custom elements",
    `<shop-grid><shop-tile><a href="/p/camp"><img src="/i/camp.jpg"></a><tile-name>Linen camp shirt</tile-name><tile-cost>€49</tile-cost></shop-tile>
      <shop-tile><a href="/p/skirt"><img src="/i/skirt.jpg"></a><tile-name>Pleated midi skirt</tile-name><tile-cost>€69.50</tile-cost></shop-tile></shop-grid>`,
  ),
  listing(
    "tiles as table cells",
    `<table><tr><td><img src="/i/camp.jpg" width="160"><br><b>Linen camp shirt</b><br>49 EUR</td><td><img src="/i/skirt.jpg" width="160"><br><b>Pleated midi skirt</b><br>69.50 EUR</td></tr></table>`,
  ),
  listing(
    "bare grid columns without a telling class",
    `<div><div><div><div><img src="/i/camp.jpg"></div><div>Linen camp shirt</div><div>€ 49,-</div></div></div><div><div><div><img src="/i/skirt.jpg"></div><div>Pleated midi skirt</div><div>€ 69,50</div></div></div></div>`,
  ),
  listing(
    "tiles that all have the same link",
    `<div><div><a href="#"><img src="/i/camp.jpg"></a><h4>Linen camp shirt</h4><i>€49</i><a href="/contact">Order</a></div><div><a href="#"><img src="/i/skirt.jpg"></a><h4>Pleated midi skirt</h4><i>€69.50</i><a href="/contact">Order</a></div></div>`,
  ),
  listing(
    "tiles that link to the picture file",
    `<div><figure><a href="/i/camp.jpg"><img src="/i/camp.jpg"></a><figcaption>Linen camp shirt <b>€49</b></figcaption></figure><figure><a href="/i/skirt.jpg"><img src="/i/skirt.jpg"></a><figcaption>Pleated midi skirt <b>€69.50</b></figcaption></figure></div>`,
  ),
  listing(
    "a front and a back picture",
    `<div><div class="card"><a href="/p/camp"><img src="/i/camp.jpg"><img src="/i/camp-back.jpg" style="opacity:0"></a><a href="/p/camp">Linen camp shirt</a><p>€49</p></div><div class="card"><a href="/p/skirt"><img src="/i/skirt-back.jpg" style="opacity:0"><img src="/i/skirt.jpg"></a><a href="/p/skirt">Pleated midi skirt</a><p>€69.50</p></div></div>`,
  ),
  listing(
    "a whole second copy hidden for small screens",
    `<div><div><div style="display:none"><a href="/p/camp"><img src="/i/camp-small.jpg"></a><h3>Linen camp shirt</h3><span>€49</span></div><div><a href="/p/camp"><img src="/i/camp.jpg"></a><h3>Linen camp shirt</h3><span>€49</span></div></div>
      <div><div style="display:none"><a href="/p/skirt"><img src="/i/skirt-small.jpg"></a><h3>Pleated midi skirt</h3><span>€69.50</span></div><div><a href="/p/skirt"><img src="/i/skirt.jpg"></a><h3>Pleated midi skirt</h3><span>€69.50</span></div></div></div>`,
  ),
  listing(
    "hearts as the only img beside a background picture",
    `<div><div class="card"><a href="/p/camp" style="display:block;width:200px;height:260px;background-image:url('/i/camp.jpg')"></a><button><img src="/i/heart.png" width="20" height="20" alt="save"></button><h3>Linen camp shirt</h3><p>€49</p></div>
      <div class="card"><a href="/p/skirt" style="display:block;width:200px;height:260px;background-image:url('/i/skirt.jpg')"></a><button><img src="/i/heart.png" width="20" height="20" alt="save"></button><h3>Pleated midi skirt</h3><p>€69.50</p></div></div>`,
  ),
  listing(
    "background pictures that only a style sheet knows",
    `<div><div class="card"><a class="ph a" href="/p/camp"></a><h3>Linen camp shirt</h3><p>€49</p></div><div class="card"><a class="ph b" href="/p/skirt"></a><h3>Pleated midi skirt</h3><p>€69.50</p></div></div>`,
    {
      layout: true,
      head: "<style>.ph{display:block;width:200px;height:260px}.a{background:url(/i/camp.jpg)}.b{background:url(/i/skirt.jpg)}</style>",
    },
  ),
  listing(
    "a carousel with cloned slides",
    `<div class="track"><div class="slide clone" aria-hidden="true"><a href="/p/skirt"><img src="/i/skirt.jpg"></a><h3>Pleated midi skirt</h3><span>€69.50</span></div>
      <div class="slide"><a href="/p/camp"><img src="/i/camp.jpg"></a><h3>Linen camp shirt</h3><span>€49</span></div><div class="slide"><a href="/p/skirt"><img src="/i/skirt.jpg"></a><h3>Pleated midi skirt</h3><span>€69.50</span></div>
      <div class="slide clone" aria-hidden="true"><a href="/p/camp"><img src="/i/camp.jpg"></a><h3>Linen camp shirt</h3><span>€49</span></div></div>`,
  ),
  listing(
    "brand, badge, rating, sizes and swatches around the name",
    `<ul class="products"><li class="product"><a href="/p/camp"><img src="/i/camp.jpg"><span class="badge">Sale</span></a><p class="brand">Tallow &amp; Finch</p><a class="title" href="/p/camp">Linen camp shirt</a><div class="rating">4.8 (212 reviews)</div><div class="price"><del>€60.00</del> <ins>€49.00</ins></div><div class="swatches"><img src="/i/sw1.png" width="16"><img src="/i/sw2.png" width="16"></div><button>Add to cart</button></li>
      <li class="product"><a href="/p/skirt"><img src="/i/skirt.jpg"></a><p class="brand">Tallow &amp; Finch</p><a class="title" href="/p/skirt">Pleated midi skirt</a><div class="rating">4.1 (9 reviews)</div><div class="price">€69.50</div><button>Add to cart</button></li></ul>`,
  ),
  listing(
    "a sold-out product without a price and a campaign tile beside it",
    `<ul><li class="product-card"><a href="/shop/camp"><img src="/i/camp.jpg"></a><h3>Linen camp shirt</h3><span>€49</span></li><li class="product-card"><a href="/shop/skirt"><img src="/i/skirt.jpg"></a><h3>Pleated midi skirt</h3><span>€69.50</span></li>
      <li class="product-card"><a href="/shop/robe"><img src="/i/robe.jpg"></a><h3>Waffle robe</h3><span>Sold out</span></li><li class="product-card"><a href="/collections/summer"><img src="/i/summer.jpg"></a><h3>The summer edit</h3><span>Shop now</span></li></ul>`,
    { products: [...two, ...expected("Waffle robe ||| robe.jpg")] },
  ),
  listing(
    "content revealed on scroll is transparent at first",
    `<div style="opacity:0"><div><a href="/p/camp"><img src="/i/camp.jpg"></a><h3>Linen camp shirt</h3><p>€49</p></div><div><a href="/p/skirt"><img src="/i/skirt.jpg"></a><h3>Pleated midi skirt</h3><p>€69.50</p></div></div>`,
  ),
  listing(
    "prices cut into sign, whole and raised cents, savings and instalments beside them",
    `<div><div><a href="/p/camp"><img src="/i/camp.jpg"></a><h3>Linen camp shirt</h3><p><span>€</span><span>49</span><sup>00</sup></p><p>Save <b>€11.00</b></p><p>or 4 payments of €12.25</p></div><div><a href="/p/skirt"><img src="/i/skirt.jpg"></a><h3>Pleated midi skirt</h3><p><bdi>69<sup>50</sup> <span>€</span></bdi></p></div></div>`,
  ),
  listing(
    "screen-reader words inside the price, a struck price first",
    `<div><div><a href="/p/camp"><img src="/i/camp.jpg"></a><h3>Linen camp shirt</h3><p><span class="visually-hidden">Regular price</span><s>€60.00</s><span class="visually-hidden">Sale price</span><span>€49.00</span></p></div><div><a href="/p/skirt"><img src="/i/skirt.jpg"></a><h3>Pleated midi skirt</h3><p><span>From </span><span>€69.50</span></p></div></div>`,
  ),
  listing(
    "numbers without a sign where the page tells the currency",
    `<div><div><a href="/p/camp"><img src="/i/camp.jpg"></a><h3>Linen camp shirt</h3><p class="price">49.00</p></div><div><a href="/p/skirt"><img src="/i/skirt.jpg"></a><h3>Pleated midi skirt</h3><p class="price">69.50</p></div></div>`,
    { head: '<meta property="og:price:currency" content="EUR">' },
  ),
  listing(
    "panels of tabs, one of them not displayed",
    `<div class="tabs"><div role="tabpanel"><div><a href="/p/camp"><img src="/i/camp.jpg"></a><h3>Linen camp shirt</h3><p>€49</p></div></div><div role="tabpanel" style="display:none"><div><a href="/p/skirt"><img src="/i/skirt.jpg"></a><h3>Pleated midi skirt</h3><p>€69.50</p></div></div></div>`,
  ),
  {
    name: "outfits with their total, the single pieces in hidden pop-overs",
    body: `<style>.look{position:relative;width:300px}.pop{display:none}</style><div style="display:flex">${[
      ["Harbour morning", "harbour", "€310"],
      ["First frost", "frost", "€455"],
    ]
      .map(
        ([name, slug, total]) =>
          `<article class="look"><a href="/outfits/${slug}"><img src="/i/${slug}.jpg" width="300" height="400"></a>${["Wool jumper", "Pleated trousers"].map((piece, i) => `<button>+</button><div class="pop"><img src="/i/${slug}-${i}.jpg" width="120" height="120"><b>${piece}</b><span>€${80 + i}</span><a href="/p/${slug}-${i}">See</a></div>`).join("")}<h3>${name}</h3><p>${total}</p></article>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected("Harbour morning | 310 | EUR | harbour.jpg", "First frost | 455 | EUR | frost.jpg"),
    layout: true,
  },
  ...[
    `<p>Gift box €5</p><div role="tabpanel" style="display:none">`,
    `<img src="/i/wrap.jpg" width="600" height="200"><p>Gift box €5</p><div role="tabpanel"><p><a href="/p/camp"><img src="/i/camp.jpg" width="200" height="260"></a><b>Linen camp shirt</b> €49</p></div><div role="tabpanel" style="display:none">`,
  ].map((above, i) =>
    listing(
      `a note with an amount above a panel that is not displayed, ${["alone", "beside one that is"][i]}`,
      `<div class="tabs">${above}<p><a href="/p/skirt"><img src="/i/skirt.jpg"></a><b>Pleated midi skirt</b> €69.50</p></div></div>`,
      { layout: true, products: two.slice(1 - i) },
    ),
  ),
  {
    name: "a right-to-left page with titles in Arabic",
    lang: "ar",
    body: `<div dir="rtl"><div><a href="/p/1"><img src="/i/a.jpg"></a><h3>فستان صيفي طويل</h3><span>450.00 ر.س</span></div><div><a href="/p/2"><img src="/i/b.jpg"></a><h3>قميص قطن أبيض</h3><span>٢٢٠٫٥٠ ر.س</span></div></div>`,
    kind: "listing",
    products: expected("فستان صيفي طويل | 450 | SAR | a.jpg", "قميص قطن أبيض | 220.5 | SAR | b.jpg"),
  },
  {
    name: "a page in Japanese",
    lang: "ja",
    body: `<ul><li><a href="/p/1"><img src="/i/a.jpg"><p>リネンシャツ</p><p>¥12,800</p></a></li><li><a href="/p/2"><img src="/i/b.jpg"><p>プリーツスカート</p><p>9,900円</p></a></li></ul>`,
    kind: "listing",
    products: expected("リネンシャツ | 12800 | JPY | a.jpg", "プリーツスカート | 9900 | JPY | b.jpg"),
  },
  {
    name: "copies of slides whose addresses a template counts through",
    head: "<style>.s{display:flex;gap:10px}</style>",
    body: `<div class="s">${[
      ["Hare", 40],
      ["Goat", 41],
      ["Hare", 42],
      ["Goat", 43],
    ]
      .map(
        ([name, id]) =>
          `<div class="owl-item ${Number(id) > 41 ? "cloned" : ""}"><div class="product-item"><a href="/shop-single.php?id=${id}"><img src="/i/${name}.jpg" width="220" height="280"></a><h3>${name} of wool</h3><p>£18</p></div></div>`,
      )
      .join("")}</div>`,
    kind: "listing",
    products: expected("Hare of wool | 18 | GBP | Hare.jpg", "Goat of wool | 18 | GBP | Goat.jpg"),
  },
];
