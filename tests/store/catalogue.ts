import { CATALOGUE_TABLE } from "./catalogue-table.ts";
import { type Picture, type Product, readCatalogue } from "./read-catalogue.ts";

export type { Picture, Product, Variant } from "./read-catalogue.ts";

/** The 48 products of the invented store, in the order of its listing. */
export const CATALOGUE: readonly Product[] = readCatalogue(CATALOGUE_TABLE);

/** Every picture that the store shows. */
export const PICTURES: readonly Picture[] = CATALOGUE.flatMap((product) =>
  product.variants.flatMap((variant) => variant.pictures),
);

/** The product with this id, or undefined. */
export const productOf = (id: string): Product | undefined => CATALOGUE.find((product) => product.id === id);

/** The path of a picture on the image host: `/media` may be read by other sites, `/photos` may not. */
export const picturePath = (picture: Picture): string =>
  `/${picture.cors ? "media" : "photos"}/${picture.id}.jpg`;
