import { CATALOGUE, type Product } from "../catalogue.ts";
import { type Addresses, escaped } from "./html.ts";
import { layout } from "./layout.ts";
import { itemList, type Lot, lotsOf, tile } from "./tile.ts";

const FILTERS = `<aside class="filters" aria-label="Filters"><h2>Narrow it down</h2>
<fieldset><legend class="hidden">Size</legend>${["8", "10", "12", "14", "16", "18"].map((size) => `<label><input type="checkbox"> Size ${size}</label>`).join("")}</fieldset>
<fieldset><legend class="hidden">Price</legend><label><input type="checkbox"> Under £50</label><label><input type="checkbox"> £50 to £100</label><label><input type="checkbox"> Over £100</label></fieldset>
<fieldset><legend class="hidden">Offers</legend><label><input type="checkbox"> In the sale</label></fieldset></aside>`;

const shelf = (addresses: Addresses, name: string, lots: readonly Lot[]): string =>
  `<p class="crumbs"><a href="/">Home</a> / ${escaped(name)}</p>
<div class="heading"><h1>${escaped(name)}</h1><p>${lots.length} pieces · Newest first</p></div>
<div class="shelf">${FILTERS}<ul class="tiles">
${lots.map((lot) => tile(addresses, lot)).join("\n")}
</ul></div>`;

/** A listing with structured data. */
export function listingPage(addresses: Addresses, name: string, products: readonly Product[]): string {
  const lots = lotsOf(products, products.length);
  return layout(name, shelf(addresses, name, lots), itemList(addresses, lots));
}

/** `count` tiles at once, for measuring. */
export function tilesPage(addresses: Addresses, count: number): string {
  const lots = lotsOf(CATALOGUE, count);
  return layout("Everything", shelf(addresses, "Everything", lots), itemList(addresses, lots));
}
