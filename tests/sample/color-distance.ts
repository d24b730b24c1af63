import {
  type Oklab as CuloriOklab,
  differenceCiede2000,
  modeLab65,
  modeOklab,
  modeRgb,
  useMode,
} from "culori/fn";
import type { Oklab } from "../../lib/color/oklab.ts";
import type { Paint } from "./painted.ts";

useMode(modeRgb);
useMode(modeLab65);
const toOklab = useMode(modeOklab);
const difference = differenceCiede2000();

const asCulori = ([l, a, b]: Oklab): CuloriOklab => ({ mode: "oklab", l, a, b });

/** OKLab of an 8-bit colour by culori 4.0.2: not by the code under test. */
export function oklabOf([r, g, b]: Paint): Oklab {
  const { l, a, b: blue } = toOklab({ mode: "rgb", r: r / 255, g: g / 255, b: b / 255 });
  return [l, a, blue];
}

/** CIEDE2000 between a swatch and a painted colour, by culori 4.0.2. */
export function apart(oklab: Oklab, paint: Paint): number {
  return difference(asCulori(oklab), asCulori(oklabOf(paint)));
}
