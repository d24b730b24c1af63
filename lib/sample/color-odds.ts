import { bins, histogram, smooth } from "./color-bins.ts";
import { intAt, sumAt } from "./plane.ts";
import { ODDS_STEPS } from "./probability-of.ts";
import { GRID_PIXELS, type Raster } from "./raster.ts";

/** Share of a histogram that is nothing. */
const NOTHING = 1e-5;
/** How often histograms are smoothed. */
const SMOOTHING = 1;

/** Weight of the cloth in each bin of the sketch: summed up by the pass that weighs the pixels. */
export const front = histogram();
/** Opaque pixels of the sketch in each bin, smoothed, and together. */
const all = histogram();
let opaque = 0;
/** Log odds that each bin is a colour of the cloth, the words on the page included, in `ODDS_STEPS`; 0 for no bin. */
export const colorOdds = new Int32Array(GRID_PIXELS + 1);
/** What the words on the page add, log odds. */
export const wordOdds = histogram();

/** Starts with no knowledge of colours; `ofWords` gives the log odds that the page's words add to a bin. */
export function forgetColors({ count, bin }: Raster, ofWords: ((bin: number) => number) | null): void {
  for (let k = 0; k <= bins.used; k++) {
    wordOdds[k] = ofWords && k ? ofWords(k) : 0;
    colorOdds[k] = 0;
    all[k] = 0;
  }
  for (let s = 0; s < count; s++) all[intAt(bin, s)] = sumAt(all, intAt(bin, s)) + 1;
  all[0] = 0;
  opaque = sumOf(all);
  smooth(all, SMOOTHING);
}

/** Learns the colours of the cloth: the histogram of `front` against that of the rest. Smooths `front`. */
export function learnColors(): void {
  const sum = sumOf(front);
  const rest = opaque - sum;
  smooth(front, SMOOTHING);
  for (let k = 1; k <= bins.used; k++) {
    const cloth = sumAt(front, k) / (sum + NOTHING) + NOTHING;
    const other = Math.max(0, sumAt(all, k) - sumAt(front, k)) / (rest + NOTHING) + NOTHING;
    colorOdds[k] = Math.round(ODDS_STEPS * (Math.log(cloth / other) + sumAt(wordOdds, k)));
  }
}

function sumOf(h: Float64Array): number {
  let sum = 0;
  for (let k = 1; k <= bins.used; k++) sum += sumAt(h, k);
  return sum;
}
