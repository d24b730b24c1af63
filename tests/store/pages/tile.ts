import { type Product, picturePath, type Variant } from "../catalogue.ts";
import { type Addresses, escaped, linkedData, pounds } from "./html.ts";

/** A product's place in a long list that repeats the catalogue: 0 the first time round. */
export interface Lot {
  readonly product: Product;
  readonly round: number;
}

/** `count` lots: the catalogue, again and again. */
export const lotsOf = (products: readonly Product[], count: number): Lot[] =>
  Array.from({ length: count }, (_, i) => {
    const product = products[i % products.length];
    return product ? [{ product, round: Math.floor(i / products.length) }] : [];
  }).flat();

/** A repeated product has an address of its own, as a second lot would. */
export const linkOf = ({ product, round }: Lot): string =>
  `/product/${product.id}${round ? `?lot=${round}` : ""}`;

/** The address of a variant's front picture. */
export const frontOf = ({ cdnUrl }: Addresses, variant: Variant, round = 0): string =>
  `${cdnUrl}${picturePath(variant.pictures[0])}?width=480${round ? `&lot=${round}` : ""}`;

export const cost = ({ price, was }: Product): string =>
  was === null
    ? `<p class="cost">${pounds(price)}</p>`
    : `<p class="cost"><del><span class="hidden">Was </span>${pounds(was)}</del><ins><span class="hidden">Now </span>${pounds(price)}</ins></p>`;

const HEART =
  '<svg viewBox="0 0 24 24" width="18" height="18" fill="none" stroke="currentColor" stroke-width="1.5" aria-hidden="true"><path d="M12 20S3 14 3 8.5A4.5 4.5 0 0 1 12 7a4.5 4.5 0 0 1 9 1.5C21 14 12 20 12 20z"/></svg>';

/** A tile of a listing. `lazy`: the picture waits for the page's own script, with a placeholder in its place. */
export function tile(addresses: Addresses, lot: Lot, lazy = false): string {
  const { product, round } = lot;
  const [front] = product.variants;
  const source = frontOf(addresses, front, round);
  const words = `alt="${escaped(product.title)}" width="480" height="640"`;
  const image = lazy
    ? `<img class="wait" src="data:image/gif;base64,R0lGODlhAQABAIAAAPDs5QAAACH5BAAAAAAALAAAAAABAAEAAAICRAEAOw==" data-src="${escaped(source)}" ${words}>`
    : `<img src="${escaped(source)}" ${words}>`;
  const shades =
    product.variants.length > 1
      ? `<ul class="shades">${product.variants.map(({ color, dyes }) => `<li title="${escaped(color)}" style="background:${dyes[0]}"></li>`).join("")}</ul>`
      : "";
  return `<li class="tile"><a class="frame" href="${linkOf(lot)}">${image}</a>${product.was === null ? "" : '<span class="flag">Sale</span>'}<button class="heart" aria-label="Remember ${escaped(product.title)}">${HEART}</button><h3><a href="${linkOf(lot)}">${escaped(product.title)}</a></h3>${cost(product)}${shades}</li>`;
}

/** The listing as structured data: an ItemList of Products with their offers. */
export const itemList = (addresses: Addresses, lots: readonly Lot[]): string =>
  linkedData({
    "@type": "ItemList",
    numberOfItems: lots.length,
    itemListElement: lots.map((lot, i) => ({
      "@type": "ListItem",
      position: i + 1,
      item: {
        "@type": "Product",
        name: lot.product.title,
        url: `${addresses.shopUrl}${linkOf(lot)}`,
        image: frontOf(addresses, lot.product.variants[0], lot.round),
        offers: {
          "@type": "Offer",
          price: lot.product.price.toFixed(2),
          priceCurrency: lot.product.currency,
          availability: "https://schema.org/InStock",
        },
      },
    })),
  });
