import { expected, GRID, type PageCase, picture } from "./page-case.ts";

const MUGS = [
  ["amber-mug", "Amber mug", "12.00"],
  ["slate-bowl", "Slate bowl", "23.50"],
  ["moss-plate", "Moss plate", "15.00"],
  ["rust-jug", "Rust jug", "41.00"],
] as const;

const WARES = expected(
  "Amber mug | 12 | EUR | amber-mug.jpg",
  "Slate bowl | 23.5 | EUR | slate-bowl.jpg",
  "Moss plate | 15 | EUR | moss-plate.jpg",
  "Rust jug | 41 | EUR | rust-jug.jpg",
);

/** What stands around them on each of these pages. */
const page = (name: string, shelf: string, head = ""): PageCase => ({
  name,
  head,
  body: `<header><a href="/">Kiln</a> <a href="/cart">Cart</a></header><h1>From the kiln</h1>${shelf}<footer><p>Tallow &amp; Finch</p></footer>`,
  kind: "listing",
  products: WARES,
});

/** Fields by whose names a form answers instead of the element that it is. */
const FIELDS = ["textContent", "contains", "querySelectorAll", "nodeType", "tagName", "children", "classList"]
  .map((name) => `<input type="hidden" name="${name}">`)
  .join("");

const each = (part: (mug: (typeof MUGS)[number]) => string): string => MUGS.map(part).join("");

/** Lists whose products have no element of their own: what one is made of stands among the parts of others. */
export const PARTS_APART: readonly PageCase[] = [
  page(
    "picture, name and price of each, loose in one element",
    `<div>${each(([file, name, price]) => `<a href="/mugs/${file}">${picture(file)}</a><h3>${name}</h3><p>€ ${price}</p>`)}</div>`,
  ),
  page(
    "the same with forms among them whose fields are named as what one asks of elements",
    `<div>${each(([file, name, price]) => `<a href="/mugs/${file}">${picture(file)}</a><h3>${name}</h3><p>€ ${price}</p><form action="/add" method="post">${FIELDS}<button>Add to cart</button></form>`)}</div>`,
  ),
  page(
    "the same in the body, with more below",
    `${each(([file, name, price]) => `<a href="/mugs/${file}">${picture(file)}</a><h3>${name}</h3><p>€ ${price}</p>`)}<p>Fired twice.</p><p>By hand.</p>`,
  ),
  page(
    "names above their pictures, loose",
    `<div>${each(([file, name, price]) => `<h3><a href="/mugs/${file}">${name}</a></h3>${picture(file)}<p>€ ${price}</p>`)}</div>`,
  ),
  page(
    "pictures as terms, what is said of them as descriptions",
    `<dl>${each(([file, name, price]) => `<dt><a href="/mugs/${file}">${picture(file)}</a></dt><dd>${name}<br>€ ${price}</dd>`)}</dl>`,
  ),
  page(
    "picture and words in neighbouring columns of one row",
    `<div class="row">${each(([file, name, price]) => `<div class="col">${picture(file)}</div><div class="col"><h4><a href="/mugs/${file}">${name}</a></h4><span>€ ${price}</span></div>`)}</div>`,
    "<style>.row{display:grid;grid-template-columns:repeat(4,240px)}</style>",
  ),
  page(
    "a table with a row of pictures, one of names and one of prices",
    `<table><tr>${each(([file]) => `<td>${picture(file)}</td>`)}</tr><tr>${each(([file, name]) => `<td><a href="/mugs/${file}">${name}</a></td>`)}</tr><tr>${each(([, , price]) => `<td>€ ${price}</td>`)}</tr></table>`,
  ),
  page(
    "a table with two rows of pictures, their words in the row below each",
    `<table>${[0, 2]
      .map(
        (at) =>
          `<tr>${MUGS.slice(at, at + 2)
            .map(([file]) => `<td><a href="/mugs/${file}">${picture(file)}</a></td>`)
            .join("")}</tr><tr>${MUGS.slice(at, at + 2)
            .map(([, name, price]) => `<td><b>${name}</b><br>€ ${price}</td>`)
            .join("")}</tr>`,
      )
      .join("")}</table>`,
  ),
  {
    ...page(
      "such a table with a cell to spare",
      `<table>${[0, 2]
        .map(
          (at) =>
            `<tr>${MUGS.slice(at, Math.min(at + 2, 3))
              .map(([file]) => `<td><a href="/mugs/${file}">${picture(file)}</a></td>`)
              .join("")}${at ? "<td></td>" : ""}</tr><tr>${MUGS.slice(at, Math.min(at + 2, 3))
              .map(([, name, price]) => `<td><b>${name}</b><br>€ ${price}</td>`)
              .join("")}${at ? "<td></td>" : ""}</tr>`,
        )
        .join("")}</table>`,
    ),
    products: WARES.slice(0, 3),
  },
  page(
    "the heading with the name before a box that is headed alike in all",
    `<div>${each(([file, name, price]) => `<div class="r-SubTitle"><h2 class="r-SubTitle-t">${name}</h2></div><div class="box"><a href="/mugs/${file}">${picture(file)}</a><div><h2>ABOUT THIS PIECE</h2><p>Thrown and glazed here.</p><p>Price € ${price}</p></div></div>`)}</div>`,
  ),
  {
    name: "three views and three lines of a price in one tile are no three products",
    head: GRID,
    body: `<div class="g">${each(([file, name, price]) => `<div class="card"><div><a href="/mugs/${file}">${picture(file)}</a><img src="/i/${file}-2.jpg" width="60" height="76"><img src="/i/${file}-3.jpg" width="60" height="76"></div><h3>${name}</h3><div><s>€ 99.00</s><b>€ ${price}</b><i>€ ${price}</i></div></div>`)}</div>`,
    kind: "listing",
    products: WARES,
  },
  {
    name: "steps of a way with a picture and a fee each, loose, are none",
    body: `<h1>How to join</h1><div>${["Register", "Visit", "Fire"].map((name, i) => `${picture(`step-${i}`)}<h3>${name}</h3><p>Fee € ${i + 5}.00</p>`).join("")}</div><a href="/cart">Cart</a>`,
    kind: "none",
    products: [],
  },
];
