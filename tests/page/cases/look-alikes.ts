import { expected, type PageCase } from "./page-case.ts";

const nothing = (name: string, body: string, more: Partial<PageCase> = {}): PageCase => ({
  name,
  body,
  kind: "none",
  products: [],
  ...more,
});

const tile = (slug: string, title: string, price: string): string =>
  `<li><a href="/p/${slug}"><img src="/i/${slug}.jpg" width="200" height="260"></a><h3>${title}</h3><span>${price}</span></li>`;

const shown = expected("Camp shirt | 49 | USD | camp", "Midi skirt | 69 | USD | skirt");
const grid = `<ul>${tile("camp", "Camp shirt", "$49")}${tile("skirt", "Midi skirt", "$69")}</ul>`;
const beside = (name: string, body: string, more: Partial<PageCase> = {}): PageCase => ({
  name,
  body: `${body}<main>${grid}</main>`,
  kind: "listing",
  products: shown,
  ...more,
});

/** Fields called as what may be asked of an element. */
const FIELDS = (
  "parentElement parentNode host textContent getAttribute getAttributeNames matches closest contains children id " +
  "ownerDocument querySelector querySelectorAll checkVisibility getBoundingClientRect compareDocumentPosition " +
  "localName tagName className classList nodeType nodeValue nodeName shadowRoot isConnected"
)
  .split(" ")
  .map((name) => `<input type="hidden" name="${name}">`)
  .join("");

/** What looks like products and is none, alone and beside products. */
export const LOOK_ALIKE_CASES: readonly PageCase[] = [
  nothing(
    "category tiles with the classes of products",
    `<ul class="products"><li class="product-category product"><a href="/category/dresses/"><img src="/i/d.jpg"><h2>Dresses <span>(12)</span></h2></a></li><li class="product-category product"><a href="/category/coats/"><img src="/i/c.jpg"><h2>Coats <span>(8)</span></h2></a></li></ul>`,
  ),
  nothing(
    "campaign tiles that name a price limit",
    `<div><a href="/collections/under-50"><img src="/i/a.jpg"><h3>Gifts under $50</h3></a><a href="/collections/under-100"><img src="/i/b.jpg"><h3>Gifts under $100</h3></a></div>`,
  ),
  nothing(
    "category tiles that name the lowest price",
    `<div><a href="/collections/dresses"><img src="/i/a.jpg"><h3>Dresses</h3><p>From $29</p></a><a href="/collections/coats/"><img src="/i/b.jpg"><h3>Coats</h3><p>From $99</p></a></div>`,
  ),
  nothing(
    "a banner that names a saving",
    `<section><img src="/i/hero.jpg"><h2>The summer sale</h2><p>Save up to $50</p><a href="/sale">See it</a></section>`,
  ),
  nothing(
    "donation cards with amounts",
    `<div><div><img src="/i/a.jpg"><h3>Plant a hedge</h3><p>$25</p><button>Donate now</button></div><div><img src="/i/b.jpg"><h3>Mend a roof</h3><p>$50</p><button>Donate now</button></div></div>`,
  ),
  nothing(
    "a team",
    `<div class="team"><div><img src="/i/a.jpg"><h3>Orla Fenwick</h3><p>Cutter</p></div><div><img src="/i/b.jpg"><h3>Tamsin Vale</h3><p>Dyer</p></div></div>`,
  ),
  nothing(
    "press cuttings",
    `<div><a href="https://paper.invalid/1"><img src="/i/a.jpg"><p>“The best hems in town”</p></a><a href="https://paper.invalid/2"><img src="/i/b.jpg"><p>“Worth every stitch”</p></a></div>`,
  ),
  nothing(
    "a journal with picture cards",
    `<main><article><a href="/blog/1"><img src="/i/a.jpg"><h2>How to wash linen</h2></a><p>12 March 2025</p></article><article><a href="/blog/2"><img src="/i/b.jpg"><h2>Five coats for rain that cost less than $200 each</h2></a><p>2 April 2025</p></article></main>`,
  ),
  nothing(
    "a gallery",
    `<div class="gallery"><a href="/i/a-big.jpg"><img src="/i/a.jpg"></a><a href="/i/b-big.jpg"><img src="/i/b.jpg"></a><a href="/i/c-big.jpg"><img src="/i/c.jpg"></a></div>`,
  ),
  nothing(
    "hundreds of flags with currencies",
    `<ul>${Array.from({ length: 240 }, (_, i) => `<li><a href="?country=${i}"><img src="/flags/${i}.png" width="24" height="16"> Country ${i} (EUR €)</a></li>`).join("")}</ul>`,
  ),
  nothing(
    "review photos",
    `<div class="reviews"><div><img src="/i/a.jpg"><b>Ines</b><p>Bought two, worth more than the $40 I paid for them last spring.</p></div><div><img src="/i/b.jpg"><b>Noor</b><p>Lovely drape.</p></div></div>`,
  ),
  beside(
    "a mega menu full of products",
    `<header><nav><ul><li>Women<ul style="display:none">${tile("menu1", "Menu coat", "$99")}${tile("menu2", "Menu dress", "$89")}</ul></li></ul></nav></header>`,
  ),
  beside(
    "a cart drawer with products",
    `<div class="cart-drawer" style="position:fixed;right:0;top:0;visibility:hidden"><ul>${tile("bag1", "Bought boots", "$120")}${tile("bag2", "Bought belt", "$20")}</ul></div>`,
  ),
  beside(
    "a pop-up that tells what others bought",
    `<div class="sales-popup" style="position:fixed;left:8px;bottom:8px"><img src="/i/pop.jpg" width="80" height="80"><a href="/p/pop">Someone bought Popular cardigan</a><span>$59</span></div>`,
  ),
  beside(
    "a hidden window for a quick look",
    `<div class="modal" style="display:none"><img src="/i/camp-large.jpg"><h2>Camp shirt</h2><span>$49</span><a href="/p/camp">Full details</a><button>Add to cart</button></div>`,
  ),
  beside(
    "a banner about shipping",
    `<header><p>Free shipping over $75</p><img src="/i/logo.png" width="120" height="40"></header>`,
  ),
  beside(
    "a price filter beside the grid",
    `<aside><h1>Everything</h1><form><span>$0</span><span>$500</span></form></aside>`,
  ),
  beside(
    "team and journal under the grid",
    `<section><div><img src="/i/t1.jpg"><h3>Orla Fenwick</h3></div><div><img src="/i/t2.jpg"><h3>Tamsin Vale</h3></div></section><section><article><a href="/blog/1"><img src="/i/j.jpg"><h3>How to wash linen</h3></a></article></section>`,
  ),
  beside(
    "a footer with offers",
    `<footer><ul>${tile("f1", "Footer socks", "$9")}${tile("f2", "Footer scarf", "$19")}</ul></footer>`,
  ),
  ...[
    `<form><ul>${tile("f3", "Form socks", "$9")}${tile("f4", "Form scarf", "$19")}</ul>${FIELDS}</form>`,
    `<form itemscope>${tile("f3", "Form socks", "$9")}${tile("f4", "Form scarf", "$19")}${FIELDS}</form>`,
    `<ul>${tile("f3", "Form socks", `$9<form action="/cart/add"><button>Add to cart</button>${FIELDS}</form>`)}<li><form class="product"><a href="/p/f4"><img src="/i/f4.jpg" width="200" height="260"></a><h3>Form scarf</h3>$19 <button>Add to cart</button>${FIELDS}</form></li></ul>`,
  ].map((forms, i) =>
    beside(
      `a form that answers with its fields when it is asked, ${["around a list", "as a list", "in a tile and around one"][i]}`,
      forms,
      {
        layout: true,
        products: [...shown, ...expected("Form socks | 9 | USD | f3", "Form scarf | 19 | USD | f4")],
      },
    ),
  ),
];
