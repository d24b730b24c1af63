import { intAt, shortAt, sumAt } from "./plane.ts";
import { GRID_PIXELS } from "./raster.ts";

/** OKLab × 100. Side of a histogram bin: about the noise of a compressed photo; 2–6 measured alike. */
export const BIN_SIDE = 4;
const PER_BIN = 1 / BIN_SIDE;
/** Cells along L, a and b. L needs 0–100, a and b −32…32, with an empty cell at each end. */
const ACROSS = 24;
const HALF = ACROSS / 2;
const LEVELS = 30;
const CELLS = LEVELS * ACROSS * ACROSS;
/** Steps to the neighbouring cells along each axis. */
const STEPS = [1, -1, ACROSS, -ACROSS, ACROSS * ACROSS, -ACROSS * ACROSS];
/** What a bin keeps of itself when it is smoothed; the rest comes from its neighbours alike. */
const KEPT = 0.4;
const FROM_EACH = (1 - KEPT) / STEPS.length;

/** The cells that a picture uses are numbered from 1 on: its bins. 0 is no bin; its entry in a histogram stays 0. */
export const bins = { used: 0 };
const binOfCell = new Int16Array(CELLS);
const cellOfBin = new Int32Array(GRID_PIXELS + 1);
/** Bins beside each bin, one list after the other. */
const beside = new Int32Array(STEPS.length * (GRID_PIXELS + 1));
const scratch = histogram();

/** A value for each bin. */
export function histogram(): Float64Array {
  return new Float64Array(GRID_PIXELS + 1);
}

/** Forgets the bins of the picture before. */
export function clearBins(): void {
  for (let k = 1; k <= bins.used; k++) binOfCell[intAt(cellOfBin, k)] = 0;
  bins.used = 0;
}

/** The bin of a colour (OKLab × 100 of an sRGB colour), a new one where none has it yet. */
export function binOf(l: number, a: number, b: number): number {
  // All three are positive here, so that cutting off decimals rounds.
  const level = (l * PER_BIN + 1.5) | 0;
  const hue = (a * PER_BIN + HALF + 0.5) | 0;
  const cell = (level * ACROSS + hue) * ACROSS + ((b * PER_BIN + HALF + 0.5) | 0);
  return shortAt(binOfCell, cell) || newBin(cell);
}

function newBin(cell: number): number {
  const k = ++bins.used;
  binOfCell[cell] = k;
  cellOfBin[k] = cell;
  return k;
}

/** Finds which bins lie beside each other, once all pixels have theirs. */
export function linkBins(): void {
  for (let k = 1, n = 0; k <= bins.used; k++) {
    const cell = intAt(cellOfBin, k);
    for (const step of STEPS) beside[n++] = shortAt(binOfCell, cell + step);
  }
}

/** Spreads each bin over its neighbours, `times` times: noise and soft light, in place. */
export function smooth(h: Float64Array, times: number): void {
  for (let time = 0; time < times; time++) {
    for (let k = 1, n = 0; k <= bins.used; k++, n += STEPS.length) {
      let around = 0;
      for (let m = n; m < n + STEPS.length; m++) around += sumAt(h, intAt(beside, m));
      scratch[k] = KEPT * sumAt(h, k) + FROM_EACH * around;
    }
    for (let k = 1; k <= bins.used; k++) h[k] = sumAt(scratch, k);
  }
}

/** Middle of a bin in OKLab × 100. */
export const lightnessOf = (k: number): number =>
  (Math.floor(intAt(cellOfBin, k) / (ACROSS * ACROSS)) - 1) * BIN_SIDE;
export const aOf = (k: number): number =>
  ((Math.floor(intAt(cellOfBin, k) / ACROSS) % ACROSS) - HALF) * BIN_SIDE;
export const bOf = (k: number): number => ((intAt(cellOfBin, k) % ACROSS) - HALF) * BIN_SIDE;
