import { expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

/** Amounts that no sign of money stands by: a label, the place of a basket or the page's language tells of them. */
export const WITHOUT_A_SIGN: readonly PageCase[] = [
  {
    name: "numbers behind a label that says they are prices, in one text, behind an element, on the next line",
    url: "http://shop.localhost/all.php",
    head: GRID,
    body: `<nav><a href="/">Home</a><a href="/all.php">All</a></nav><div class="g"><div>${picture("bowl")}<h4>Oak bowl</h4><p>Price: 240</p></div><div>${picture("spoon")}<h4>Oak spoon</h4><p><b>Price:</b> 35.50</p></div><div>${picture("board")}<h4>Oak board</h4><p><span>Price :</span> <span>1,150</span></p></div></div>`,
    kind: "listing",
    products: expected("Oak bowl | 240 | | bowl", "Oak spoon | 35.5 | | spoon", "Oak board | 1150 | | board"),
  },
  {
    name: "one ware in a table without a heading, its price behind a label",
    url: "http://shop.localhost/balm/productDesc/104",
    head: "<title>Product Description</title>",
    body: `<nav><a href="/home">Tallow</a><a href="/all">Products</a></nav><form method="post" action="/addCart/104"><table><tr><td id="name">Beeswax Balm</td></tr><tr><td rowspan="2"><img src="/i/balm.jpg" width="200" height="200"></td><td>Description:Made by hand from wax and rose oil</td></tr><tr><td>Price:240</td></tr><tr><td><input type="submit" value="ADD TO CART"></td></tr></table></form>`,
    kind: "product",
    products: [expectedMain("Beeswax Balm | 240 | | balm.jpg")],
    layout: true,
  },
  {
    name: "amounts with cents alone, where a link says that there is a basket and nothing else does",
    lang: "fr",
    url: "http://shop.localhost/index.php?page=3",
    head: GRID,
    body: `<nav><a href="index.php">Accueil</a><a href="#">Robes</a><a href="#">Panier (2)</a></nav><div class="g">${["Ondine", "Capucine", "Isaure", "Blanche"].map((name, i) => `<div class="thumbnail"><a href="#">${picture(`robe-${i}`)}</a><div class="caption"><h4>Robe ${name}</h4>12${i}.90<p><a href="#" class="btn">Voir détails</a></p></div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Robe Ondine | 120.9 | | robe-0",
      "Robe Capucine | 121.9 | | robe-1",
      "Robe Isaure | 122.9 | | robe-2",
      "Robe Blanche | 123.9 | | robe-3",
    ),
  },
  {
    name: "one whole number in each tile that can be bought, which differs",
    lang: "vi",
    url: "http://shop.localhost/hang",
    head: GRID,
    body: `<h1>Danh sách</h1><div class="g">${["Bàn phím cơ", "Chuột không dây", "Tai nghe nhỏ", "Loa để bàn"].map((name, i) => `<div class="col"><h3>${name}</h3>${picture(`hang-${i}`)}<div>12${i}0000</div><div>Dùng pin 50 giờ.</div><div>Còn hàng</div><a class="btn" href="/addcart/${i}">Thêm vào giỏ</a></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Bàn phím cơ | 1200000 | VND | hang-0",
      "Chuột không dây | 1210000 | VND | hang-1",
      "Tai nghe nhỏ | 1220000 | VND | hang-2",
      "Loa để bàn | 1230000 | VND | hang-3",
    ),
  },
  {
    name: "dollars of the country that the shop is named after",
    head: `<title>Tailoring – Wren Tailors Australia</title>${GRID}`,
    body: `<div class="g">${["Wool jacket", "Linen jacket", "Silk tie"].map((name, i) => `<div><a href="/products/t-${i}">${picture(`tailored-${i}`)}<h2>${name}</h2></a><span>$39${i}.00</span></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Wool jacket | 390 | AUD | tailored-0",
      "Linen jacket | 391 | AUD | tailored-1",
      "Silk tie | 392 | AUD | tailored-2",
    ),
  },
  {
    name: "rows that a picture is pressed in to buy",
    url: "http://shop.localhost/looms.php",
    body: `<h1>Looms</h1><table>${["Rigid heddle loom", "Floor loom", "Table loom with four shafts", "Tapestry loom"].map((name, i) => `<tr><td>${picture(`loom-${i}`)}</td><td>${name}</td><td><input type="image" src="/icons/add-to-cart.png" width="166" height="36"></td></tr>`).join("")}</table>`,
    kind: "listing",
    products: expected(
      "Rigid heddle loom | | | loom-0",
      "Floor loom | | | loom-1",
      "Table loom with four shafts | | | loom-2",
      "Tapestry loom | | | loom-3",
    ),
  },
  {
    name: "a language that is spoken in countries of one money, lempiras by their short name",
    lang: "it",
    url: "http://shop.localhost/vetrina",
    head: GRID,
    body: `<a href="/carrello">Carrello</a><div class="g">${["Pecorino stagionato", "Caciotta mista", "Ricotta di pecora"].map((name, i) => `<div class="prodotto">${picture(`forma-${i}`)}<h3>${name}</h3><span class="prezzo">1${i},50</span></div>`).join("")}<div class="prodotto">${picture("anello")}<h3>Anello liscio</h3><span class="prezzo">Lps.1,500</span></div></div>`,
    kind: "listing",
    products: expected(
      "Pecorino stagionato | 10.5 | EUR | forma-0",
      "Caciotta mista | 11.5 | EUR | forma-1",
      "Ricotta di pecora | 12.5 | EUR | forma-2",
      "Anello liscio | 1500 | HNL | anello",
    ),
  },
];
