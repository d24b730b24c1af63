import type { Cluster } from "../clusters.ts";
import { nearest, parentOf, WHOLE } from "../dom/ancestors.ts";
import { letters } from "../dom/letters.ts";
import { linkUrl } from "../dom/link.ts";
import { PICTURE_FILE } from "../picture/picture-file.ts";
import type { Survey } from "../survey.ts";

/** How far above picture and price the title or link may hang. */
const STEPS_UP = 4;

/** Links of headings. */
const HEADED = ":is(h2,h3,h4,h5) a[href]";

/** Whether an element has a heading with the same link as a tile in it that has none. */
function isHeadedFor(around: Element, tile: Element, link: Element): boolean {
  const url = linkUrl(link);
  const leadsThere = (anchor: Element) => linkUrl(anchor) === url;
  return (
    url !== null &&
    tile.querySelector(HEADED) === null &&
    [...around.querySelectorAll(HEADED)].some(leadsThere)
  );
}

/** Whether a tile's first link leads no further than to its picture, and a heading beside the tile does. */
function leadsToPicture(tile: Element, link: Element, survey: Survey): boolean {
  if (!PICTURE_FILE.test(link.getAttribute("href") ?? "") || tile.querySelector(HEADED)) return false;
  const own = survey.picturesIn.get(tile);
  const holdsMore = (up: Element) => survey.picturesIn.get(up) !== own;
  const around = nearest(tile, (up) => holdsMore(up) || up.querySelector(HEADED) !== null);
  return around !== null && !holdsMore(around);
}

/** The whole tile around a cluster: grown until it has a title and a link, never into a neighbour. */
export function tileRoot({ root: smallest, pictures, prices }: Cluster, survey: Survey): Element {
  const priced = prices.reduce((sum, price) => sum + letters(price.text), 0);
  let root = smallest;
  for (let step = 0; step < STEPS_UP; step++) {
    const up = parentOf(root);
    const linked = root.closest("a[href]") ?? root.querySelector("a[href]");
    if (!up || WHOLE.test(up.tagName)) break;
    const tells = linked && letters(root.textContent.slice(0, 2000)) > priced + 2;
    if (tells && !isHeadedFor(up, root, linked) && !leadsToPicture(root, linked, survey)) break;
    if (survey.pricesIn.get(up) !== survey.pricesIn.get(smallest)) break;
    if ((survey.picturesIn.get(up) ?? 0) > pictures.length) break;
    root = up;
  }
  return root;
}
