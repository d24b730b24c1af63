import { bins, histogram, smooth } from "./color-bins.ts";
import { at, intAt } from "./plane.ts";
import type { Raster } from "./raster.ts";

/** Share of a histogram that is nothing. */
const NOTHING = 1e-5;
/** How often histograms are smoothed. */
const SMOOTHING = 1;

const front = histogram();
const back = histogram();
/** Log odds that each bin is a colour of the cloth, the words on the page included; 0 for no bin. */
export const colorOdds = histogram();
/** What the words on the page add, log odds. */
export const wordOdds = histogram();

/** Starts with no knowledge of colours; `ofWords` gives the log odds that the page's words add to a bin. */
export function forgetColors(ofWords: ((bin: number) => number) | null): void {
  for (let k = 0; k <= bins.used; k++) {
    wordOdds[k] = ofWords && k ? ofWords(k) : 0;
    colorOdds[k] = 0;
  }
}

/** Learns the colours of the cloth from the pixels as weighed so far: histograms of cloth against those of the rest. */
export function learnColors({ count, bin }: Raster, cloth: Float32Array): void {
  front.fill(0, 0, bins.used + 1);
  back.fill(0, 0, bins.used + 1);
  let sum = 0;
  for (let s = 0; s < count; s++) {
    const k = intAt(bin, s);
    const w = at(cloth, s);
    front[k] = at(front, k) + w;
    back[k] = at(back, k) + 1 - w;
    sum += w;
  }
  const rest = count - sum - at(back, 0);
  front[0] = 0;
  back[0] = 0;
  smooth(front, SMOOTHING);
  smooth(back, SMOOTHING);
  for (let k = 1; k <= bins.used; k++) {
    const ratio = (at(front, k) / (sum + NOTHING) + NOTHING) / (at(back, k) / (rest + NOTHING) + NOTHING);
    colorOdds[k] = Math.log(ratio) + at(wordOdds, k);
  }
}
