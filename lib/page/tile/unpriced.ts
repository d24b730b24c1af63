import type { Context } from "../context.ts";
import { addTo, nameOf, parentOf } from "../dom/ancestors.ts";
import { buttonsIn, buys } from "../dom/buttons.ts";
import { leadsToGroup, leadsToProduct, linkIn, linkUrl } from "../dom/link.ts";
import type { MainDraft } from "../main/main-draft.ts";
import { kindOf } from "../members.ts";
import { isCopy } from "../picture/is-copy.ts";
import { PICTURES } from "../picture/pictures.ts";
import type { FoundProduct } from "../product.ts";
import type { Survey } from "../survey.ts";
import { branch, type Kin, kinOf, LEAST_ALIKE, placesOf } from "./kin.ts";

/** Levels above a picture within which a tile without a price is looked for. */
const LEVELS = 7;
/** Pictures in one such tile: front, back, a few angles. */
const MOST_PICTURES = 4;
/** The same with the copies that a carousel in it makes. */
const MOST_COPIES = 24;
/** Characters in one; with their white space, since templates indent by hundreds. */
const MOST_TEXT = 1500;
const MOST_SOURCE = 4000;
/** Pictures looked at between two yields. */
const STRIDE = 20;

const TILE_NAME =
  /(^|[\s_-])product(?!s|-?(categor|grid|list|gallery|media|image|thumb))([\s_-]|$)|product-?(card|item|tile)/i;
const GROUP_NAME = /categor|(?<!product[-_])collection|promo|banner|campaign|editorial|blog|article/i;

/** A kind whose outermost element has a class. */
const CALLED = /^\S+ [^\s>]/;

/** Addresses in which "p" stands for post: two folders follow. */
const POST = /\/p\/[^/]+\/[^/]+\/./i;

/** Whether a link stays on the site of a page: the last two parts of their hosts agree; under "co.uk" and its like that holds for all. */
function isOwn(link: string, page: string): boolean {
  const [to, from] = [link, page].map((address) =>
    URL.parse(address)?.hostname.split(".").slice(-2).join("."),
  );
  return to === from;
}

/** A tile, and what others like it have in common with it, where it is none without others; "" where it is one alone. */
interface Unpriced {
  readonly root: Element;
  readonly like: string;
}

/** Whether a text is longer than that of a tile. */
const isLong = (text: string): boolean =>
  text.length > MOST_TEXT && (text.length > MOST_SOURCE || text.replace(/\s+/g, " ").length > MOST_TEXT);

/** Whether an element says more than what a badge on its picture does. */
function saysMore(element: Element): boolean {
  const badge = element.querySelector('[class*="stock" i],[class*="badge" i],[class*="label" i]');
  return /\p{L}{2}/u.test(element.textContent.replace(badge?.textContent ?? "", ""));
}

/** Whether an element shows more pictures than one tile does; copies of slides do not count. */
function isCrowded(element: Element, pictures: number): boolean {
  if (pictures <= MOST_PICTURES || pictures > MOST_COPIES) return pictures > MOST_PICTURES;
  return [...element.querySelectorAll(PICTURES)].filter((one) => !isCopy(one)).length > MOST_PICTURES;
}

/** The tile around a picture that the page says is a product's, or null. */
function rootAround(
  picture: Element,
  survey: Survey,
  context: Context,
  { branches, lists, mayBe }: Kin,
): Unpriced | null {
  const { URL: here } = context.doc;
  let named = false;
  let up = parentOf(picture);
  for (let level = 0; up && level < LEVELS; up = parentOf(up), level++) {
    // A custom element's name tells as a class does.
    const name = up.localName.includes("-") ? `${nameOf(up)} ${up.localName}` : nameOf(up);
    if (isLong(up.textContent)) return null;
    const crowded = survey.pricesIn.has(up) || isCrowded(up, survey.picturesIn.get(up) ?? 0);
    if (crowded || GROUP_NAME.test(name)) return null;
    named ||= TILE_NAME.test(name);
    const anchor = linkIn([up], picture);
    const link = anchor && linkUrl(anchor);
    const beside = placesOf(up).find(([list, kind]) => lists.get(list) === kind);
    if (!link && beside && CALLED.test(beside[1]) && saysMore(up)) return { root: up, like: "" };
    if (!link || leadsToGroup(link) || !saysMore(up)) continue;
    const kin =
      branches.size > 0
        ? ((named || leadsToProduct(link)) && branches.has(branch(link))) ||
          (beside && (branches.has(branch(link)) || leadsToProduct(link) || buttonsIn(up).some(buys)))
        : isOwn(link, here) && leadsToProduct(link) && !POST.test(link);
    if (kin || context.describedAs(link, "")) return { root: up, like: "" };
    if (mayBe(link, named)) return { root: up, like: `${kindOf(up)} ${branch(link)}` };
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
  main: MainDraft | null,
  taken: (picture: Element) => boolean,
): Generator<undefined, ReadonlyMap<Element, readonly Element[]>, undefined> {
  const kin = kinOf(tiles, main, context.doc);
  const roots = new Map<Element, Element[]>();
  const alike = new Map<string, Set<Element>>();
  for (const [i, picture] of survey.pictures.entries()) {
    if (i % STRIDE === 0) yield;
    const found = taken(picture) ? null : rootAround(picture, survey, context, kin);
    if (!found) continue;
    addTo(roots, found.root, picture);
    if (found.like) alike.set(found.like, (alike.get(found.like) ?? new Set()).add(found.root));
  }
  for (const few of alike.values()) if (few.size < LEAST_ALIKE) for (const root of few) roots.delete(root);
  return roots;
}
