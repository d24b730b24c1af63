import { linearOf } from "../color/srgb-curve.ts";
import { cubeRoot } from "./cube-root.ts";
import { at } from "./plane.ts";

/** Steps of one 8-bit value that `LINEAR` tells apart: the mean of four pixels is exact. */
export const STEPS_OF_BYTE = 4;
/** Linear light of each sRGB value from 0 up to 255, in those steps. */
const LINEAR = Float32Array.from({ length: 255 * STEPS_OF_BYTE + 1 }, (_, value) =>
  linearOf(value / (255 * STEPS_OF_BYTE)),
);

/** L, a and b of the last colour that `readOklab` was given, OKLab × 100: no new array for each pixel. */
export const oklab = new Float64Array(3);

/** OKLab × 100 of an sRGB colour in steps of a byte, into `oklab` (B. Ottosson, 2020): `lib/color/convert.ts` by tables. */
export function readOklab(red: number, green: number, blue: number): void {
  const r = at(LINEAR, red);
  const g = at(LINEAR, green);
  const b = at(LINEAR, blue);
  const long = cubeRoot(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const medium = cubeRoot(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const short = cubeRoot(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  oklab[0] = 21.04542553 * long + 79.3617785 * medium - 0.40720468 * short;
  oklab[1] = 197.79984951 * long - 242.8592205 * medium + 45.05937099 * short;
  oklab[2] = 2.59040371 * long + 78.27717662 * medium - 80.8675766 * short;
}
