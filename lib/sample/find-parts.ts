import { at, intAt } from "./plane.ts";
import { type Raster, SKETCH_PIXELS, sketchPlane } from "./raster.ts";

/** 0–1. Pixels that weigh no more belong to no part. */
const CLOTH = 0.5;
/** Pixels of the sketch. Parts no further apart than this hang together: the other stripe lies between. */
const GAP = 2;

/** After `findParts`: the pixel that stands for the part of each pixel; −1 where it belongs to none. */
export const partOf = new Int32Array(SKETCH_PIXELS);
/** Weight of a part, at the pixel that stands for it. */
export const partWeight = sketchPlane();

/**
 * Connected parts of each label (union-find with path halving: R. Tarjan, 1975). `label`: −1 where there is none;
 * `weights`: 0–1.
 */
export function findParts(
  { width, count }: Pick<Raster, "width" | "count">,
  label: Int32Array,
  weights: Float32Array,
): void {
  for (let i = 0, x = 0; i < count; i++, x = x + 1 === width ? 0 : x + 1) {
    const own = at(weights, i) > CLOTH ? intAt(label, i) : -1;
    partOf[i] = own < 0 ? -1 : i;
    partWeight[i] = at(weights, i);
    if (own < 0) continue;
    for (let gap = 1; gap <= GAP && gap <= x; gap++) {
      if (intAt(label, i - gap) !== own || intAt(partOf, i - gap) < 0) continue;
      unite(i, find(i - gap));
      break;
    }
    for (let gap = 1, up = i - width; gap <= GAP && up >= 0; gap++, up -= width) {
      if (intAt(label, up) !== own || intAt(partOf, up) < 0) continue;
      unite(find(i), find(up));
      break;
    }
  }
  for (let i = 0; i < count; i++) if (intAt(partOf, i) >= 0) partOf[i] = find(i);
}

function find(i: number): number {
  let k = i;
  while (intAt(partOf, k) !== k) {
    const up = intAt(partOf, intAt(partOf, k));
    partOf[k] = up;
    k = up;
  }
  return k;
}

function unite(part: number, into: number): void {
  if (part === into) return;
  partOf[part] = into;
  partWeight[into] = at(partWeight, into) + at(partWeight, part);
}
