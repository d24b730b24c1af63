import type { Noise } from "./noise.ts";
import type { Weave } from "./recipe.ts";

/** What the threads do to the light at (u, v): a factor near 1. `px` is the size of a pixel in scene units. */
export type Texture = (u: number, v: number, px: number) => number;

const TURN = 2 * Math.PI;

/** The fine surface of each weave. Stitches never get smaller than two pixels: finer ones average out in a camera. */
export function textureOf(weave: Weave, noise: Noise): Texture {
  switch (weave) {
    case "knit":
      return (u, v, px) => {
        const gauge = Math.max(7, 4.2 * px);
        const wale = u / gauge - Math.floor(u / gauge) - 0.5;
        const slope = v / (gauge * 0.8) + Math.abs(wale) * 1.1;
        const stitch = Math.cos(TURN * slope) * 0.5 + Math.cos(TURN * wale) * 0.5;
        return 1 + 0.13 * stitch + 0.06 * noise(u / 3, v / 3);
      };
    case "denim":
      return (u, v, px) => {
        const twill = Math.sin((TURN * (u + 1.6 * v)) / Math.max(4, 2.4 * px));
        return 1 + 0.05 * twill + 0.09 * noise(u / 2.2, v / 9) + 0.05 * noise(u / 40, v / 40);
      };
    case "wool":
      return (u, v) => 1 + 0.07 * noise(u / 2.4, v / 2.4) + 0.04 * noise(u / 7, v / 5);
    case "leather":
      return (u, v) => 1 + 0.05 * noise(u / 3, v / 3) * noise(u / 5 + 9, v / 5);
    case "satin":
      return (u, v) => 1 + 0.02 * noise(u / 1.5, v / 12);
    case "smooth":
      return (u, v) => 1 + 0.03 * noise(u / 2, v / 2);
  }
}
