import type { Place } from "./hang.ts";

/** A box on a picture, in CSS pixels from the picture's top left corner. */
export interface Spot {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Height that a badge of two lines takes with its distance from the edge, in CSS pixels; from the badge's style. */
export const STRIP = 52;

/** Narrower strips, in CSS pixels, hold no badge at all: cloth with its distance from both edges. */
export const LEAST_WIDTH = 40;

/** Lengths of a picture, in CSS pixels. */
interface Size {
  readonly width: number;
  readonly height: number;
  /** Height of the part, from its top, that a badge is best on. */
  readonly shown: number;
}

/**
 * Where on a picture a badge covers nothing of `taken`, on the part that is best or else on all of it: as low as it can
 * be with room for words, else in the widest free strip; where there is none, at the bottom of that part.
 */
export function freePlace({ width, height, shown }: Size, taken: readonly Spot[], enough: number): Place {
  const lowest: Place = { left: 0, bottom: shown, width };
  if (!taken.length) return lowest;
  return freeStrip(width, shown, taken, enough) ?? freeStrip(width, height, taken, enough) ?? lowest;
}

/** The lowest free strip with room for words down to some height, else the widest; null where no badge fits. */
function freeStrip(width: number, height: number, taken: readonly Spot[], enough: number): Place | null {
  const edges = [height, ...taken.map(({ top }) => top), STRIP];
  const bottoms = edges.filter((bottom) => bottom >= STRIP && bottom <= height).sort((a, b) => b - a);
  let best: Place = { left: 0, bottom: height, width: 0 };
  for (const bottom of bottoms) {
    const strip = widestGap(
      width,
      taken.filter((spot) => spot.top < bottom && spot.bottom > bottom - STRIP),
    );
    if (strip.width > best.width) best = { ...strip, bottom };
    if (best.width >= Math.min(enough, width)) return best;
  }
  return best.width >= LEAST_WIDTH ? best : null;
}

/** The widest part of a line of some width that no spot stands on; of two, the left one. */
function widestGap(width: number, spots: readonly Spot[]): { left: number; width: number } {
  let best = { left: 0, width: 0 };
  let from = 0;
  const ordered = spots.toSorted((a, b) => a.left - b.left);
  for (const { left, right } of [...ordered, { left: width, right: width }]) {
    if (left - from > best.width) best = { left: from, width: left - from };
    from = Math.max(from, right);
  }
  return best;
}
