import { blurred } from "../../store/studio/blur.ts";
import type { Frame } from "../../store/studio/photo.ts";
import type { Weave } from "../../store/studio/recipe.ts";
import type { Finish } from "./finish.ts";
import type { Lamp, View } from "./sheet.ts";

/** Light on each pixel of a panel, and the lamp's own light that it throws back. */
export interface Shade {
  readonly shade: Float32Array;
  readonly gloss: Float32Array;
}

/** Strength of the highlight, and how sharp it is. By eye. */
const SHINE: Readonly<Record<Weave, readonly [strength: number, sharp: number]>> = {
  smooth: [0.02, 26],
  knit: [0, 26],
  denim: [0.02, 26],
  satin: [0.34, 22],
  wool: [0, 26],
  leather: [0.26, 26],
};
const METAL_SHINE = [0.6, 14] as const;

/** How much less of the light from all sides reaches a fold, scene units deep. */
const VALLEY = 0.012;
/** Scene units over which a valley is told from its surroundings. */
const VALLEY_REACH = 36;

/** Light and shine over a relief in scene units. */
export function shadeOf(
  relief: Float32Array,
  frame: Frame,
  { sx, sy }: View,
  { from, ambient }: Lamp,
  weave: Weave,
  finish: Finish | null,
): Shade {
  const { width, height } = frame;
  const soft = blurred(
    relief,
    width,
    height,
    Math.max(1.5, VALLEY_REACH * sx),
    Math.max(1.5, VALLEY_REACH * sy),
  );
  const shade = new Float32Array(relief.length);
  const gloss = new Float32Array(relief.length);
  const [strength, sharp] = finish === "metal" ? METAL_SHINE : SHINE[weave];
  // Half way between lamp and camera (J. Blinn, 1977).
  const length = Math.hypot(from[0], from[1], from[2] + 1);
  const half = [from[0] / length, from[1] / length, (from[2] + 1) / length] as const;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      const [left, right] = [x > 0 ? 1 : 0, x < width - 1 ? 1 : 0];
      const [up, down] = [y > 0 ? width : 0, y < height - 1 ? width : 0];
      const gx = (sx * ((relief[i + right] ?? 0) - (relief[i - left] ?? 0))) / (left + right);
      const gy = (sy * ((relief[i + down] ?? 0) - (relief[i - up] ?? 0)) * width) / (up + down);
      const facing = 1 / Math.sqrt(gx * gx + gy * gy + 1);
      const lambert = Math.max(0, (from[2] - gx * from[0] - gy * from[1]) * facing) / from[2];
      const valley = Math.max(-0.28, Math.min(0.12, ((relief[i] ?? 0) - (soft[i] ?? 0)) * VALLEY));
      shade[i] = (ambient + (1 - ambient) * lambert) * (1 + valley);
      if (strength > 0)
        gloss[i] = strength * Math.max(0, (half[2] - gx * half[0] - gy * half[1]) * facing) ** sharp;
    }
  return { shade, gloss };
}
