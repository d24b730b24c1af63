import { bins, histogram, smooth } from "./color-bins.ts";
import { apart, type Color, mass, massive, meanA, meanB, meanL } from "./color-mass.ts";
import { intAt, sumAt } from "./plane.ts";
import { GRID_PIXELS } from "./raster.ts";

/** OKLab × 100. Window of the mean shift: narrow, so that folds and edges do not pull the colour. */
const WINDOW = 6;
/** Steps of the mean shift; it stands still before. */
const SHIFTS = 4;
/** OKLab × 100. A mode takes its surroundings this far with it, so that the next one is another colour. */
const REACH = 8;
/** Modes looked for, and the smallest share of the cloth that starts one. */
const MOST_MODES = 10;
const SMALLEST = 0.02;

/** A colour around which many pixels lie. `peak`: their weighed mass within the window. */
export interface Mode extends Color {
  readonly peak: number;
}

const height = histogram();
/** Bins that no mode has taken yet: the first `left` of the list. */
const free = new Int32Array(GRID_PIXELS);
let left = 0;

/**
 * Modes of the weighed colour density (mean shift: K. Fukunaga and L. Hostetler, 1975), taken from the highest down.
 * `total`: mass of all cloth.
 */
export function findModes(total: number): Mode[] {
  for (let k = 1; k <= bins.used; k++) height[k] = sumAt(mass, k);
  smooth(height, 1);
  left = massive.used;
  for (let q = 0; q < left; q++) free[q] = intAt(massive.list, q);
  const modes: Mode[] = [];
  while (left > 0 && modes.length < MOST_MODES) {
    const mode = highest();
    if (modes.length && mode.peak < SMALLEST * total) break;
    modes.push(mode);
  }
  return modes;
}

function highest(): Mode {
  let top = intAt(free, 0);
  for (let q = 1; q < left; q++) if (sumAt(height, intAt(free, q)) > sumAt(height, top)) top = intAt(free, q);
  let mode: Mode = { l: sumAt(meanL, top), a: sumAt(meanA, top), b: sumAt(meanB, top), peak: 0 };
  for (let step = 0; step < SHIFTS; step++) mode = shifted(mode);
  let kept = 0;
  for (let q = 0; q < left; q++) {
    const k = intAt(free, q);
    if (k !== top && apart(k, mode) >= REACH * REACH) free[kept++] = k;
  }
  left = kept;
  return mode;
}

/** The mean of the free bins in the window around a mode. */
function shifted(mode: Mode): Mode {
  let peak = 0;
  let l = 0;
  let a = 0;
  let b = 0;
  for (let q = 0; q < left; q++) {
    const k = intAt(free, q);
    const near = 1 - apart(k, mode) / (WINDOW * WINDOW);
    if (near <= 0) continue;
    const w = near * sumAt(mass, k);
    peak += w;
    l += w * sumAt(meanL, k);
    a += w * sumAt(meanA, k);
    b += w * sumAt(meanB, k);
  }
  return peak ? { l: l / peak, a: a / peak, b: b / peak, peak } : mode;
}
