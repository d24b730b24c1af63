import { expected, expectedMain, type PageCase } from "./page-case.ts";

const json = (data: unknown): string => `<script type="application/ld+json">${JSON.stringify(data)}</script>`;
const tile = (slug: string, title: string, price: string): string =>
  `<li><a href="/p/${slug}"><img src="/i/${slug}.jpg" width="200" height="260"></a><h3>${title}</h3><span>${price}</span></li>`;
const related = `<section><h2>You may also like</h2><ul>${tile("camp", "Camp shirt", "€49")}${tile("skirt", "Midi skirt", "€69")}</ul></section>`;
const relatedProducts = expected("Camp shirt | 49 | EUR | camp", "Midi skirt | 69 | EUR | skirt");
const gallery = `<div><img src="/i/coat-1.jpg" width="500" height="650"><img src="/i/coat-2.jpg" width="500" height="650"></div>`;
const coat = expectedMain("Boiled wool coat | 289 | EUR | coat-1.jpg");

/** Pages about one product, and pages whose data only says so. */
export const MAIN_CASES: readonly PageCase[] = [
  {
    name: "a product page without structured data, with related products",
    body: `<main><div>${gallery}<div><h1>Boiled wool coat</h1><p>€289.00</p><p>or 4 payments of €72.25</p><select><option>Small</option></select><button>Add to bag</button></div></div>${related}</main>`,
    kind: "product",
    products: [coat, ...relatedProducts],
  },
  {
    name: "a product page with JSON-LD in a graph and prices as strings with commas",
    head: json({
      "@context": "https://schema.org",
      "@graph": [
        { "@type": "WebSite", name: "Tallow & Finch" },
        {
          "@type": "Product",
          name: "Boiled wool coat",
          color: "Moss",
          image: ["/i/coat-1.jpg"],
          offers: { "@type": "Offer", price: "1,289.00", priceCurrency: "EUR" },
        },
      ],
    }),
    body: `<main><div>${gallery}<div><h1>Boiled wool coat</h1><button>Notify me</button></div></div>${related}</main>`,
    kind: "product",
    products: [expectedMain("Boiled wool coat | 1289 | EUR | coat-1.jpg"), ...relatedProducts],
  },
  {
    name: "a product group with variants, broken JSON beside it, entities in the name",
    head: `<script type="application/ld+json">{"@type":"Product","name":"Broken",</script>${json({
      "@type": "ProductGroup",
      name: "Boiled wool coat &amp; belt",
      hasVariant: [
        {
          "@type": "Product",
          color: "Moss",
          image: "/i/coat-1.jpg",
          offers: { price: 289, priceCurrency: "EUR" },
        },
      ],
    })}`,
    body: `<main>${gallery}<h1>Boiled wool coat &amp; belt</h1></main>`,
    kind: "product",
    products: [expectedMain("Boiled wool coat & belt | 289 | EUR | coat-1.jpg")],
  },
  {
    name: "JSON-LD with line breaks in strings and a trailing comma",
    head: `<script type="application/ld+json">{"@type":"Product","name":"Boiled wool coat","description":"Warm\nand dense","offers":{"price":"289","priceCurrency":"EUR",},}</script>`,
    body: `<main>${gallery}<h1>Boiled wool coat</h1></main>`,
    kind: "product",
    products: [coat],
  },
  {
    name: "microdata",
    body: `<main itemscope itemtype="https://schema.org/Product">${gallery}<h1 itemprop="name">Boiled wool coat</h1><div itemprop="offers" itemscope itemtype="https://schema.org/Offer"><meta itemprop="priceCurrency" content="EUR"><span itemprop="price" content="289.00">289</span></div></main>`,
    kind: "product",
    products: [coat],
  },
  {
    name: "RDFa",
    body: `<main vocab="https://schema.org/" typeof="Product">${gallery}<h1 property="name">Boiled wool coat</h1><div property="offers" typeof="Offer"><meta property="priceCurrency" content="EUR"><meta property="price" content="289.00"></div></main>`,
    kind: "product",
    products: [coat],
  },
  {
    name: "Open Graph only",
    head: `<meta property="og:type" content="product"><meta property="og:title" content="Boiled wool coat"><meta property="product:price:amount" content="289.00"><meta property="product:price:currency" content="EUR">`,
    body: `<main>${gallery}<h1>Boiled wool coat</h1><p>Cut close, fully lined.</p></main>`,
    kind: "product",
    products: [coat],
  },
  {
    name: "the price sits in the h1, the name does not",
    head: json({
      "@type": "Product",
      name: "Boiled wool coat",
      offers: { price: 289, priceCurrency: "EUR" },
    }).replace("</script>", "</script><title>Boiled wool coat</title>"),
    body: `<main>${gallery}<div><h2>Boiled wool coat</h2><h1>€289</h1><button>Add to cart</button></div></main>`,
    kind: "product",
    products: [coat],
  },
  {
    name: "a home page whose data claims a product that it only features",
    head: json({ "@type": "Product", name: "Camp shirt", offers: { price: 49, priceCurrency: "EUR" } }),
    body: `<main><section><h1>Summer, unhurried</h1><img src="/i/hero.jpg" width="900" height="400"><a href="/collections/summer">See it</a></section><ul>${tile("camp", "Camp shirt", "€49")}${tile("skirt", "Midi skirt", "€69")}</ul></main>`,
    kind: "listing",
    products: relatedProducts,
  },
  {
    name: "a listing that calls itself a product by Open Graph",
    head: `<meta property="og:type" content="product"><meta property="og:title" content="Tallow &amp; Finch">`,
    body: `<main><h1>Shirts and skirts</h1><ul>${tile("camp", "Camp shirt", "€49")}${tile("skirt", "Midi skirt", "€69")}</ul></main>`,
    kind: "listing",
    products: relatedProducts,
  },
  {
    name: "one Product per tile on a category page",
    head: json([
      { "@type": "Product", name: "Camp shirt", url: "/p/camp", offers: { price: 49, priceCurrency: "EUR" } },
      {
        "@type": "Product",
        name: "Midi skirt",
        url: "/p/skirt",
        offers: { price: 69, priceCurrency: "EUR" },
      },
    ]),
    body: `<main><h1>Shirts and skirts</h1><ul>${tile("camp", "Camp shirt", "€49")}${tile("skirt", "Midi skirt", "€69")}</ul></main>`,
    kind: "listing",
    products: relatedProducts,
  },
  {
    name: "an ItemList whose tiles show no price",
    head: json({
      "@type": "ItemList",
      itemListElement: [
        {
          "@type": "ListItem",
          position: 1,
          item: {
            "@type": "Product",
            name: "Camp shirt",
            url: "/x/camp",
            offers: { price: "49.00", priceCurrency: "EUR" },
          },
        },
        {
          "@type": "ListItem",
          position: 2,
          item: {
            "@type": "Product",
            name: "Midi skirt",
            url: "/x/skirt",
            offers: { price: "69.00", priceCurrency: "EUR" },
          },
        },
      ],
    }),
    body: `<main><h1>Lookbook</h1><div><a href="/x/camp"><img src="/i/camp.jpg"><p>Camp shirt</p></a><a href="/x/skirt"><img src="/i/skirt.jpg"><p>Midi skirt</p></a></div></main>`,
    kind: "listing",
    products: relatedProducts,
  },
  {
    name: "a maker in one heading of the first rank and the name in another",
    body: `<main><div>${gallery}<div><h1>Fenwold</h1><h1>Boiled wool coat</h1><p>€289.00</p><button>Add to bag</button></div></div></main>`,
    kind: "product",
    products: [coat],
  },
  {
    name: "a gown made to order without any price, whose data has its name and the picture that shows",
    head: json({ "@type": "Product", name: "Isaura gown", image: ["/i/isaura-1.jpg?w=1200"] }),
    body: `<main><div><img src="/i/isaura-1.jpg?w=600" width="500" height="650"><div><h1>Isaura</h1><p>Price on request</p><a href="/book">Book a fitting</a></div></div></main>`,
    kind: "product",
    products: [expectedMain("Isaura | | | isaura-1.jpg")],
  },
  {
    name: "a page whose data tells of a product under its heading's name, and which shows another picture",
    head: json({ "@type": "Product", name: "The Isaura story", image: ["/i/isaura-1.jpg"] }),
    body: `<main><div><img src="/i/studio.jpg" width="500" height="650"><div><h1>The Isaura story</h1><p>Forty hours of lace.</p><a href="/book">Book a fitting</a></div></div></main>`,
    kind: "none",
    products: [],
  },
  {
    name: "a shop whose data calls the shop itself a product, with the picture over its grid",
    head: json({ "@type": "Product", name: "Fenwold knitwear", image: ["/i/sheep.jpg"] }),
    body: `<main><h1>Fenwold knitwear</h1><img src="/i/sheep.jpg" width="500" height="300"><ul>${tile("camp", "Camp shirt", "€49")}${tile("skirt", "Midi skirt", "€69")}</ul></main>`,
    kind: "listing",
    products: relatedProducts,
  },
  {
    name: "microdata nested in tiles",
    body: `<main><h1>Shirts and skirts</h1><div><div itemscope itemtype="http://schema.org/Product"><a itemprop="url" href="/x/camp"><img itemprop="image" src="/i/camp.jpg"></a><span itemprop="name">Camp shirt</span><span itemprop="offers" itemscope itemtype="http://schema.org/Offer"><meta itemprop="price" content="49"><meta itemprop="priceCurrency" content="EUR"></span></div><div itemscope itemtype="http://schema.org/Product"><a itemprop="url" href="/x/skirt"><img itemprop="image" src="/i/skirt.jpg"></a><span itemprop="name">Midi skirt</span><span itemprop="offers" itemscope itemtype="http://schema.org/Offer"><meta itemprop="price" content="69"><meta itemprop="priceCurrency" content="EUR"></span></div></div></main>`,
    kind: "listing",
    products: relatedProducts,
  },
  {
    name: "a product page with a quantity and a button in a language of few shops",
    lang: "et",
    body: `<main><div>${gallery}<div><h1>Boiled wool coat</h1><p>€289.00</p><form><input type="number" name="qty" value="1"><button>Telli endale</button></form></div></div>${related}</main>`,
    kind: "product",
    products: [coat, ...relatedProducts],
    layout: true,
  },
];
