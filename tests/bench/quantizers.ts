// Two common ways to the main colours of a whole picture, as references for the bench only: plain and complete, no mask.
import { oklabFromRgb8 } from "../../lib/color/convert.ts";
import type { Swatch } from "../../lib/sample/palette.ts";

/** Colours of the median cut, and clusters of the k-means, as tools that pick a picture's main colours use them. */
const CUT_COLORS = 5;
const CLUSTERS = 128;
/** Rounds of the k-means, and the part of its pixels that still moves when it may stop. */
const ROUNDS = 10;
const SETTLED = 0.001;
/** Bits a channel that the median cut looks at. */
const BITS = 5;

/** A colour (0–255 each) and how many pixels have it. */
interface Weighed {
  readonly rgb: readonly [number, number, number];
  readonly count: number;
}

/** Colours with their pixels, channels cut to so many bits; transparent pixels are left out. */
function countColors(data: Uint8ClampedArray, bits: number): Weighed[] {
  const drop = 8 - bits;
  const counts = new Map<number, number>();
  for (let p = 0; p < data.length; p += 4) {
    if ((data[p + 3] as number) < 250) continue;
    const [r, g, b] = [data[p], data[p + 1], data[p + 2]] as [number, number, number];
    const key = ((r >> drop) << 16) | ((g >> drop) << 8) | (b >> drop);
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  const half = (1 << drop) >> 1;
  return Array.from(counts, ([key, count]) => ({
    rgb: [((key >> 16) << drop) + half, (((key >> 8) & 255) << drop) + half, ((key & 255) << drop) + half],
    count,
  }));
}

const pixelsOf = (colors: readonly Weighed[]): number => colors.reduce((sum, { count }) => sum + count, 0);

function asSwatches(groups: readonly (readonly Weighed[])[]): Swatch[] {
  const all = groups.reduce((sum, group) => sum + pixelsOf(group), 0);
  return groups
    .filter((group) => group.length > 0)
    .map((group) => {
      const count = pixelsOf(group);
      const mean = ([0, 1, 2] as const).map((c) =>
        Math.round(group.reduce((sum, color) => sum + color.count * color.rgb[c], 0) / count),
      );
      const [r = 0, g = 0, b = 0] = mean.map((value) => Math.min(255, value));
      return { oklab: oklabFromRgb8(r, g, b), share: count / all };
    })
    .sort((p, q) => q.share - p.share);
}

/** Median cut: the fullest box is cut at the median of its longest side (P. Heckbert, "Color Image Quantization", 1982). */
export function medianCut(data: Uint8ClampedArray): Swatch[] {
  const boxes: Weighed[][] = [countColors(data, BITS)];
  while (boxes.length < CUT_COLORS) {
    boxes.sort((p, q) => Number(q.length > 1) - Number(p.length > 1) || pixelsOf(q) - pixelsOf(p));
    const box = boxes[0];
    if (!box || box.length < 2) break;
    boxes.splice(0, 1, ...cut(box));
  }
  return asSwatches(boxes);
}

function cut(box: readonly Weighed[]): [Weighed[], Weighed[]] {
  const sides = ([0, 1, 2] as const).map((c) => {
    const values = box.map(({ rgb }) => rgb[c]);
    return { c, length: Math.max(...values) - Math.min(...values) };
  });
  const { c } = sides.reduce((longest, side) => (side.length > longest.length ? side : longest));
  const sorted = [...box].sort((p, q) => p.rgb[c] - q.rgb[c]);
  const half = pixelsOf(box) / 2;
  let at = 0;
  for (let seen = 0; at < sorted.length - 1 && seen + (sorted[at]?.count ?? 0) <= half; at++) {
    seen += sorted[at]?.count ?? 0;
  }
  const from = Math.max(1, at);
  return [sorted.slice(0, from), sorted.slice(from)];
}

/** k-means over the distinct colours, each weighed by its pixels (M. E. Celebi, "Improving the performance of k-means for color quantization", 2011). */
export function weightedKMeans(data: Uint8ClampedArray): Swatch[] {
  const colors = countColors(data, 8);
  const points = Float64Array.from(colors.flatMap(({ rgb: [r, g, b] }) => oklabFromRgb8(r, g, b)));
  const clusters = Math.min(CLUSTERS, colors.length);
  // Spread evenly over the colours: the same picture always starts the same.
  const centers = new Float64Array(3 * clusters);
  for (let k = 0; k < clusters; k++) {
    const start = 3 * Math.floor(((k + 0.5) * colors.length) / clusters);
    centers.set(points.subarray(start, start + 3), 3 * k);
  }
  const owner = new Int32Array(colors.length).fill(-1);
  const all = pixelsOf(colors);
  for (let round = 0; round < ROUNDS; round++) {
    const sums = new Float64Array(4 * clusters);
    let moved = 0;
    for (let n = 0; n < colors.length; n++) {
      const count = colors[n]?.count ?? 0;
      const nearest = nearestOf(centers, points, 3 * n);
      if (nearest !== owner[n]) moved += count;
      owner[n] = nearest;
      for (let c = 0; c < 3; c++)
        sums[4 * nearest + c] = num(sums, 4 * nearest + c) + count * num(points, 3 * n + c);
      sums[4 * nearest + 3] = num(sums, 4 * nearest + 3) + count;
    }
    for (let k = 0; k < clusters; k++) {
      const count = num(sums, 4 * k + 3);
      for (let c = 0; c < 3 && count; c++) centers[3 * k + c] = num(sums, 4 * k + c) / count;
    }
    if (moved < SETTLED * all) break;
  }
  const groups: Weighed[][] = Array.from({ length: clusters }, () => []);
  colors.forEach((color, n) => void groups[owner[n] as number]?.push(color));
  return asSwatches(groups);
}

const num = (values: Float64Array, index: number): number => values[index] as number;

function nearestOf(centers: Float64Array, points: Float64Array, p: number): number {
  const l = num(points, p);
  const a = num(points, p + 1);
  const b = num(points, p + 2);
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let c = 0; c < centers.length; c += 3) {
    const x = num(centers, c) - l;
    const y = num(centers, c + 1) - a;
    const z = num(centers, c + 2) - b;
    const distance = x * x + y * y + z * z;
    if (distance >= least) continue;
    least = distance;
    best = c / 3;
  }
  return best;
}
