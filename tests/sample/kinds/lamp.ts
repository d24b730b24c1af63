import type { Lamp } from "./sheet.ts";

/** Bounds of the light in shops' pictures, by eye from some forty of them. */
const AMBIENT = [0.28, 0.58] as const;
const SIDEWAYS = [0.15, 0.75] as const;
const ABOVE = [0.2, 0.55] as const;
/** Difference of light between two opposite edges of a picture. */
const SLOPE = 0.7;
/** Largest deviation of red and blue from a neutral white balance. */
const CAST = 0.05;

/** Largest difference of exponent between red and green in the shade. */
const COOL = 0.12;

const between = ([low, high]: readonly [number, number], t: number): number => low + (high - low) * t;

/** A lamp to one side of the camera. `cutOut`: the backdrop was replaced and keeps its own white. */
export function lampOf(random: () => number, cutOut: boolean): Lamp {
  const side = random() < 0.5 ? -1 : 1;
  const across = side * between(SIDEWAYS, random());
  const above = -between(ABOVE, random());
  const length = Math.hypot(across, above, 0.8);
  const cast = CAST * (2 * random() - 1);
  const exposure = 0.94 + 0.12 * random();
  const tint = [exposure * (1 + cast), exposure, exposure * (1 - cast)] as const;
  return {
    from: [across / length, above / length, 0.8 / length],
    ambient: between(AMBIENT, random()),
    slope: [side * SLOPE * random(), -SLOPE * (random() - 0.25)],
    cool: COOL * random(),
    tint,
    wall: cutOut ? [1, 1, 1] : tint,
  };
}
