import type { ExpectedProduct } from "./cases/page-case.ts";

/** What of a found product a case speaks about. */
export interface Told {
  readonly title: string;
  readonly role: string;
  readonly price: { readonly amount: number; readonly currency: string | null } | null;
  readonly images: readonly string[];
}

/** A product as one line; the picture only as far as the case names it. */
export const lineOf = (product: Told, pictures: readonly string[]): string => {
  const first = product.images[0] ?? "";
  const picture = pictures.find((part) => first.includes(part)) ?? first;
  const price = product.price ? `${product.price.amount} ${product.price.currency}` : "no price";
  return `${product.role}: ${product.title} | ${price} | ${picture}`;
};

export const expectedLine = ({ role = "tile", title, price, picture }: ExpectedProduct): string =>
  `${role}: ${title} | ${price ? `${price[0]} ${price[1]}` : "no price"} | ${picture}`;
