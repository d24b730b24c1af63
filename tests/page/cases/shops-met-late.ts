import { expected, expectedMain, type PageCase } from "./page-case.ts";

const utility = (slug: string, name: string, price: string, tone: string): string => `
      <div class="group relative">
        <div class="aspect-square w-full overflow-hidden rounded-md bg-gray-200">
          <img src="/tw/${slug}.jpg" alt="Front of ${name.toLowerCase()} in ${tone.toLowerCase()}." class="h-full w-full object-cover">
        </div>
        <div class="mt-4 flex justify-between">
          <div>
            <h3 class="text-sm text-gray-700">
              <a href="#"><span aria-hidden="true" class="absolute inset-0"></span>${name}</a>
            </h3>
            <p class="mt-1 text-sm text-gray-500">${tone}</p>
          </div>
          <p class="text-sm font-medium text-gray-900">${price}</p>
        </div>
      </div>`;

const spectrum = (id: number, brand: string, name: string, now: string, was: string): string =>
  `<article class="z5x6ht _0xLoFW" role="link"><a class="_LM" href="/${name.toLowerCase().replaceAll(" ", "-")}-${id}.html"><figure><div style="width:230px;height:332px"><img src="/z/${id}.jpg?imwidth=300" srcset="/z/${id}.jpg?imwidth=300 1x, /z/${id}.jpg?imwidth=600 2x" width="230" height="332" alt=""></div></figure><header><div><h3 class="sDq_FX brandish">${brand}</h3><h3 class="sDq_FX">${name}</h3></div><section><p><span>ab </span><span>${now}</span></p><p><span>Ursprünglich: </span><span>${was}</span><span> -20%</span></p></section></header></a><button aria-label="merken"><svg width="24" height="24"></svg></button></article>`;

const dlrow = (slug: string, name: string, price: string): string =>
  `<dl><dt><a href="${slug}.htm"><img src="pix/${slug}.gif" alt="${name}" width="130" height="160"></a></dt><dd><a href="${slug}.htm">${name}</a></dd><dd>${price}</dd></dl>`;

const vue = (id: string, name: string, price: string): string =>
  `<div data-v-1f2a="" class="v-col"><div data-v-1f2a="" class="v-card"><div class="v-responsive v-img" style="width:240px;height:300px"><img class="v-img__img" src="/v/${id}.webp" alt="" style="width:240px;height:300px"></div><div class="v-card-title">${name}</div><div class="v-card-subtitle">In stock: 12</div><div class="v-card-text">${price}</div><div class="v-card-actions"><button class="v-btn">Details</button><button class="v-btn">In den Warenkorb</button></div></div></div>`;

/** Shops written after the reader knew all the others. */
export const SHOPS_MET_LATE: readonly PageCase[] = [
  {
    name: "utility classes, the whole tile one link by a layer, a colour under the name",
    head: "<style>.grid{display:grid;grid-template-columns:repeat(3,260px);gap:20px}.h-full{height:100%}.w-full{width:100%}.aspect-square{aspect-ratio:1}.absolute{position:absolute}.inset-0{inset:0}.relative{position:relative}</style>",
    body: `<div class="bg-white"><div class="mx-auto"><h2 class="text-2xl">Customers also purchased</h2><div class="grid">${utility("basic-tee", "Basic Tee", "$35", "Black")}${utility("crew", "Brushed Crew", "$62", "Oat")}${utility("chino", "Garden Chino", "$95", "Moss")}</div></div></div>`,
    kind: "listing",
    products: expected(
      "Basic Tee | 35 | USD | basic-tee.jpg",
      "Brushed Crew | 62 | USD | crew.jpg",
      "Garden Chino | 95 | USD | chino.jpg",
    ),
    layout: true,
  },
  {
    name: "brand and name both as headings, from-price and former price, hashed classes, German",
    lang: "de-DE",
    head: "<style>.f{display:flex}</style>",
    body: `<main><h1>Damenmode</h1><div class="f">${spectrum(101, "Weidenau", "Strickkleid aus Merino", "79,95 €", "99,95 €")}${spectrum(102, "Nordmole", "Trenchcoat kurz", "151,20 €", "189,00 €")}</div></main>`,
    kind: "listing",
    products: expected(
      "Strickkleid aus Merino | 79.95 | EUR | 101.jpg",
      "Trenchcoat kurz | 151.2 | EUR | 102.jpg",
    ),
  },
  {
    name: "definition lists, small pictures, pounds and pence in words",
    lang: "en-GB",
    body: `<h2>Scarves &amp; shawls</h2><div style="display:flex">${dlrow("orkney", "Orkney shawl", "Price &pound;64.50")}${dlrow("fairisle", "Fair pattern scarf", "Price &pound;38.00 inc. VAT")}</div>`,
    kind: "listing",
    products: expected(
      "Orkney shawl | 64.5 | GBP | orkney.gif",
      "Fair pattern scarf | 38 | GBP | fairisle.gif",
    ),
  },
  {
    name: "cards of a component library without any link, stock beside the price",
    lang: "de",
    head: "<style>.row{display:flex}</style>",
    body: `<div id="app"><h1>Shop</h1><div class="row">${vue("1", "Leinenbluse Anke", "59,00 €")}${vue("2", "Jeansrock Meike", "69,00 €")}</div></div>`,
    kind: "listing",
    products: expected("Leinenbluse Anke | 59 | EUR | 1.webp", "Jeansrock Meike | 69 | EUR | 2.webp"),
  },
  {
    name: "a product page whose heading holds brand and name in pieces, with a size table and a recently seen strip",
    head: "<style>.p{display:flex}.p>ul img{width:440px;height:560px}.strip{display:flex}.strip img{width:120px;height:150px}</style>",
    lang: "en-AU",
    body: `<div class="p"><ul><li><img src="/au/jumpsuit-1.jpg"></li><li><img src="/au/jumpsuit-2.jpg"></li></ul><div><h1><a href="/brand/tarn">Tarn</a><span>Boiler jumpsuit</span></h1><div><span class="now">A$229.00</span> <s>A$279.00</s></div><p>or 4 x A$57.25 fortnightly</p><div class="swatches"><a class="selected" title="Ochre"><img src="/au/sw-o.jpg" width="32" height="32"></a><a title="Ink"><img src="/au/sw-i.jpg" width="32" height="32"></a></div><button>Add to Bag</button><table><tr><td>8</td><td>86 cm</td></tr></table></div></div><h3>Recently viewed</h3><div class="strip"><a href="/au/p/clog"><img src="/au/clog.jpg"><span>Studio clog</span><span>A$149.00</span></a></div>`,
    kind: "product",
    products: [
      expectedMain("Tarn Boiler jumpsuit | 229 | AUD | jumpsuit-1.jpg"),
      ...expected("Studio clog | 149 | AUD | clog.jpg"),
    ],
  },
  {
    name: "a home page: slider of campaigns with amounts, two carousels sharing products, brands, voices with stars",
    head: "<style>.t{display:flex;width:3000px}.w{overflow:hidden;width:900px}</style>",
    lang: "fr",
    body: `<div class="slider"><a href="/soldes"><img src="/f/s1.jpg" width="1100" height="400"><p>Jusqu'à -50 % et 10 € offerts dès 80 € d'achat</p></a></div>${[
      "Nouveautés",
      "Meilleures ventes",
    ]
      .map(
        (title, i) =>
          `<h2>${title}</h2><div class="w"><div class="t">${[
            ["vareuse", "Vareuse en toile", "89,00 €"],
            ["mariniere", "Marinière épaisse", "65,00 €"],
            ["cabans", "Caban croisé", "249,00 €"],
          ]
            .slice(i, i + 2)
            .map(
              ([slug, name, price]) =>
                `<div class="s"><a href="/produit/${slug}"><img src="/f/${slug}.jpg" width="260" height="320" alt="${name}"></a><a href="/produit/${slug}">${name}</a><span>${price}</span></div>`,
            )
            .join("")}</div></div>`,
      )
      .join(
        "",
      )}<div class="avis"><div><img src="/f/a1.jpg" width="70" height="70"><b>Maëlle</b><p>Très belle qualité pour 89 €, je recommande.</p></div></div><div class="marques"><img src="/f/m1.png" width="140" height="60"><img src="/f/m2.png" width="140" height="60"></div>`,
    kind: "listing",
    products: expected(
      "Vareuse en toile | 89 | EUR | vareuse.jpg",
      "Marinière épaisse | 65 | EUR | mariniere.jpg",
      "Caban croisé | 249 | EUR | cabans.jpg",
    ),
  },
  {
    name: "no product: the terms of sale with amounts and a diagram",
    body: `<h1>Terms of sale</h1><img src="/d/flow.png" width="640" height="320"><p>Orders below $35 carry a fee of $4.50.</p><ul><li>Returns: $6.00</li><li>Express: $15.00</li></ul>`,
    kind: "none",
    products: [],
  },
  {
    name: "no product: a club with plans, one picture each",
    body: `<h1>Join the club</h1><div style="display:flex"><div class="plan"><img src="/d/thread.png" width="120" height="120"><h2>Thread</h2><p>$5 / month</p><a href="/join/thread">Join</a></div><div class="plan"><img src="/d/bolt.png" width="120" height="120"><h2>Bolt</h2><p>$12 / month</p><a href="/join/bolt">Join</a></div></div>`,
    kind: "none",
    products: [],
  },
];
