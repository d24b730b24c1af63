import { BIG, expected, expectedMain, GRID, type PageCase, picture } from "./page-case.ts";

/** What a page leaves unsaid: the name of a block, the end of a heading, which of its headings names. */
export const LEFT_UNSAID: readonly PageCase[] = [
  {
    name: "a price behind a label on the line before, in a paragraph with prose; one can have the product reserved",
    lang: "nl",
    url: "http://shop.localhost/stoelen/werkplaatskruk-hendrik",
    head: "<title>Werkplaatskruk Hendrik | Stoel en kruk online kopen | Tallow</title>",
    body: `<div id="content" style="display:flex"><div><h6>Werkplaatskruk Hendrik</h6><div>${BIG("kruk-a")}</div><p><span><a href="#">Reserveer product</a></span></p></div><div><h6>Productinformatie:</h6><div><p>Productcategorie:<br><b>Stoel en kruk</b><br>Periode:<br><b>1928</b><br>Prijs:<br><b>245 €</b><br>Omschrijving:<br><br>Geperst staal met houten zitting, uit een fabriek aan de rivier. Mooie patina.</p></div></div></div>`,
    kind: "product",
    products: [expectedMain("Werkplaatskruk Hendrik | 245 | EUR | kruk-a.jpg")],
    layout: true,
  },
  {
    name: "a heading of the last tile that never ends, under a call to buy",
    lang: "es",
    url: "http://shop.localhost/index",
    head: GRID,
    body: `<section><h1>Bienvenida a Taller Norte</h1><button>Comprar ahora</button></section><section><h2>Categorías</h2><div class="g">${["Mesas", "Sillas", "Luces"].map((name, i) => `<div>${picture(`grupo-${i}`)}<h3>${name}</h3></div>`).join("")}</div></section><section><h2>Destacados</h2><div class="g">${["Mesa Álamo", "Silla Olmo", "Luz Sauce"].map((name, i) => `<div class="card">${picture(`mueble-${i}`)}<h3>${name}</h3><p>Hecha a mano.</p><span class="precio">S/. 35${i}</span></div>`).join("")}<div class="card">${picture("mueble-3")}<h3>Banco Fresno <p>Para dos.</p><span class="precio">S/. 250</span></div></div></section>`,
    kind: "listing",
    products: expected(
      "Mesa Álamo | 350 | PEN | mueble-0.jpg",
      "Silla Olmo | 351 | PEN | mueble-1.jpg",
      "Luz Sauce | 352 | PEN | mueble-2.jpg",
      "Banco Fresno Para dos. | 250 | PEN | mueble-3.jpg",
    ),
  },
  {
    name: "headings that stand on the page of any product before its name, cards beside it without any name",
    lang: "es",
    url: "http://shop.localhost/detalles_producto",
    head: `<title>Document</title>${GRID}`,
    body: `<div id="detalle_producto"><h4>Detalles de Producto</h4><div>${BIG("lona-0")}</div><div id="detalles"><h2>Detalles</h2><div><h2>ZAPATILLAS LONA CLARA</h2><p>S/. 359.90</p><p>Cantidad: <input type="text" value="1"></p><a href="factura_pago">Pagar</a></div></div></div><h4>Productos Similares</h4><div class="g">${["a", "b", "c"].map((name) => `<div class="card"><img src="/i/otra-${name}.jpg" alt="..." width="220" height="280"><div><a href="detalles_producto">Ver Detalles</a> <a href="carrito">Añadir a Carrito</a></div></div>`).join("")}</div>`,
    kind: "product",
    products: [expectedMain("ZAPATILLAS LONA CLARA | 359.9 | PEN | lona-0.jpg")],
    layout: true,
  },
];
