import { bins, histogram, smooth } from "./color-bins.ts";
import { at, intAt, sumAt } from "./plane.ts";
import { type Raster, SKETCH_PIXELS } from "./raster.ts";

/** Share of the side. Width of the frame that shows what the border of the picture is made of. */
const FRAME = 0.04;
/** OKLab × 100. Start cost of a border pixel whose colour is rare along the border: cloth that leaves the picture. */
const RARE_COST = 14;
/** 0–1. A border colour this common, relative to the commonest, is a free seed. */
const COMMON = 0.5;
/** Differences of a border pixel and its neighbour above this are edges, not noise. */
const NOISE_CAP = 6;
/** How often the histogram of the frame is smoothed. */
const SMOOTHING = 2;

/** Pixels of the frame, the first `framed` of them, row by row. */
const frame = new Int32Array(SKETCH_PIXELS);
let framed = 0;
const framedSize = { width: 0, height: 0 };
/** How much of the frame each bin makes up, 0–1 of what counts as common. */
const common = histogram();

/**
 * Sets the seeds of the barrier: start cost along the border, 0 where transparent, negative elsewhere.
 * @returns the noise of what the frame is made of: mean difference of neighbours, OKLab × 100.
 */
export function readBorder(sketch: Raster, seed: Float32Array): number {
  const { width, height, count, bin, lightness, a, b } = sketch;
  setFrame(width, height);
  weighBins(bin);
  let noise = 0;
  let pairs = 0;
  for (let n = 0; n < framed; n++) {
    const i = intAt(frame, n);
    const next = i % width < width - 1 ? i + 1 : i - 1;
    if (intAt(bin, i) === 0 || intAt(bin, next) === 0) continue;
    const w = sumAt(common, intAt(bin, i));
    const dl = Math.abs(at(lightness, i) - at(lightness, next));
    const da = Math.abs(at(a, i) - at(a, next));
    noise += w * Math.min(NOISE_CAP, dl + da + Math.abs(at(b, i) - at(b, next)));
    pairs += w;
  }
  for (let i = 0; i < count; i++) seed[i] = intAt(bin, i) === 0 ? 0 : -1;
  for (let n = 0; n < framed; n++) {
    const i = intAt(frame, n);
    const x = i % width;
    if (x > 0 && x < width - 1 && i >= width && i < count - width) continue;
    if (intAt(bin, i) > 0) seed[i] = RARE_COST * (1 - sumAt(common, intAt(bin, i)));
  }
  return pairs ? noise / pairs : 0;
}

function setFrame(width: number, height: number): void {
  if (framedSize.width === width && framedSize.height === height) return;
  Object.assign(framedSize, { width, height });
  const ring = Math.ceil(FRAME * Math.max(width, height));
  framed = 0;
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i++) {
      const inner = x >= ring && x < width - ring && y >= ring && y < height - ring;
      if (!inner) frame[framed++] = i;
    }
  }
}

function weighBins(bin: Int32Array): void {
  common.fill(0, 0, bins.used + 1);
  for (let n = 0; n < framed; n++) {
    const k = intAt(bin, intAt(frame, n));
    if (k > 0) common[k] = sumAt(common, k) + 1;
  }
  smooth(common, SMOOTHING);
  let top = 0;
  for (let k = 1; k <= bins.used; k++) top = Math.max(top, sumAt(common, k));
  for (let k = 1; k <= bins.used; k++) common[k] = top ? Math.min(1, sumAt(common, k) / (top * COMMON)) : 0;
}
