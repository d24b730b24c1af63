// Two common ways to the main colours of a whole picture, for comparison in the bench only: well-known libraries, called as their
// users call them, no mask.
import { QuantizerCelebi } from "@material/material-color-utilities";
import quantize from "quantize";
import { oklabFromRgb8 } from "../../lib/color/convert.ts";
import type { Swatch } from "../../lib/sample/palette.ts";

/** Colours of the median cut, and clusters of the k-means, as tools that pick a picture's main colours use them. */
const CUT_COLORS = 5;
const CLUSTERS = 128;
/** 0–255. Pixels below are left out. */
const OPAQUE = 250;

/** A colour (0–255 each) and how many pixels have it. */
type Weighed = readonly [red: number, green: number, blue: number, count: number];

function asSwatches(colors: readonly Weighed[]): Swatch[] {
  const all = colors.reduce((sum, [, , , count]) => sum + count, 0);
  return colors
    .filter(([, , , count]) => count > 0)
    .sort(([, , , p], [, , , q]) => q - p)
    .map(([r, g, b, count]) => ({ oklab: oklabFromRgb8(r, g, b), share: count / all }));
}

/** Median cut (P. Heckbert, "Color Image Quantization", 1982), in the form most web tools use; it takes a list of pixels. */
export function medianCut(data: Uint8ClampedArray): Swatch[] {
  const pixels: [number, number, number][] = [];
  for (let p = 0; p < data.length; p += 4) {
    if ((data[p + 3] as number) < OPAQUE) continue;
    pixels.push([data[p] as number, data[p + 1] as number, data[p + 2] as number]);
  }
  const boxes = quantize(pixels, CUT_COLORS);
  return boxes ? asSwatches(boxes.vboxes.map(({ vbox }) => [...vbox.avg(), vbox.count()] as const)) : [];
}

/** Weighted k-means (M. E. Celebi, "Improving the performance of k-means for color quantization", 2011). */
export function weightedKMeans(data: Uint8ClampedArray): Swatch[] {
  const pixels: number[] = [];
  for (let p = 0; p < data.length; p += 4) {
    if ((data[p + 3] as number) < OPAQUE) continue;
    const [r, g, b] = [data[p], data[p + 1], data[p + 2]] as [number, number, number];
    pixels.push(((255 << 24) | (r << 16) | (g << 8) | b) >>> 0);
  }
  const clusters = QuantizerCelebi.quantize(pixels, CLUSTERS);
  return asSwatches(
    Array.from(
      clusters,
      ([argb, count]) => [(argb >> 16) & 255, (argb >> 8) & 255, argb & 255, count] as const,
    ),
  );
}
