import { GRID_PIXELS, type Picture } from "./picture.ts";
import { at } from "./plane.ts";

/** Pixels. Parts no further apart than this hang together: the other stripe lies between. */
const GAP = 4;

const root = new Int32Array(GRID_PIXELS);
const weight = new Float32Array(GRID_PIXELS);

/**
 * For each label the weight of its largest connected part (union-find with path halving:
 * R. Tarjan, 1975). `label` −1 belongs to nothing.
 */
export function largestParts(
  { width, count }: Picture,
  label: Int32Array,
  weights: Float32Array,
  labels: number,
): number[] {
  const find = (i: number): number => {
    let k = i;
    while (at(root, k) !== k) {
      root[k] = at(root, at(root, k));
      k = at(root, k);
    }
    return k;
  };
  for (let i = 0; i < count; i++) {
    root[i] = i;
    weight[i] = at(weights, i);
    const x = i % width;
    for (let gap = 1; gap <= GAP; gap++) {
      if (x >= gap && at(label, i - gap) === at(label, i)) unite(find(i), find(i - gap));
      const above = i - gap * width;
      if (above >= 0 && at(label, above) === at(label, i)) unite(find(i), find(above));
    }
  }
  const largest: number[] = new Array(labels).fill(0);
  for (let i = 0; i < count; i++) {
    const k = at(label, i);
    if (k >= 0 && at(root, i) === i) largest[k] = Math.max(largest[k] ?? 0, at(weight, i));
  }
  return largest;
}

function unite(part: number, into: number): void {
  if (part === into) return;
  root[part] = into;
  weight[into] = at(weight, into) + at(weight, part);
}
