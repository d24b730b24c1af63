import { countUp, nearest } from "../dom/ancestors.ts";
import type { MainPage } from "./main-page.ts";

/** Where a heading stands among the tiles of its page. */
export interface Standing {
  /** The heading and what is around it. */
  readonly above: ReadonlySet<Element>;
  /** Whether the heading is in no list of tiles and there are none beside it. */
  readonly isAlone: boolean;
  /** How many tiles each element holds. */
  readonly tilesIn: ReadonlyMap<Element, number>;
  readonly inTile: (element: Element) => boolean;
  /** Whether a button or a field is the heading's: the two meet before a tile does. */
  readonly isOwn: (control: Element) => boolean;
}

export function standingOf(heading: Element, { beside, context: { furniture } }: MainPage): Standing {
  const above = new Set<Element>();
  nearest(heading, (up) => !above.add(up));
  const tiles = new Set<Element>();
  const tilesIn = new Map<Element, number>();
  for (const part of beside.flatMap(({ parts }) => parts)) {
    if (above.has(part)) continue;
    tiles.add(part);
    countUp(tilesIn, part);
  }
  const inTile = (element: Element) => nearest(element, (up) => tiles.has(up)) !== null;
  const isOwn = (control: Element) => {
    const meet = nearest(control, (up) => above.has(up) || tilesIn.has(up));
    const isAside = () => furniture.isApart(control) && furniture.isHidden(control);
    return meet !== null && above.has(meet) && !inTile(control) && !isAside();
  };
  return { above, isAlone: tiles.size === 0, tilesIn, inTile, isOwn };
}
