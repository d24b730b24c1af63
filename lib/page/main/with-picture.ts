import { follows, parentOf, WHOLE } from "../dom/ancestors.ts";
import { leadsAway } from "../dom/link.ts";
import { areaOf } from "../picture/picture-area.ts";

/** A picture outside a block is its own where it is so many times as large as all inside: those are banners and seals. Layout choice. */
const LARGER = 2;
/** Levels above the block within which it stands. */
const LEVELS = 2;

/** A block, or the one around it whose much larger picture stands before it; not beyond a tile, of which `tilesIn` knows how many each element holds. */
export function withPicture(
  block: Element,
  pictures: readonly Element[],
  tilesIn: ReadonlyMap<Element, number>,
): Element {
  const largest = Math.max(...pictures.filter((one) => block.contains(one)).map(areaOf));
  let around = parentOf(block);
  for (let level = 0; around && level < LEVELS; level++, around = parentOf(around)) {
    const wider = around;
    if (WHOLE.test(wider.tagName) || tilesIn.has(wider)) break;
    const isOwn = (one: Element) =>
      wider.contains(one) && follows(one, block) && !one.contains(block) && !leadsAway(one);
    if (pictures.some((one) => isOwn(one) && areaOf(one) > LARGER * largest)) return wider;
  }
  return block;
}
