import { type Lab as CuloriLab, converter, modeLab, modeLrgb, modeXyz50, useMode } from "culori/fn";
import { COLORCHECKER, type Patch } from "./facts/colorchecker.ts";
import type { Illuminant } from "./facts/illuminants.ts";
import type { Paint } from "./painted.ts";

useMode(modeLab);
useMode(modeLrgb);
useMode(modeXyz50);
// culori 4.0.2: CIE L*a*b* D50 to XYZ, and by Bradford to D65 and linear sRGB.
const toXyz50 = converter("xyz50");
const toLinear = converter("lrgb");

type Triple = readonly [number, number, number];
type Matrix = readonly [Triple, Triple, Triple];

const times = (m: Matrix, v: Triple): Triple =>
  m.map((row) => row[0] * v[0] + row[1] * v[1] + row[2] * v[2]) as unknown as Triple;

/** Bradford's sharpened cones (K. M. Lam, 1985; ICC.1:2010, annex E) and back. */
const BRADFORD: Matrix = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
];
const FROM_BRADFORD: Matrix = [
  [0.9869929, -0.1470543, 0.1599627],
  [0.4323053, 0.5183603, 0.0492912],
  [-0.0085287, 0.0400428, 0.9684867],
];
/** XYZ (D65) to linear sRGB: IEC 61966-2-1. */
const TO_SRGB: Matrix = [
  [3.2404542, -1.5371385, -0.4985314],
  [-0.969266, 1.8760108, 0.041556],
  [0.0556434, -0.2040259, 1.0572252],
];
const D50_WHITE: Triple = [0.34567 / 0.3585, 1, (1 - 0.34567 - 0.3585) / 0.3585];

const encoded = (v: number): number => (v <= 0.0031308 ? v * 12.92 : 1.055 * v ** (1 / 2.4) - 0.055);

/** Linear sRGB of a patch in the light it is published for; outside 0–1 where sRGB cannot show it. */
export function trueLight({ lab: [l, a, b] }: Patch): Triple {
  const color: CuloriLab = { mode: "lab", l, a, b };
  const { r, g, b: blue } = toLinear(color);
  return [r, g, blue];
}

/** What a light does to a patch, in linear sRGB of a camera that stays balanced for daylight. */
export type Lamp = (patch: Patch) => Triple;

/** A light that tints each channel by itself: what the correction can undo exactly. */
export const tinting =
  (cast: Triple): Lamp =>
  (patch) =>
    trueLight(patch).map((part, channel) => part * (cast[channel] ?? 1)) as unknown as Triple;

/**
 * A light that mixes the channels: the patch as it looks under the light's white by Bradford's adaptation, taken by a camera that
 * sees as CIE 1931 does. Stands for the lamp's spectrum, which would add metamerism.
 */
export function shining({ white: [x, y] }: Illuminant): Lamp {
  const from = times(BRADFORD, D50_WHITE);
  const to = times(BRADFORD, [x / y, 1, (1 - x - y) / y]);
  return ({ lab: [l, a, b] }) => {
    const xyz = toXyz50({ mode: "lab", l, a, b } as CuloriLab);
    const cones = times(BRADFORD, [xyz.x, xyz.y, xyz.z]);
    const adapted = cones.map((cone, at) => (cone * (to[at] ?? 1)) / (from[at] ?? 1)) as unknown as Triple;
    return times(TO_SRGB, times(FROM_BRADFORD, adapted));
  };
}

/** Linear light that the brightest channel of the chart's white gets: a photo exposed without clipping. */
const EXPOSED = 0.85;
/** Pixels a side of one patch; six patches in a row, four rows. */
const SIDE = 24;
const ACROSS = 6;

export interface Chart {
  readonly data: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

/** The whole chart in one light as an 8-bit photo. */
export function chartIn(lamp: Lamp): Chart {
  const white = COLORCHECKER[18];
  if (!white) throw new Error("The chart has no white.");
  const exposure = EXPOSED / Math.max(...lamp(white));
  const paints = COLORCHECKER.map((patch) =>
    lamp(patch).map((part) => 255 * encoded(Math.min(1, Math.max(0, part * exposure)))),
  );
  const width = ACROSS * SIDE;
  const height = (COLORCHECKER.length / ACROSS) * SIDE;
  const data = new Uint8ClampedArray(width * height * 4);
  for (let at = 0; at < width * height; at++) {
    const column = Math.floor((at % width) / SIDE);
    const row = Math.floor(Math.floor(at / width) / SIDE);
    data.set([...(paints[row * ACROSS + column] ?? []), 255], at * 4);
  }
  return { data, width, height };
}

/** The middle of a patch, 0–1 across and down. */
export function middleOf(patch: number): readonly [x: number, y: number] {
  return [
    ((patch % ACROSS) + 0.5) / ACROSS,
    ((Math.floor(patch / ACROSS) + 0.5) * ACROSS) / COLORCHECKER.length,
  ];
}

/** The 8-bit colour in the middle of a patch. */
export function colorAt({ data, width }: Chart, pixels: Uint8ClampedArray, patch: number): Paint {
  const [x, y] = middleOf(patch);
  const at = 4 * (Math.floor(y * (data.length / 4 / width)) * width + Math.floor(x * width));
  return [pixels[at] ?? 0, pixels[at + 1] ?? 0, pixels[at + 2] ?? 0];
}

/** The 8-bit colour (not rounded) a patch would have in neutral light as strong as `factor`. */
export function truePaint(patch: Patch, factor: number): Paint {
  return trueLight(patch).map((part) => 255 * encoded(Math.max(0, part * factor))) as unknown as Paint;
}
