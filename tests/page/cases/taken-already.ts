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
  page(
    "no product: a basket by a heading and an address in Vietnamese",
    "/web/shopcart.html",
    `<h1>Giỏ hàng của bạn</h1><form action="/web/update-cart.php">${["giay", "dep"].map((slug) => `<div class="line"><div><img src="/i/${slug}.jpg"></div><div><a href="/web/${slug}.html"><h2>Giày ${slug} mềm</h2></a><p>1.850.000 ₫</p><input type="number" name="quantity[4]" value="1"><p>Tạm tính: 1.850.000 ₫</p></div></div>`).join("")}</form>`,
    { lang: "vi" },
  ),
  page(
    "what a person would like to have, in lines as those of a basket",
    "/wishlist.php",
    `<h1>Mes envies</h1><table>${["Lampe Orion", "Sac Espe", "Veste Lin"].map((name, i) => `<tr class="cart-row"><th><a href="article.php?id=${i}"><img src="/i/envie-${i}.jpg" width="130" height="160"></a></th><td><a href="article.php?id=${i}"><p>${name}</p></a></td><td><p>3${i}.9 €</p></td><td><form method="POST"><input type="number" name="quantity" style="display:none" value="0"><input name="remove" type="submit" value="X"></form></td></tr>`).join("")}</table>`,
    {
      lang: "fr",
      kind: "listing",
      products: expected(
        "Lampe Orion | 30.9 | EUR | envie-0.jpg",
        "Sac Espe | 31.9 | EUR | envie-1.jpg",
        "Veste Lin | 32.9 | EUR | envie-2.jpg",
      ),
    },
  ),
  page(
    "no product: ways to send and to pay, each with its mark and its price",
    "/delivery",
    `<div style="display:none"><img src="/i/x.png" alt=""><p></p></div><h1>Dostawa i płatność</h1><div><h2>Wybierz sposób dostawy.</h2>${["Kurier", "Automat"].map((way, i) => `<div class="option"><input type="radio" name="delivery" id="d${i}"><img src="/i/way-${i}.png" width="60" height="40"><label for="d${i}">${way}</label><span class="price">1${i}.99 zł</span></div>`).join("")}</div><form><input type="text" placeholder="Imię"></form><button class="end-btn">Podsumuj zamówienie</button>`,
    { lang: "pl", layout: true },
  ),
];
