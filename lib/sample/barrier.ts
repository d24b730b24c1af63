import { at, intAt } from "./plane.ts";
import { type Raster, SKETCH_PIXELS } from "./raster.ts";

/** OKLab × 100. A higher barrier says no more, so that it cannot outvote colour and place; paths that reach it end. */
export const BARRIER_CAP = 25;
/** 0–1. A path that gets darker pays this much of it: shadows and folds of a backdrop. 0.3–1 measured alike. */
const SHADOW_COST = 0.5;
/** OKLab × 100. Deeper than this is no shadow; the rest costs in full. */
const SHADOW_DEPTH = 15;

/** Steps per OKLab × 100: whole numbers, since the smaller of two is found without a branch that is guessed wrong. */
const STEPS = 64;
const CAP_STEPS = BARRIER_CAP * STEPS;

/** Pixels in steps, and the cost of the best path to each. */
const light = new Int32Array(SKETCH_PIXELS);
const red = new Int32Array(SKETCH_PIXELS);
const yellow = new Int32Array(SKETCH_PIXELS);
const costs = new Int32Array(SKETCH_PIXELS);
/** What is kept of the best path to each pixel, side by side: start cost, start lightness, lowest and highest L, a and b. */
const KEPT = 8;
const paths = new Int32Array(KEPT * SKETCH_PIXELS);

/**
 * Minimum barrier distance of every pixel from the seeds: how much a path must change in colour to get there,
 * summed over L, a and b (J. Zhang et al., "Minimum Barrier Salient Object Detection at 80 FPS", 2015;
 * two raster scans, since a third changed nothing measurable). `seed` holds the start cost, negative where there is
 * no seed. Written into `barrier`.
 */
export function measureBarrier(sketch: Raster, seed: Float32Array, barrier: Float32Array): void {
  const { width, height, count, lightness, a, b, bin } = sketch;
  for (let i = 0; i < count; i++) {
    light[i] = at(lightness, i) * STEPS;
    red[i] = at(a, i) * STEPS;
    yellow[i] = at(b, i) * STEPS;
    const cost = at(seed, i) * STEPS;
    costs[i] = cost < 0 ? CAP_STEPS : cost;
    if (cost >= 0) startPath(i, cost);
  }
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i++) {
      if (intAt(bin, i) === 0) continue;
      if (x > 0) relax(i, i - 1);
      if (y > 0) relax(i, i - width);
    }
  }
  for (let y = height - 1, i = count - 1; y >= 0; y--) {
    for (let x = width - 1; x >= 0; x--, i--) {
      if (intAt(bin, i) === 0) continue;
      if (x < width - 1) relax(i, i + 1);
      if (y < height - 1) relax(i, i + width);
    }
  }
  for (let i = 0; i < count; i++) barrier[i] = intAt(costs, i) * (1 / STEPS);
}

function startPath(i: number, cost: number): void {
  const l = intAt(light, i);
  const a = intAt(red, i);
  const b = intAt(yellow, i);
  keep(i, cost, l, l, l, a, a, b, b);
}

/** Takes the path over a neighbour where it is the cheaper one. */
function relax(i: number, from: number): void {
  const held = intAt(costs, i);
  if (intAt(costs, from) >= held) return;
  const l = intAt(light, i);
  const a = intAt(red, i);
  const b = intAt(yellow, i);
  const path = KEPT * from;
  const start = intAt(paths, path);
  const first = intAt(paths, path + 1);
  const bottom = lower(intAt(paths, path + 2), l);
  const top = higher(intAt(paths, path + 3), l);
  const a0 = lower(intAt(paths, path + 4), a);
  const a1 = higher(intAt(paths, path + 5), a);
  const b0 = lower(intAt(paths, path + 6), b);
  const b1 = higher(intAt(paths, path + 7), b);
  const darker = first - bottom;
  const shade = darker - (((1 - SHADOW_COST) * lower(darker, SHADOW_DEPTH * STEPS)) | 0);
  const cost = start + top - first + shade + a1 - a0 + b1 - b0;
  if (cost >= held) return;
  costs[i] = cost;
  keep(i, start, first, bottom, top, a0, a1, b0, b1);
}

function keep(
  i: number,
  start: number,
  first: number,
  bottom: number,
  top: number,
  a0: number,
  a1: number,
  b0: number,
  b1: number,
): void {
  const path = KEPT * i;
  paths[path] = start;
  paths[path + 1] = first;
  paths[path + 2] = bottom;
  paths[path + 3] = top;
  paths[path + 4] = a0;
  paths[path + 5] = a1;
  paths[path + 6] = b0;
  paths[path + 7] = b1;
}

/** Of two whole numbers, by the sign of their difference. */
const lower = (p: number, q: number): number => p - ((p - q) & ~((p - q) >> 31));
const higher = (p: number, q: number): number => p + ((q - p) & ~((q - p) >> 31));
