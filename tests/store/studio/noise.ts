import { randomFrom } from "./random.ts";

/** A smooth random field over the plane, −1…1. */
export type Noise = (x: number, y: number) => number;

const SIDE = 256;
const MASK = SIDE - 1;
const ease = (t: number): number => t * t * (3 - 2 * t);

/** Distinct lattices; pictures share them, each from another corner. */
const LATTICES = 12;
const made = new Map<number, Float32Array>();

function latticeOf(number: number): Float32Array {
  const known = made.get(number);
  if (known) return known;
  const random = randomFrom(number + 1);
  const lattice = new Float32Array(SIDE * SIDE).map(() => random() * 2 - 1);
  made.set(number, lattice);
  return lattice;
}

/** Value noise on a repeating 256 × 256 lattice, one unit a cell (K. Perlin's lattice idea, 1985). */
export function noiseFrom(seed: number): Noise {
  const lattice = latticeOf(seed % LATTICES);
  const [right, down] = [(seed >>> 4) & MASK, (seed >>> 12) & MASK];
  const at = (x: number, y: number): number =>
    lattice[((y + down) & MASK) * SIDE + ((x + right) & MASK)] ?? 0;
  return (x, y) => {
    const x0 = Math.floor(x);
    const y0 = Math.floor(y);
    const s = ease(x - x0);
    const t = ease(y - y0);
    const top = at(x0, y0) + (at(x0 + 1, y0) - at(x0, y0)) * s;
    const low = at(x0, y0 + 1) + (at(x0 + 1, y0 + 1) - at(x0, y0 + 1)) * s;
    return top + (low - top) * t;
  };
}

/** Three octaves of `noise`, −1…1. */
export const cloudy =
  (noise: Noise): Noise =>
  (x, y) =>
    (noise(x, y) + 0.5 * noise(2.1 * x + 17, 2.1 * y + 5) + 0.25 * noise(4.3 * x + 41, 4.3 * y + 83)) / 1.75;
