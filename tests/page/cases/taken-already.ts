import { expected, type PageCase } from "./page-case.ts";

const STYLE =
  "<style>.line{display:flex;gap:20px}.line img,.row img{width:130px;height:160px}.row{display:flex;gap:16px}</style>";

/** What a line of a basket shows: its picture's name, its own name, its price and how it is taken out again. */
type Line = readonly [slug: string, name: string, price: string, out: string];

const line = ([slug, name, price, out]: Line): string =>
  `<li class="line"><div><a href="/items/${slug}"><img src="/i/${slug}.jpg"></a></div><div><h3><a href="/items/${slug}">${name}</a></h3><span class="price">${price}</span></div><div class="ends"><input type="number" name="quantity" value="1">${out}</div></li>`;

const offer = (slug: string, name: string, price: string): string =>
  `<li><a href="/items/${slug}"><img src="/i/${slug}.jpg"><b>${name}</b></a><span class="price">${price}</span></li>`;

const page = (name: string, url: string, body: string, more: Partial<PageCase> = {}): PageCase => ({
  name,
  url: `http://shop.localhost${url}`,
  head: STYLE,
  body: `<header><a href="/">Pennard</a></header><main>${body}</main>`,
  kind: "none",
  products: [],
  ...more,
});

/** Pages on which a person sees what they have taken already: baskets, check-outs, orders. */
export const TAKEN_ALREADY: readonly PageCase[] = [
  page(
    "no product: the lines of a basket, by its address",
    "/basket",
    `<h1>Nearly yours</h1><ul>${line(["moss", "Moss cardigan", "£64.00", "<button>Remove</button>"])}${line(["rush", "Rush sandals", "£48.00", "<button>Remove</button>"])}</ul>`,
  ),
  page(
    "no product: the lines of a basket, by its heading, in Danish",
    "/b/7",
    `<h1>Din kurv</h1><ul>${line(["mos", "Cardigan i mosgrøn", "649,00 kr", ""])}${line(["siv", "Sandaler i siv", "480,00 kr", ""])}</ul>`,
    { lang: "da" },
  ),
  page(
    "the offers below the lines of a basket are products",
    "/cart",
    `<h1>Your cart</h1><ul>${line(["moss", "Moss cardigan", "£64.00", '<a href="/cart/change?line=1" class="remove">×</a>'])}</ul><h2>Goes well with it</h2><ul class="row">${offer("fern", "Fern skirt", "£52.00")}${offer("clay", "Clay scarf", "£30.00")}</ul>`,
    {
      kind: "listing",
      products: expected("Fern skirt | 52 | GBP | fern.jpg", "Clay scarf | 30 | GBP | clay.jpg"),
    },
  ),
  page(
    "tiles that take a quantity and have a button to buy are products",
    "/trade",
    `<h1>For shops</h1><ul class="row">${["fern", "clay", "moss"]
      .map((slug) =>
        offer(slug, `Shirt ${slug}`, "£12.00").replace(
          "</li>",
          '<input type="number" name="qty"><button>Add to cart</button></li>',
        ),
      )
      .join("")}</ul>`,
    {
      kind: "listing",
      products: expected(
        "Shirt fern | 12 | GBP | fern.jpg",
        "Shirt clay | 12 | GBP | clay.jpg",
        "Shirt moss | 12 | GBP | moss.jpg",
      ),
    },
  ),
  page(
    "no product: orders with a button to buy again",
    "/account/orders",
    `<h1>What you bought</h1><ul class="row">${offer("moss", "Moss cardigan", "£64.00").replace("</li>", "<button>Buy it again</button></li>")}${offer("rush", "Rush sandals", "£48.00").replace("</li>", "<button>Buy it again</button></li>")}</ul>`,
  ),
  page(
    "no product: what is about to be paid, by its heading",
    "/pay",
    `<h1>Checkout</h1><ul>${offer("moss", "Moss cardigan", "£64.00")}${offer("rush", "Rush sandals", "£48.00")}</ul>`,
  ),
];
