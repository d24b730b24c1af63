import { parentOf, WHOLE } from "../dom/ancestors.ts";
import { leadsToCollection } from "../dom/link.ts";
import type { MainDraft } from "../main/main-draft.ts";
import { kindOf } from "../members.ts";
import type { FoundProduct } from "../product.ts";

/** Elements around each member of a list, up to the list: a table in a table cell has four. */
const MOST_WRAPS = 4;
/** Tiles of one kind from which on a store that shows no price at all is believed to show products. */
export const LEAST_ALIKE = 3;

/** An address without what marks a place on its page or a way to it. */
const pageOf = (link: string): string => link.replace(/\/?([?#].*)?$/, "");
/** The path a link lies in: products of one store share it, its campaigns do not. */
export const branch = (link: string | null): string => link?.replace(/[^/]*\/?([?#].*)?$/, "") ?? "";
/** Whether a path is more than a store's own address. */
const isDeep = (path: string): boolean => /^https?:\/\/[^/]+\/./.test(path);

/** What the tiles that have a price have in common. */
export interface Kin {
  readonly branches: ReadonlySet<string>;
  /** Their lists, each with what its members are called. */
  readonly lists: ReadonlyMap<Element, string>;
  /** Whether this may be one of several products of a store that shows no price at all; `named`: its markup says so. */
  mayBe(link: string, named: boolean): boolean;
}

/** The lists that an element may be a member of, and what it is called there: by itself and with what is around it. */
export function placesOf(element: Element): readonly (readonly [list: Element, kind: string])[] {
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

/** Whether a link leads to another product of the script that shows the one a page is about. */
function isOfSameScript(link: string, main: MainDraft | null, { URL: here }: Document): boolean {
  const [from, to] = [URL.parse(here), URL.parse(link)];
  return (
    main !== null && to?.pathname === from?.pathname && Boolean(to?.search) && to?.search !== from?.search
  );
}

/** Whether a list has several members of a kind. */
const hasMany = (list: Element, kind: string): boolean =>
  [...list.children].filter((member) => kind.startsWith(`${kindOf(member)}>`)).length >= LEAST_ALIKE;

/**
 * In a store that shows no price, products lie where the one lies that the page is about; or the page is a collection
 * by its address, and what its markup calls products lies elsewhere, in one place. A landing page's categories lie below it.
 */
function unpricedKin(main: MainDraft | null, doc: Document): Kin["mayBe"] {
  const { URL: here } = doc;
  if (main) {
    const own = main.prices.length > 0 || main.described?.price ? "" : branch(here);
    return (link) =>
      (isDeep(own) && branch(link) === own && pageOf(link) !== pageOf(here)) ||
      isOfSameScript(link, main, doc);
  }
  const collection = leadsToCollection(here);
  return (link, named) =>
    collection && named && isDeep(branch(link)) && !branch(link).startsWith(`${pageOf(here)}/`);
}

/** What tiles with a price have in common; `main`: what the page is about. */
export function kinOf(tiles: readonly FoundProduct[], main: MainDraft | null, doc: Document): Kin {
  const places = tiles.map(({ root }) => placesOf(root));
  const members = new Map<Element, number>();
  for (const [list] of places.flat()) members.set(list, (members.get(list) ?? 0) + 1);
  // Each tile's list is the first that it shares with another; that of a single one the first with others of its kind.
  const shared = places.flatMap((around) => {
    const first =
      around.find(([list]) => (members.get(list) ?? 0) > 1) ??
      (tiles.length === 1 ? around.find(([list, kind]) => hasMany(list, kind)) : undefined);
    return first ? [first] : [];
  });
  return {
    branches: new Set(tiles.map((tile) => branch(tile.link))),
    lists: new Map(shared),
    mayBe: tiles.length > 0 ? (link) => isOfSameScript(link, main, doc) : unpricedKin(main, doc),
  };
}
