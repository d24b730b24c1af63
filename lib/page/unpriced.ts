import { addTo, nameOf, parentOf } from "./ancestors.ts";
import { WHOLE } from "./clusters.ts";
import type { Context } from "./context.ts";
import { leadsToGroup, leadsToProduct, linkIn, linkUrl } from "./link.ts";
import type { FoundProduct } from "./product.ts";
import type { Survey } from "./survey.ts";

/** Levels above a picture within which a tile without a price is looked for. */
const LEVELS = 7;
/** Pictures in one such tile: front, back, a few angles. */
const MOST_PICTURES = 4;
/** Elements around each member of a list, up to the list: a table in a table cell has four. */
const MOST_WRAPS = 4;
/** Pictures looked at between two yields. */
const STRIDE = 20;

const TILE_NAME =
  /(^|[\s_-])product(?!s|-?(categor|grid|list|gallery|media|image|thumb))([\s_-]|$)|product-?(card|item|tile)/i;
const GROUP_NAME = /categor|collection|promo|banner|campaign|editorial|blog|article/i;

/** The path a link lies in: products of one store share it, its campaigns do not. */
const branch = (link: string | null): string => link?.replace(/[^/]*\/?([?#].*)?$/, "") ?? "";

/** What the tiles that have a price have in common. */
interface Kin {
  readonly branches: ReadonlySet<string>;
  /** Their lists, each with what its members are called. */
  readonly lists: ReadonlyMap<Element, string>;
}

const kindOf = ({ tagName, classList }: Element): string => `${tagName} ${classList[0] ?? ""}`;

/** The lists that an element may be a member of, and what it is called there: by itself and with what is around it. */
function placesOf(element: Element): readonly (readonly [list: Element, kind: string])[] {
  const places: [Element, string][] = [];
  let kind = "";
  for (let inner: Element | null = element; inner && places.length < MOST_WRAPS; ) {
    const around = parentOf(inner);
    if (!around || WHOLE.test(around.tagName)) break;
    kind = `${kindOf(inner)}>${kind}`;
    places.push([around, kind]);
    inner = around;
  }
  return places;
}

function kinOf(tiles: readonly FoundProduct[]): Kin {
  const places = tiles.map(({ root }) => placesOf(root));
  const members = new Map<Element, number>();
  for (const [list] of places.flat()) members.set(list, (members.get(list) ?? 0) + 1);
  // Each tile's list is the first that it shares with another.
  const shared = places.flatMap((around) => {
    const first = around.find(([list]) => (members.get(list) ?? 0) > 1);
    return first ? [first] : [];
  });
  return { branches: new Set(tiles.map((tile) => branch(tile.link))), lists: new Map(shared) };
}

/** The tile around a picture that the page says is a product's, or null. */
function rootAround(
  picture: Element,
  survey: Survey,
  context: Context,
  { branches, lists }: Kin,
): Element | null {
  let named = false;
  let up = parentOf(picture);
  for (let level = 0; up && level < LEVELS; up = parentOf(up), level++) {
    // A custom element's name tells as a class does.
    const name = up.localName.includes("-") ? `${nameOf(up)} ${up.localName}` : nameOf(up);
    const crowded = survey.pricesIn.has(up) || (survey.picturesIn.get(up) ?? 0) > MOST_PICTURES;
    if (crowded || GROUP_NAME.test(name)) return null;
    named ||= TILE_NAME.test(name);
    const anchor = linkIn(up, picture);
    const link = anchor && linkUrl(anchor);
    if (!link || leadsToGroup(link) || !/\p{L}{2}/u.test(up.textContent)) continue;
    const beside = placesOf(up).some(([list, kind]) => lists.get(list) === kind);
    const kin = branches.size > 0 ? (named || beside) && branches.has(branch(link)) : leadsToProduct(link);
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
  const kin = kinOf(tiles);
  const roots = new Map<Element, Element[]>();
  for (const [i, picture] of survey.pictures.entries()) {
    if (i % STRIDE === 0) yield;
    const root = taken(picture) ? null : rootAround(picture, survey, context, kin);
    if (root) addTo(roots, root, picture);
  }
  return roots;
}
