import { addTo, nameOf, parentOf } from "./ancestors.ts";
import type { Context } from "./context.ts";
import { leadsToGroup, leadsToProduct, linkIn, linkUrl } from "./link.ts";
import type { FoundProduct } from "./product.ts";
import type { Survey } from "./survey.ts";

/** Levels above a picture within which a tile without a price is looked for. */
const LEVELS = 7;
/** Pictures in one such tile: front, back, a few angles. */
const MOST_PICTURES = 4;
/** Pictures looked at between two yields. */
const STRIDE = 20;

const TILE_NAME =
  /(^|[\s_-])product(?!s|-?(categor|grid|list|gallery|media|image|thumb))([\s_-]|$)|product-?(card|item|tile)/i;
const GROUP_NAME = /categor|collection|promo|banner|campaign|editorial|blog|article/i;

/** The path a link lies in: products of one store share it, its campaigns do not. */
const branch = (link: string | null): string => link?.replace(/[^/]*\/?([?#].*)?$/, "") ?? "";

/** The tile around a picture that the page says is a product's, or null. */
function rootAround(
  picture: Element,
  survey: Survey,
  context: Context,
  branches: ReadonlySet<string>,
): Element | null {
  let named = false;
  let up = parentOf(picture);
  for (let level = 0; up && level < LEVELS; up = parentOf(up), level++) {
    const name = `${nameOf(up)} ${up.localName}`;
    const crowded = survey.pricesIn.has(up) || (survey.picturesIn.get(up) ?? 0) > MOST_PICTURES;
    if (crowded || GROUP_NAME.test(name)) return null;
    named ||= TILE_NAME.test(name);
    const anchor = linkIn(up, picture);
    const link = anchor && linkUrl(anchor);
    if (!link || leadsToGroup(link) || !/\p{L}{2}/u.test(up.textContent)) continue;
    const kin = branches.size > 0 ? named && branches.has(branch(link)) : leadsToProduct(link);
    if (kin || context.describedAs(link, "")) return up;
  }
  return null;
}

/**
 * Products shown without a price: sold out, on request, or a store that shows none. The page's data, its markup or its
 * addresses must say that they are products; a picture with a caption is none. Gives each with its pictures.
 */
export function* unpricedTiles(
  survey: Survey,
  context: Context,
  tiles: readonly FoundProduct[],
  taken: (picture: Element) => boolean,
): Generator<undefined, ReadonlyMap<Element, readonly Element[]>, undefined> {
  const branches = new Set(tiles.map((tile) => branch(tile.link)));
  const roots = new Map<Element, Element[]>();
  for (const [i, picture] of survey.pictures.entries()) {
    if (i % STRIDE === 0) yield;
    const root = taken(picture) ? null : rootAround(picture, survey, context, branches);
    if (root) addTo(roots, root, picture);
  }
  return roots;
}
