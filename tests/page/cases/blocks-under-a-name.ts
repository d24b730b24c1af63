import { expected, expectedMain, type PageCase } from "./page-case.ts";

const STYLE =
  "<style>.row{display:flex;gap:20px}.big{width:480px;height:600px}.g{display:flex;gap:16px}.g img{width:200px;height:260px}.no{display:none}</style>";
const HEAD = `<header><a href="/">Aldern</a><nav><a href="/coats">Coats</a></nav></header>`;

const card = (slug: string, name: string, price: string): string =>
  `<div class="c"><a href="/${slug}/a-9"><img src="/i/${slug}.jpg"></a><a href="/${slug}/a-9">${name}</a><span>${price}</span></div>`;
const BESIDE = `<section><h2>More</h2><div class="g">${card("cap", "Waxed cap", "€39")}${card("scarf", "Boiled scarf", "€59")}</div></section>`;
const CARDS = expected("Waxed cap | 39 | EUR | cap.jpg", "Boiled scarf | 59 | EUR | scarf.jpg");

const main = (name: string, body: string, row: string, more: Partial<PageCase> = {}): PageCase => ({
  name,
  head: STYLE,
  body: HEAD + body,
  kind: "product",
  products: [expectedMain(row)],
  ...more,
});

/** Product pages whose name stands apart from the block that is sold under it, or whose button none of our words tells. */
export const BLOCKS_UNDER_A_NAME: readonly PageCase[] = [
  main(
    "the name over the whole width, below it gallery, price, button, and a link to what shipping costs",
    `<h1>Loden coat</h1><div class="row"><div><img class="big" src="/i/loden.jpg"></div><div><p>€289</p><small>incl. VAT, <a href="/shipping">shipping</a> not</small><button>In den Warenkorb</button></div></div>${BESIDE}`,
    "Loden coat | 289 | EUR | loden.jpg",
    { products: [expectedMain("Loden coat | 289 | EUR | loden.jpg"), ...CARDS] },
  ),
  main(
    "the name above, pictures of a gallery that open as files, folded-away large ones under the name again",
    `<div><h1>Loden coat, grey</h1><a href="/makers/aldern">Aldern</a></div><div class="row"><div><a href="/i/loden-full.jpg"><img class="big" src="/i/loden.jpg"></a><div class="no"><h2>Loden coat</h2><img src="/i/loden-zoom.jpg"></div></div><div><p>€289</p><form action="/cart/add"><button>Buy now</button></form></div></div>`,
    "Loden coat, grey | 289 | EUR | loden.jpg",
  ),
  main(
    "a chart of sizes folded away beside the price",
    `<div class="row"><img class="big" src="/i/loden.jpg"><div><a href="/coats">Coats</a><h1>Loden coat</h1><div><button>Sizes</button><div class="no"><img src="/i/chart.png"></div><p>€289</p><button>Add to cart</button></div></div></div>`,
    "Loden coat | 289 | EUR | loden.jpg",
  ),
  main(
    "a button without a word that tells, a field for how many",
    `<div class="row"><img class="big" src="/i/loden.jpg"><div><h1>Lodenfrakk</h1><p>289 €</p><label>Kogus <input type="number" value="1"></label><button>Võtan selle</button></div></div>${BESIDE}`,
    "",
    { lang: "et", products: [expectedMain("Lodenfrakk | 289 | EUR | loden.jpg"), ...CARDS] },
  ),
  main(
    "buttons in Persian, and to wish for it",
    `<div class="row"><img class="big" src="/i/loden.jpg"><div><h1>پالتو پشمی</h1><p>289 €</p><button>افزودن به سبد خرید</button><button>علاقه‌مندی</button></div></div>`,
    "پالتو پشمی | 289 | EUR | loden.jpg",
    { lang: "fa" },
  ),
  {
    name: "a list with its heading, one ware of which leads nowhere and has its own name",
    head: STYLE,
    body: `${HEAD}<h1>Coats</h1><div class="row"><img class="big" src="/i/loden.jpg"><div><h2>Loden coat</h2><p>€289</p><button>Add to cart</button></div></div>${BESIDE}`,
    kind: "listing",
    products: [...expected("Loden coat | 289 | EUR | loden.jpg"), ...CARDS],
  },
  {
    name: "a list of wares that are bought where they stand, names without headings",
    head: STYLE,
    body: `${HEAD}<h1>Coats</h1><div class="g">${["loden", "duffle", "pea"].map((name) => `<div class="product"><img src="/i/${name}.jpg"><b>The ${name} coat</b><p>€289</p><button>Add to cart</button></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "The loden coat | 289 | EUR | loden.jpg",
      "The duffle coat | 289 | EUR | duffle.jpg",
      "The pea coat | 289 | EUR | pea.jpg",
    ),
  },
  {
    name: "a list with a field for the lowest price and a picture above it",
    head: STYLE,
    body: `${HEAD}<img src="/i/hero.jpg" width="900" height="300"><h1>Everything</h1><p>Members: €5 less</p><form>from <input type="number" placeholder="€"> to <input type="number"></form><div class="g">${card("cap", "Waxed cap", "€39")}${card("scarf", "Boiled scarf", "€59")}</div>`,
    kind: "listing",
    products: CARDS,
  },
];
