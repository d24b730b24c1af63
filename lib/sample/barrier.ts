import { at, intAt } from "./plane.ts";
import { type Raster, sketchPlane } from "./raster.ts";

/** OKLab × 100. A higher barrier says no more, so that it cannot outvote colour and place; paths that reach it end. */
export const BARRIER_CAP = 25;
/** 0–1. A path that gets darker pays this much of it: shadows and folds of a backdrop. 0.3–1 measured alike. */
const SHADOW_COST = 0.5;
/** OKLab × 100. Deeper than this is no shadow; the rest costs in full. */
const SHADOW_DEPTH = 15;

/** Start cost and start lightness of the best path to each pixel, and the extremes on it. */
const start = sketchPlane();
const startL = sketchPlane();
const lowL = sketchPlane();
const highL = sketchPlane();
const lowA = sketchPlane();
const highA = sketchPlane();
const lowB = sketchPlane();
const highB = sketchPlane();

/**
 * Minimum barrier distance of every pixel from the seeds: how much a path must change in colour to get there,
 * summed over L, a and b (J. Zhang et al., "Minimum Barrier Salient Object Detection at 80 FPS", 2015;
 * two raster scans, since a third changed nothing measurable). `seed` holds the start cost, negative where there is
 * no seed. Written into `barrier`.
 */
export function measureBarrier(sketch: Raster, seed: Float32Array, barrier: Float32Array): void {
  const { width, height, count, lightness, a, b, bin } = sketch;
  for (let i = 0; i < count; i++) {
    const cost = at(seed, i);
    barrier[i] = cost < 0 ? BARRIER_CAP : cost;
    start[i] = cost;
    startL[i] = lowL[i] = highL[i] = at(lightness, i);
    lowA[i] = highA[i] = at(a, i);
    lowB[i] = highB[i] = at(b, i);
  }
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i++) {
      if (intAt(bin, i) === 0) continue;
      if (x > 0) relax(sketch, barrier, i, i - 1);
      if (y > 0) relax(sketch, barrier, i, i - width);
    }
  }
  for (let y = height - 1, i = count - 1; y >= 0; y--) {
    for (let x = width - 1; x >= 0; x--, i--) {
      if (intAt(bin, i) === 0) continue;
      if (x < width - 1) relax(sketch, barrier, i, i + 1);
      if (y < height - 1) relax(sketch, barrier, i, i + width);
    }
  }
}

/** Takes the path over a neighbour where it is the cheaper one. */
function relax({ lightness, a, b }: Raster, barrier: Float32Array, i: number, from: number): void {
  const held = at(barrier, i);
  if (at(barrier, from) >= held) return;
  const l = at(lightness, i);
  const va = at(a, i);
  const vb = at(b, i);
  const bottom = Math.min(at(lowL, from), l);
  const top = Math.max(at(highL, from), l);
  const a0 = Math.min(at(lowA, from), va);
  const a1 = Math.max(at(highA, from), va);
  const b0 = Math.min(at(lowB, from), vb);
  const b1 = Math.max(at(highB, from), vb);
  const first = at(startL, from);
  const darker = first - bottom;
  const shade = darker - (1 - SHADOW_COST) * Math.min(darker, SHADOW_DEPTH);
  const cost = at(start, from) + top - first + shade + a1 - a0 + b1 - b0;
  if (cost >= held) return;
  barrier[i] = cost;
  start[i] = at(start, from);
  startL[i] = first;
  lowL[i] = bottom;
  highL[i] = top;
  lowA[i] = a0;
  highA[i] = a1;
  lowB[i] = b0;
  highB[i] = b1;
}
