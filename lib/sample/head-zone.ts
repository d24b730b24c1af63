import { partOf } from "./find-parts.ts";
import { shadeOf } from "./find-shades.ts";
import { at, intAt } from "./plane.ts";
import { type Raster, SKETCH_SIDE } from "./raster.ts";

/** Share of a figure's height, from its top, in which head and hair are, cropped figures included. Our estimate. */
const HEAD = 0.2;
/** Part of the weight that may lie beyond the first and the last row of a figure: stray pixels. */
const STRAY = 0.01;

/** How a shade takes part in the head zone of a figure, both 0–1. */
export interface InHead {
  /** Part of the shade's weight that lies there. */
  readonly of: number;
  /** Part of the zone's weight that is this shade. */
  readonly share: number;
}

const rows = new Float64Array(SKETCH_SIDE);

/** Which shades make up the top of the figure, of shades whose parts have been found. */
export function readHeadZone({ width, height }: Raster, cloth: Float32Array, shades: number): InHead[] {
  const end = headRows({ width, height }, cloth);
  const sums = Array.from({ length: shades }, () => ({ all: 0, head: 0 }));
  let zone = 0;
  for (let y = 0, s = 0; y < height; y++) {
    for (let x = 0; x < width; x++, s++) {
      const sum = intAt(partOf, s) < 0 ? undefined : sums[intAt(shadeOf, s)];
      if (!sum) continue;
      sum.all += at(cloth, s);
      if (y > end) continue;
      sum.head += at(cloth, s);
      zone += at(cloth, s);
    }
  }
  return sums.map(({ all, head }) => ({ of: all ? head / all : 0, share: zone ? head / zone : 0 }));
}

/** The last row of the head zone. */
function headRows({ width, height }: Pick<Raster, "width" | "height">, cloth: Float32Array): number {
  let total = 0;
  for (let y = 0, s = 0; y < height; y++) {
    rows[y] = 0;
    for (let x = 0; x < width; x++, s++) {
      if (intAt(partOf, s) < 0) continue;
      rows[y] = (rows[y] as number) + at(cloth, s);
      total += at(cloth, s);
    }
  }
  const rowAt = (part: number): number => {
    let sum = 0;
    for (let y = 0; y < height; y++) {
      sum += rows[y] as number;
      if (sum >= part * total) return y;
    }
    return height - 1;
  };
  const first = rowAt(STRAY);
  return first + HEAD * (rowAt(1 - STRAY) - first + 1);
}
