import { GRID_PIXELS, type Picture } from "./picture.ts";
import { at, intAt } from "./plane.ts";

/** Pixels. Parts no further apart than this hang together: the other stripe lies between. */
const GAP = 5;

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
    while (intAt(root, k) !== k) {
      root[k] = intAt(root, intAt(root, k));
      k = intAt(root, k);
    }
    return k;
  };
  for (let i = 0; i < count; i++) {
    root[i] = i;
    weight[i] = at(weights, i);
    const x = i % width;
    let gap = 1;
    while (gap <= GAP && !(x >= gap && intAt(label, i - gap) === intAt(label, i))) gap++;
    if (gap <= GAP) unite(i, find(i - gap));
    gap = 1;
    while (gap <= GAP && !(i >= gap * width && intAt(label, i - gap * width) === intAt(label, i))) gap++;
    if (gap <= GAP) unite(find(i), find(i - gap * width));
  }
  const largest: number[] = new Array(labels).fill(0);
  for (let i = 0; i < count; i++) {
    const k = intAt(label, i);
    if (k >= 0 && intAt(root, i) === i) largest[k] = Math.max(largest[k] ?? 0, at(weight, i));
  }
  return largest;
}

function unite(part: number, into: number): void {
  if (part === into) return;
  root[part] = into;
  weight[into] = at(weight, into) + at(weight, part);
}
