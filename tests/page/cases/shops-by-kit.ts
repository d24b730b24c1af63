import { expected, expectedMain, type PageCase } from "./page-case.ts";

const GIF = "data:image/gif;base64,R0lGODlhAQABAIAAAAAAAP///yH5BAEAAAAALAAAAAABAAEAAAIBRAA7";

const polish = (slug: string, name: string, price: string, before = ""): string =>
  `<article class="miniature js-miniature" data-id="${slug}"><div class="thumb-container"><a href="/pl/sukienki/${slug}.html" class="thumb"><img class="img-fluid lazy" src="${GIF}" data-full-size-image-url="/img/p/${slug}-large.jpg" data-src="/img/p/${slug}-home.jpg" alt="${name}" width="250" height="333"></a><ul class="flags"><li class="flag new">Nowość</li></ul><div class="functional"><a class="quick" href="#" data-link-action="quickview">Szybki podgląd</a></div></div><div class="desc"><h2 class="h3 miniature-title"><a href="/pl/sukienki/${slug}.html">${name}</a></h2><div class="price-and-shipping">${before ? `<span class="sr-only">Cena podstawowa</span><span class="regular">${before}</span>` : ""}<span class="sr-only">Cena</span><span class="price" aria-label="Cena">${price}</span></div></div></article>`;

const magento = (id: number, name: string, price: string): string =>
  `<li class="item product-item"><div class="item-info" data-container="grid"><a href="/${name.toLowerCase().replaceAll(" ", "-")}.html" class="photo" tabindex="-1"><span class="image-container" style="width:240px"><span class="image-wrapper" style="padding-bottom:125%"><img class="image-photo" src="/media/cache/${id}.jpg" loading="lazy" width="240" height="300" alt="${name}"></span></span></a><div class="details"><strong class="name"><a class="item-link" href="/${name.toLowerCase().replaceAll(" ", "-")}.html">${name}</a></strong><div class="reviews-summary short"><div class="rating-result" title="87%"><span style="width:87%"><span>87%</span></span></div><div><a href="#reviews">3&nbsp;<span>Reviews</span></a></div></div><div class="price-box"><span class="normal-price"><span class="price-label">As low as</span> <span class="price-wrapper" data-price-amount="${price.replace("$", "")}"><span class="price">${price}</span></span></span></div><div class="swatch-color" role="listbox"><div class="swatch-option" style="background:#224"></div><div class="swatch-option image" style="background:url(/media/sw/${id}.jpg)"></div></div><form action="/checkout/cart/add"><button type="submit" title="Add to Cart"><span>Add to Cart</span></button></form></div></div></li>`;

const brazilian = (id: string, name: string, price: string, parts: string): string =>
  `<div class="vitrine-item" data-sku="${id}"><a href="/${id}/p" class="vitrine-link"><div class="img-holder"><img src="/arquivos/ids/${id}-300-400/foto.jpg" width="300" height="400" alt=""></div><h3 class="vitrine-nome">${name}</h3><div class="vitrine-preco"><span class="por">${price}</span><span class="parcela">ou <b>10x</b> de <b>${parts}</b> sem juros</span></div></a></div>`;

const thai = (at: number, name: string, price: string): string =>
  `<div data-hook="grid-item" class="sX1"><div data-hook="root" role="group" aria-label="${name} แกลเลอรี"><a href="/product-page/t${at}" class="oQUvqL"><div class="XUPHDr"><div class="naLHY2" style="background-image:url(/m/t${at}.jpg);background-size:cover;width:280px;height:350px"></div></div></a><div class="t2u"><a href="/product-page/t${at}"><p class="sO">${name}</p><div><span data-hook="sr">ราคา</span><span class="cfp" data-amount="${price}">${price}</span></div></a><button>เพิ่มลงตะกร้า</button></div></div></div>`;

const square = (slug: string, name: string, price: string, mark = ""): string =>
  `<div class="grid-item hentry" id="thumb-${slug}" data-item-id="${slug}"><a class="grid-item-link" aria-label="${name}" href="/store/p/${slug}"></a><figure class="grid-image"><div class="grid-image-inner" style="width:260px;height:260px"><img data-src="/s/${slug}.jpg" data-image="/s/${slug}.jpg" data-image-dimensions="1000x1000" alt="" class="grid-image-cover" style="width:260px;height:260px"><img data-src="/s/${slug}-alt.jpg" data-image="/s/${slug}-alt.jpg" class="grid-image-hover" style="width:260px;height:260px;opacity:0"></div></figure><section class="grid-meta"><div class="grid-title">${name}</div><div class="grid-prices"><div class="money">${price}</div></div>${mark}</section></div>`;

/** Shops made with kits of various kinds: each kit has its own markup. */
export const SHOPS_BY_KIT: readonly PageCase[] = [
  {
    name: "a Polish kit: lazy pictures with a large file in another attribute, an old price with words for screen readers",
    lang: "pl",
    head: "<style>.products{display:flex}.sr-only{position:absolute;width:1px;height:1px;overflow:hidden}</style>",
    body: `<header id="header"><div class="header-nav"><img src="/img/logo.jpg" width="200" height="60"></div></header><section id="wrapper"><nav class="breadcrumb"><ol><li><a href="/pl">Start</a></li><li><a href="/pl/sukienki">Sukienki</a></li></ol></nav><section id="main"><h1>Sukienki</h1><div class="products">${polish("11-lniana", "Sukienka lniana midi", "199,99&nbsp;zł", "249,99&nbsp;zł")}${polish("12-koszulowa", "Sukienka koszulowa", "1&nbsp;249,00&nbsp;zł")}${polish("13-dzianinowa", "Sukienka dzianinowa", "159,00 zł")}</div></section></section><footer>Darmowa dostawa od 300 zł</footer>`,
    kind: "listing",
    products: expected(
      "Sukienka lniana midi | 199.99 | PLN | 11-lniana",
      "Sukienka koszulowa | 1249 | PLN | 12-koszulowa",
      "Sukienka dzianinowa | 159 | PLN | 13-dzianinowa",
    ),
  },
  {
    name: "a heavy kit: 'as low as', swatches of which one is a picture, a basket form in each tile, reviews in percent",
    head: "<style>ol{display:flex;list-style:none}.swatch-option{width:20px;height:20px}.photo{display:block}</style>",
    body: `<div class="page-wrapper"><header class="page-header"><div class="minicart-wrapper"><a href="/checkout/cart">2</a><div class="block-minicart" style="display:none"><ol><li class="item product-item"><img src="/media/cart1.jpg" width="75" height="75"><a href="/hat.html">Felt hat</a><span class="price">$42.00</span></li></ol></div></div></header><main><h1>Tops</h1><div class="toolbar">Items 1-3 of 3</div><ol class="products list items">${magento(1, "Breeze Tank", "$29.00")}${magento(2, "Harbour Tee", "$22.00")}${magento(3, "Stile Hoodie", "$1,064.50")}</ol></main><div class="sidebar"><div class="block-compare">You have no items to compare.</div></div></div>`,
    kind: "listing",
    products: expected(
      "Breeze Tank | 29 | USD | cache/1.jpg",
      "Harbour Tee | 22 | USD | cache/2.jpg",
      "Stile Hoodie | 1064.5 | USD | cache/3.jpg",
    ),
    layout: true,
  },
  {
    name: "a Brazilian kit: ten instalments beside each price",
    lang: "pt-BR",
    head: "<style>.vitrine{display:flex}</style>",
    body: `<div class="topo">Frete grátis acima de R$ 299,00</div><h2>Mais vendidos</h2><div class="vitrine">${brazilian("vestido-linho", "Vestido longo de linho", "R$ 1.299,90", "R$ 129,99")}${brazilian("saia-midi", "Saia midi plissada", "R$ 249,90", "R$ 24,99")}</div><div class="banner"><img src="/arquivos/banner.jpg" width="1000" height="240"></div>`,
    kind: "listing",
    products: expected(
      "Vestido longo de linho | 1299.9 | BRL | vestido-linho-300",
      "Saia midi plissada | 249.9 | BRL | saia-midi-300",
    ),
  },
  {
    name: "a builder's grid in Thai: pictures as backgrounds in hashed classes",
    lang: "th",
    head: "<style>.gal{display:flex}</style>",
    body: `<div id="SITE"><h2>สินค้าใหม่</h2><div class="gal">${thai(1, "เสื้อลินินแขนสั้น", "฿1,290.00")}${thai(2, "กระโปรงผ้าฝ้าย", "฿890.00")}</div></div>`,
    kind: "listing",
    products: expected("เสื้อลินินแขนสั้น | 1290 | THB | t1.jpg", "กระโปรงผ้าฝ้าย | 890 | THB | t2.jpg"),
  },
  {
    name: "a builder whose link is an empty layer beside the picture, pictures without src, one sold out",
    body: `<section class="grid-main" style="display:flex">${square("kimono", "Ikat kimono", "£185.00")}${square("beret", "Merino beret", "from £38.00")}${square("mitts", "Cable mitts", "£42.00", '<div class="grid-mark">sold out</div>')}</section>`,
    kind: "listing",
    products: expected(
      "Ikat kimono | 185 | GBP | kimono.jpg",
      "Merino beret | 38 | GBP | beret.jpg",
      "Cable mitts | 42 | GBP | mitts.jpg",
    ),
  },
  {
    name: "a plugin's product page in German: gallery by script, variants, tabs, reviews with photos, similar products",
    lang: "de",
    head: `<style>.gal{width:420px;float:left}.gal img{width:420px;height:525px}.thumbs img{width:90px;height:110px}.sum{margin-left:440px}ul.products{clear:both;display:flex;list-style:none}.tab[hidden]{display:none}</style><script type="application/ld+json">{"@context":"https://schema.org/","@graph":[{"@type":"BreadcrumbList","itemListElement":[{"@type":"ListItem","position":1,"item":{"name":"Start","@id":"/"}}]},{"@type":"Product","@id":"/produkt/lodenmantel/#product","name":"Lodenmantel","url":"/produkt/lodenmantel/","image":"/up/loden-1.jpg","offers":[{"@type":"Offer","priceSpecification":[{"@type":"UnitPriceSpecification","price":"389.00","priceCurrency":"EUR"}]}]}]}</script>`,
    body: `<main><nav class="breadcrumb"><a href="/">Start</a> / <a href="/produkt-kategorie/maentel/">Mäntel</a></nav><div class="product type-product"><div class="gal"><div><a href="/up/loden-1-full.jpg"><img src="/up/loden-1.jpg"></a></div><div class="thumbs"><img src="/up/loden-1-100x125.jpg"><img src="/up/loden-2-100x125.jpg"></div></div><div class="sum"><h1 class="product_title">Lodenmantel</h1><p class="price"><span class="amount"><bdi>389,00&nbsp;<span>€</span></bdi></span></p><p>inkl. 19 % MwSt. zzgl. <a href="/versand">Versandkosten</a></p><form class="cart"><table><tr><td>Farbe</td><td><select name="attribute_pa_farbe"><option>Wählen</option><option selected>Tanne</option></select></td></tr></table><button type="submit" class="single_add_to_cart_button">In den Warenkorb</button></form></div><div class="tabs"><div class="tab">Beschreibung: reine Schurwolle.</div><div class="tab" hidden><h2>Bewertungen</h2><img src="/up/review.jpg" width="160" height="160"><p>Jeden Euro wert, habe 389 € bezahlt.</p></div></div><section class="related"><h2>Ähnliche Produkte</h2><ul class="products"><li class="product"><a href="/produkt/janker/"><img src="/up/janker-300.jpg" width="240" height="300"><h2>Walkjanker</h2><span class="price"><bdi>249,00&nbsp;<span>€</span></bdi></span></a><a class="button add_to_cart_button" href="?add-to-cart=3">In den Warenkorb</a></li><li class="product"><a href="/produkt/schal/"><img src="/up/schal-300.jpg" width="240" height="300"><h2>Wollschal</h2><span class="price"><del><bdi>59,00&nbsp;<span>€</span></bdi></del> <ins><bdi>39,00&nbsp;<span>€</span></bdi></ins></span></a><a class="button add_to_cart_button" href="?add-to-cart=4">In den Warenkorb</a></li></ul></section></div></main>`,
    kind: "product",
    products: [
      expectedMain("Lodenmantel | 389 | EUR | loden-1"),
      ...expected("Walkjanker | 249 | EUR | janker-300", "Wollschal | 39 | EUR | schal-300"),
    ],
  },
  {
    name: "a hosted product page: variants in a group, sold out, price by data, sticky gallery, a store-made FAQ",
    head: `<script type="application/ld+json">{"@context":"http://schema.org/","@type":"ProductGroup","name":"Plaited raffia mule","hasVariant":[{"@type":"Product","name":"Plaited raffia mule - 38","offers":{"@type":"Offer","price":"1,120.00","priceCurrency":"SEK","availability":"https://schema.org/OutOfStock"}}],"url":"/products/mule"}</script><style>.cols{display:flex}.cols img{width:380px;height:475px}</style>`,
    lang: "sv",
    body: `<div class="cols"><media-gallery><img src="/c/mule-a.jpg"><img src="/c/mule-b.jpg"></media-gallery><product-info><h1>Plaited raffia mule</h1><div class="price"><span>1 120,00 kr</span></div><variant-picker><fieldset><legend>Storlek</legend><label><input type="radio" checked>38</label></fieldset></variant-picker><button type="submit" name="add" disabled>Slutsåld</button></product-info></div><section><h2>Frågor</h2><details><summary>Frakt?</summary><p>49 kr inom Sverige.</p></details></section>`,
    kind: "product",
    products: [expectedMain("Plaited raffia mule | 1120 | SEK | mule-a.jpg")],
  },
  {
    name: "a Japanese mall page: tiles as table cells in four columns, price in the cell, a banner with yen",
    lang: "ja",
    body: `<div class="bnr"><img src="/b/sale.jpg" width="900" height="160">10,000円以上で送料無料</div><table><tbody><tr>${[
      ["リネンワンピース", "8,800円(税込)", "op"],
      ["コットンシャツ", "¥5,940", "sh"],
      ["ウールコート", "39,600円", "co"],
      ["デニムパンツ", "9,350 円", "de"],
    ]
      .map(
        ([name, price, slug]) =>
          `<td width="200" align="center"><a href="/item/${slug}"><img src="/t/${slug}.jpg" width="180" height="220"></a><br><a href="/item/${slug}">${name}</a><br><font color="#c00">${price}</font></td>`,
      )
      .join("")}</tr></tbody></table>`,
    kind: "listing",
    products: expected(
      "リネンワンピース | 8800 | JPY | op.jpg",
      "コットンシャツ | 5940 | JPY | sh.jpg",
      "ウールコート | 39600 | JPY | co.jpg",
      "デニムパンツ | 9350 | JPY | de.jpg",
    ),
  },
];
