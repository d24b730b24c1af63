import { type Raster, sketchPlane } from "./raster.ts";

/** Place of the cloth: half widths, as shares of the picture, of the area where it usually lies; and its edge. */
const PLACE_X = 0.36;
const PLACE_Y = 0.42;
const PLACE_EDGE = 2.4;
/** Probability of cloth at the outermost pixels; one minus it in the middle. */
const PLACE_FLOOR = 0.03;

const odds = sketchPlane();
const size = { width: 0, height: 0 };

/** Log odds of cloth by place alone, for each pixel of the sketch; kept while the size stays, as it nearly always does. */
export function placeOdds({ width, height }: Raster): Float32Array {
  if (size.width === width && size.height === height) return odds;
  Object.assign(size, { width, height });
  for (let y = 0, s = 0; y < height; y++) {
    const v = Math.abs((y + 0.5) / height - 0.5) / PLACE_Y;
    for (let x = 0; x < width; x++, s++) {
      const u = Math.abs((x + 0.5) / width - 0.5) / PLACE_X;
      const p = PLACE_FLOOR + (1 - 2 * PLACE_FLOOR) * Math.exp(-(u ** PLACE_EDGE + v ** PLACE_EDGE));
      odds[s] = Math.log(p / (1 - p));
    }
  }
  return odds;
}
