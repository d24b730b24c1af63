import { GRID_PIXELS, type Picture } from "./picture.ts";
import { at, intAt } from "./plane.ts";

/** OKLab × 100. Side of a histogram bin: about the noise of a compressed photo; 2–6 measured alike. */
export const BIN_SIDE = 4;
/** Bins along L, a and b. L needs 0–100, a and b −32…32, with an empty bin at each end. */
const ACROSS = 24;
const HALF = ACROSS / 2;
const LEVELS = 30;
/** Number of bins. */
export const BIN_COUNT = LEVELS * ACROSS * ACROSS;
/** Step to the next bin along each axis. */
const STEP_A = ACROSS;
const STEP_L = ACROSS * ACROSS;

/** Bin of each pixel, −1 where it is transparent. */
export const binOf = new Int32Array(GRID_PIXELS);
/** The bins in use; only the first `bins.used` entries count. */
export const bins = { used: 0, list: new Int32Array(GRID_PIXELS) };
const seen = new Uint8Array(BIN_COUNT);
const scratch = new Float32Array(BIN_COUNT);

/** A histogram over colour; all zero outside the bins in use. */
export function histogram(): Float32Array {
  return new Float32Array(BIN_COUNT);
}

/** Sorts the pixels into bins. `histograms` are cleared of the previous picture. */
export function fillBins(picture: Picture, histograms: readonly Float32Array[]): void {
  for (let q = 0; q < bins.used; q++) {
    const k = intAt(bins.list, q);
    seen[k] = 0;
    for (const h of histograms) h[k] = 0;
  }
  bins.used = 0;
  for (let i = 0; i < picture.count; i++) {
    if (!picture.solid[i]) {
      binOf[i] = -1;
      continue;
    }
    const l = Math.round(at(picture.lightness, i) / BIN_SIDE) + 1;
    const a = Math.round(at(picture.a, i) / BIN_SIDE) + HALF;
    const b = Math.round(at(picture.b, i) / BIN_SIDE) + HALF;
    const k = l * STEP_L + a * STEP_A + b;
    binOf[i] = k;
    if (!seen[k]) {
      seen[k] = 1;
      bins.list[bins.used++] = k;
    }
  }
}

/** Spreads each bin over its six neighbours in use, `times` times: noise and soft light, in place. */
export function smooth(h: Float32Array, times: number): void {
  for (let time = 0; time < times; time++) {
    for (let q = 0; q < bins.used; q++) {
      const k = intAt(bins.list, q);
      const around =
        at(h, k + 1) +
        at(h, k - 1) +
        at(h, k + STEP_A) +
        at(h, k - STEP_A) +
        at(h, k + STEP_L) +
        at(h, k - STEP_L);
      scratch[k] = 0.4 * at(h, k) + 0.1 * around;
    }
    for (let q = 0; q < bins.used; q++) {
      const k = intAt(bins.list, q);
      h[k] = at(scratch, k);
    }
  }
}

/** Middle of a bin in OKLab × 100. */
export const lightnessOf = (k: number): number => (Math.floor(k / STEP_L) - 1) * BIN_SIDE;
export const aOf = (k: number): number => ((Math.floor(k / STEP_A) % ACROSS) - HALF) * BIN_SIDE;
export const bOf = (k: number): number => ((k % ACROSS) - HALF) * BIN_SIDE;
