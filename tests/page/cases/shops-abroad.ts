import { expected, type PageCase } from "./page-case.ts";

const GREY =
  "data:image/svg+xml,%3Csvg%20xmlns='http://www.w3.org/2000/svg'%20viewBox='0%200%20360%20480'%3E%3C/svg%3E";

const rental = (file: string, name: string, rent: number, deposit: number): string => `
      <div class="col-sm-6 col-lg-3 mb-4">
        <div class="card shadow-sm" style="width: 16rem;">
          <img src="gone/${file}.jpeg" class="card-img-top" alt="${name}">
          <div class="card-body text-center">
            <h5 class="card-title">${name}</h5>
            <p class="card-text mb-1">Rent: ₹${rent}/-</p>
            <p class="card-text small text-muted">Deposit ₹${deposit} (refundable)</p>
            <a href="#" class="btn btn-dark btn-block">Rent Now</a>
          </div>
        </div>
      </div>`;

const arabic = (id: number, title: string, price: string, category: string): string =>
  `<li class="entry product type-product post-${id} instock"><div class="thumb-wrap"><a class="loop-image" href="/product/${id}/"><img width="300" height="400" src="/media/${id}-300x400.jpg" alt=""></a><div class="actions"><a href="?add_to_wishlist=${id}" title="أضف إلى المفضلة"><img src="/ui/heart.png" width="20" height="20" alt=""></a></div></div><ul class="inner"><li class="category"><a href="/product-category/x/">${category}</a></li><li class="title"><h2><a href="/product/${id}/">${title}</a></h2></li><li class="price-wrap"><span class="price">${price}</span></li><li class="btn-wrap"><a href="?add-to-cart=${id}" class="button">إضافة إلى السلة</a></li></ul></li>`;
const riyal = (amount: string): string =>
  `<span class="amount"><bdi>${amount}&nbsp;<span class="symbol">ر.س</span></bdi></span>`;

const african = (slug: string, title: string, price: string): string =>
  `<div class="elem-col elem-4"><div class="elem-wrap"><div class="prod-in"><noscript><img src="/wp/${slug}.jpg" width="500" height="500"></noscript><img class="lazyload" src="${GREY}" data-lazy-src="/wp/${slug}.jpg" width="500" height="500" alt="${title}"><span class="hot">Promo !</span><div class="det"><a class="det-link" href="/produit/${slug}"><h6>${title}</h6></a><div class="stars">Note <strong>5.00</strong> sur 5</div><p class="px">${price}</p><a class="add" href="/produit/${slug}">Choix des options</a></div></div></div></div>`;

const indonesian = (slug: string, title: string, price: string, sold = false): string =>
  `<div class="swiper-slide"><product-card class="pcard" data-handle="${slug}"><div class="pcard__fig"><a href="/collections/baru/products/${slug}" class="pcard__a"><picture><source srcset="//shop.localhost/f/${slug}_400x.webp 400w, //shop.localhost/f/${slug}_800x.webp 800w" type="image/webp"><img src="//shop.localhost/f/${slug}_400x.jpg" alt="${title}" width="400" height="533" loading="lazy"></picture><picture class="pcard__hover"><img src="//shop.localhost/f/${slug}_detail_400x.jpg" alt="" width="400" height="533" loading="lazy" style="opacity:0"></picture></a>${sold ? '<span class="tag">Habis</span>' : ""}<button class="pcard__qv" data-url="/products/${slug}">Lihat cepat</button></div><div class="pcard__info"><a class="pcard__t" href="/collections/baru/products/${slug}">${title}</a><div class="pcard__p"><span class="vh">Harga reguler</span>${price}</div></div></product-card></div>`;

const danish = (at: number, name: string, now: string, before = ""): string =>
  `<div class="vare ${at}"><div class="ramme"><a href="/shop/${at}p.html" title="${name}"><img data-original="/images/${at}-p.jpg" src="/images/blank.gif" alt="${name}" width="220" height="290"></a></div><div class="tekst"><div class="maerke">Fjordvind</div><a class="navn" href="/shop/${at}p.html">${name}</a>${before ? `<div class="foer">Før ${before}</div><div class="tilbud">Nu ${now}</div>` : `<div class="pris">${now}</div>`}<div class="str">S - M - L - XL</div></div></div>`;

/** Shops of seven countries, each written in another manner. */
export const SHOPS_ABROAD: readonly PageCase[] = [
  {
    name: "a rental of dresses in rupees, cards of a common style sheet, pictures that fail, links to nowhere",
    head: "<style>.row{display:flex;flex-wrap:wrap}.card{border:1px solid #ddd}.card-img-top{width:100%}nav img{height:40px}</style>",
    body: `<nav class="navbar"><a class="navbar-brand" href="#"><img src="/i/logo.png" alt=""> Lehra</a><ul><li><a href="#">Home</a></li><li><a href="#rent">Rent</a></li></ul></nav>
    <section class="py-5" id="rent"><div class="container"><h2 class="text-center">Our Collection</h2><div class="row">${rental("red", "Crimson Bridal Lehenga", 4999, 8000)}${rental("blue", "Peacock Anarkali", 2499, 4000)}${rental("green", "Mehendi Sharara Set", 1999, 3000)}${rental("gold", "Zari Sherwani", 3499, 6000)}</div></div></section>
    <section class="py-5"><div class="row"><div class="col"><h4>1. Choose</h4><p>Pick your outfit online.</p></div><div class="col"><h4>2. Wear</h4><p>Keep it for 3 days.</p></div></div></section><footer><p>© 2024 Lehra. Delivery ₹99 across the city.</p></footer>`,
    kind: "listing",
    products: expected(
      "Crimson Bridal Lehenga | 4999 | INR | red.jpeg",
      "Peacock Anarkali | 2499 | INR | blue.jpeg",
      "Mehendi Sharara Set | 1999 | INR | green.jpeg",
      "Zari Sherwani | 3499 | INR | gold.jpeg",
    ),
    layout: true,
  },
  {
    name: "a plugin's archive in Arabic, right to left: struck prices with words for screen readers, a category above each name",
    lang: "ar",
    head: "<style>body{direction:rtl}.products{display:grid;grid-template-columns:repeat(3,1fr)}.screen-reader-text{position:absolute;width:1px;height:1px;overflow:hidden}</style>",
    body: `<header id="site-header"><div><a href="/"><img src="/ui/logo.png" width="140" height="50" alt="متجر"></a></div></header><main><h1>عبايات</h1><ul class="products">${arabic(11, "عباية كتان سوداء", riyal("450.00"), "عبايات")}${arabic(12, "عباية مطرزة بأكمام واسعة", `<del aria-hidden="true">${riyal("620.00")}</del> <span class="screen-reader-text">السعر الأصلي هو: 620.00&nbsp;ر.س.</span><ins>${riyal("399.00")}</ins><span class="screen-reader-text">السعر الحالي هو: 399.00&nbsp;ر.س.</span>`, "عبايات")}${arabic(13, "شال حرير", riyal("1,150.00"), "شالات")}</ul></main><footer><p>الشحن مجاني للطلبات فوق 500 ر.س</p></footer>`,
    kind: "listing",
    products: expected(
      "عباية كتان سوداء | 450 | SAR | 11-300x400.jpg",
      "عباية مطرزة بأكمام واسعة | 399 | SAR | 12-300x400.jpg",
      "شال حرير | 1150 | SAR | 13-300x400.jpg",
    ),
  },
  {
    name: "a page builder's shop in francs: noscript before the lazy picture, ranges, ratings",
    lang: "fr",
    head: "<style>.elem-row{display:flex}.elem-col{width:25%}.prod-in img{width:100%;height:auto}</style>",
    body: `<div class="elem-section"><img src="/wp/banniere.jpg" width="1200" height="300"><h1>Boutique Baobab</h1></div><div class="elem-row">${african("boubou", "Boubou brodé", "<del>15 000,00CFA</del> <ins>10000,00CFA</ins>")}${african("pagne", "Robe en pagne", "12 500,00CFA – 18 000,00CFA")}${african("sac", "Sac en raphia", "7500,00CFA")}</div><div class="elem-row"><div class="elem-col"><h4>Livraison rapide</h4><p>À partir de 2000 CFA</p></div></div>`,
    kind: "listing",
    products: expected(
      "Boubou brodé | 10000 | XOF | boubou.jpg",
      "Robe en pagne | 12500 | XOF | pagne.jpg",
      "Sac en raphia | 7500 | XOF | sac.jpg",
    ),
  },
  {
    name: "a hosted shop's carousel in rupiah: hover pictures, one sold out, a quick look that waits empty",
    lang: "id",
    head: "<style>.swiper-wrapper{display:flex;width:2400px}.swiper-slide{width:300px}.swiper{overflow:hidden;width:1000px}.pcard__fig{position:relative}.pcard__hover{position:absolute;inset:0}.vh{position:absolute;clip-path:inset(50%)}</style>",
    body: `<div id="hdr" class="section-hdr"><div class="hdr"><a href="/">Rumah Rami</a><a href="/cart">Tas (0)</a></div></div><main><h2>Baru datang</h2><div class="swiper"><div class="swiper-wrapper">${indonesian("kemeja-rami", "Kemeja Rami Lengan Pendek", "<span>Rp498,000.00</span>")}${indonesian("rok-lipit", "Rok Lipit Panjang", '<s>Rp720,000.00</s><span class="vh">Harga obral</span><span>Rp540,000.00</span>')}${indonesian("celana-katun", "Celana Katun Longgar", "<span>Rp389,000.00</span>", true)}${indonesian("syal-tenun", "Syal Tenun", "<span>Rp215,000.00</span>")}</div></div><quick-look hidden><div class="ql"><img alt=""><h3></h3><p></p></div></quick-look></main>`,
    kind: "listing",
    products: expected(
      "Kemeja Rami Lengan Pendek | 498000 | IDR | kemeja-rami_",
      "Rok Lipit Panjang | 540000 | IDR | rok-lipit_",
      "Celana Katun Longgar | 389000 | IDR | celana-katun_",
      "Syal Tenun | 215000 | IDR | syal-tenun_",
    ),
  },
  {
    name: "a weaver's price list as table rows: picture in one cell, words in the next, francs of Switzerland",
    lang: "de-CH",
    body: `<center><h1>Handweberei Brunnmatt</h1><p>Alles von Hand gewoben. Versand SFr. 9.00</p><table border="0" cellpadding="8"><tr><th>Bild</th><th>Artikel</th><th>Preis</th></tr><tr><td><img src="bilder/schal.jpg" height="150"></td><td><b>Wollschal naturgrau</b><br>200 x 40 cm</td><td>SFr. 45.00</td></tr><tr><td><img src="bilder/poncho.jpg" height="150"></td><td><b>Poncho mit Fransen</b><br>Einheitsgrösse</td><td>SFr. 189.00</td></tr><tr><td><img src="bilder/kissen.jpg" height="150"></td><td><b>Leinenbluse</b><br>Grössen 36-44</td><td>SFr. 1'150.00</td></tr></table><p>Bestellung per Telefon</p></center>`,
    kind: "listing",
    products: expected(
      "Wollschal naturgrau | 45 | CHF | schal.jpg",
      "Poncho mit Fransen | 189 | CHF | poncho.jpg",
      "Leinenbluse | 1150 | CHF | kissen.jpg",
    ),
  },
  {
    name: "a Danish shop of the old school: real picture in data-original behind a blank file, before and now",
    lang: "da",
    head: "<style>.vare{float:left;width:240px}.ramme img{display:block}</style>",
    body: `<div id="top"><img src="/images/top.jpg" width="980" height="120"></div><div id="menu"><a href="/shop/nyheder-1c1.html">Nyheder</a></div><div id="indhold"><h1>Strik</h1>${danish(41, "Uldsweater med rundhals", "1.299,00 kr")}${danish(42, "Cardigan i alpaka", "899,00 kr", "1.599,00 kr")}${danish(43, "Strikket hue", "249 kr.")}</div><div id="bund">Fri fragt ved køb over 499 kr.</div>`,
    kind: "listing",
    products: expected(
      "Uldsweater med rundhals | 1299 | DKK | 41-p.jpg",
      "Cardigan i alpaka | 899 | DKK | 42-p.jpg",
      "Strikket hue | 249 | DKK | 43-p.jpg",
    ),
  },
  {
    name: "a German shop with microdata in its tiles: recommended price, price by weight, a heart as picture",
    lang: "de",
    head: "<style>.listing{display:flex;flex-wrap:wrap}.box{width:280px}.box picture img{width:260px;height:340px}</style>",
    body: `<main class="content-main"><div class="listing">${[
      ["S100", "Hanfhemd mit Kentkragen", "ab 49,90 €*", "UVP 79,90 €*"],
      ["S101", "Strickrock aus Merino", "119,00 €*", ""],
      ["S102", "Filzpantoffeln", "39,95 €*", "Grundpreis: 7,99 €* / 100 g"],
    ]
      .map(
        ([id, name, price, more]) =>
          `<div class="box" itemscope itemtype="http://schema.org/Product"><meta itemprop="sku" content="${id}"><a class="merken" href="/note/add/${id}"><img src="/theme/herz.svg" alt="Merkzettel" width="22" height="22"></a><a href="/damen/${id}.html" itemprop="url"><picture><source data-srcset="/thumb/${id}_280.webp" type="image/webp"><img src="data:image/gif;base64,R0lGODlhAQABAAAAACH5BAEKAAEALAAAAAABAAEAAAICTAEAOw==" data-src="/thumb/${id}_280.jpg" itemprop="image" alt="${name}"></picture></a><a class="box-name" href="/damen/${id}.html"><span itemprop="name">${name}</span></a><div class="box-text">Aus kontrolliert biologischem Anbau.</div><div itemprop="offers" itemscope itemtype="http://schema.org/Offer"><meta itemprop="priceCurrency" content="EUR"><div class="preise"><span>${price}</span> <small>${more}</small></div></div></div>`,
      )
      .join("")}</div><p>* inkl. MwSt., zzgl. 4,95 € Versand</p></main>`,
    kind: "listing",
    products: expected(
      "Hanfhemd mit Kentkragen | 49.9 | EUR | S100_280",
      "Strickrock aus Merino | 119 | EUR | S101_280",
      "Filzpantoffeln | 39.95 | EUR | S102_280",
    ),
  },
];
