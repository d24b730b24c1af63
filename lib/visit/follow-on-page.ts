import { pictureReader } from "../pixels/picture-reader.ts";
import { type FollowDeps, type Follower, followProducts } from "./follow-products.ts";
import { readPalette } from "./read-palette.ts";

/** Follows products with the pictures of this page. */
export function followOnPage(deps: FollowDeps): Follower {
  const read = pictureReader(deps.signal);
  return followProducts(deps, (product, slot, source) => readPalette(product, slot, source, read, deps.ask));
}
