import { oklabFromRgb8 } from "../../../lib/color/convert.ts";
import type { Oklab } from "../../../lib/color/oklab.ts";
import { blurred } from "../../store/studio/blur.ts";
import { codeOfLight } from "../../store/studio/light.ts";
import { randomFrom } from "../../store/studio/random.ts";
import { FINE, SHEER, type Sheet } from "./sheet.ts";

/** Pixels a side that the sampler is given. */
export const SIDE = 96;
/** Sensor noise and compression together, standard deviation in sRGB codes at the fine size. */
const GRAIN = 2.2;
/** Fine pixels over which colour, not lightness, is smeared: chroma halved by JPEG in a picture of 250 pixels. */
const SMEAR = 1.4;
/** Red, green and blue in a picture's lightness as JPEG stores it (ITU-R BT.601). */
const LUMA = [0.299, 0.587, 0.114] as const;
/** A dye that shows on fewer fine pixels than this has no place where a person could point at it. */
const LEAST = 24;

/** Pixels that a median is taken of, at most: evenly picked. */
const ENOUGH = 1200;

/** A colour of the piece as a labeller would point at it. `share`: of the piece's marked pixels. */
export interface TruePatch {
  readonly color: Oklab;
  readonly group: number;
  readonly share: number;
}

/** One frame's noise, 0 on the mean; each picture reads it from another place. */
const NOISE = noiseOf(65_536, randomFrom(1));

function noiseOf(length: number, random: () => number): Float32Array {
  return new Float32Array(length).map(() => (random() + random() + random() - 1.5) * 2 * GRAIN);
}

/** The exposed frame in sRGB codes: grain, smeared colour. */
function expose({ light }: Sheet, random: () => number): Uint8ClampedArray[] {
  const size = FINE * FINE;
  const start = Math.floor(random() * NOISE.length);
  const [luma, reds, blues] = [new Float32Array(size), new Float32Array(size), new Float32Array(size)];
  for (let i = 0; i < size; i++) {
    const [r, b] = [codeOfLight(light[3 * i] ?? 0), codeOfLight(light[3 * i + 2] ?? 0)];
    const y = LUMA[0] * r + LUMA[1] * codeOfLight(light[3 * i + 1] ?? 0) + LUMA[2] * b;
    luma[i] = y + (NOISE[(start + i) % NOISE.length] ?? 0);
    reds[i] = r - y;
    blues[i] = b - y;
  }
  const [softReds, softBlues] = [blurred(reds, FINE, FINE, SMEAR), blurred(blues, FINE, FINE, SMEAR)];
  const codes = [
    new Uint8ClampedArray(size),
    new Uint8ClampedArray(size),
    new Uint8ClampedArray(size),
  ] as const;
  for (let i = 0; i < size; i++) {
    const [y, red, blue] = [luma[i] ?? 0, softReds[i] ?? 0, softBlues[i] ?? 0];
    codes[0][i] = y + red;
    codes[1][i] = y - (LUMA[0] * red + LUMA[2] * blue) / LUMA[1];
    codes[2][i] = y + blue;
  }
  return [...codes];
}

const middle = (values: Float64Array): number => values.sort()[values.length >> 1] ?? 0;

/** The OKLab median of each mark's pixels: what the cloth typically looks like, lit as it is in this picture. */
function patchesOf(mark: Uint8Array, codes: readonly Uint8ClampedArray[]): TruePatch[] {
  const [red, green, blue] = codes;
  const found = new Map<number, number[]>();
  mark.forEach((value, i) => {
    if (value === 0) return;
    const list = found.get(value);
    if (list) list.push(i);
    else found.set(value, [i]);
  });
  const total = [...found.values()].reduce((sum, list) => sum + list.length, 0);
  return [...found]
    .filter(([, list]) => list.length >= LEAST)
    .map(([value, list]) => {
      const every = Math.ceil(list.length / ENOUGH);
      const labs = list
        .filter((_, n) => n % every === 0)
        .map((i) => oklabFromRgb8(red?.[i] ?? 0, green?.[i] ?? 0, blue?.[i] ?? 0));
      const [l, a, b] = [0, 1, 2].map((k) => middle(Float64Array.from(labs, (lab) => lab[k] ?? 0)));
      const color: Oklab = [l ?? 0, a ?? 0, b ?? 0];
      return { color, group: value % SHEER, share: list.length / total };
    })
    .sort((a, b) => b.share - a.share);
}

/** The finished picture as the sampler gets it, RGBA, and the labels that belong to it. */
export function develop(sheet: Sheet, random: () => number): { data: Uint8ClampedArray; truth: TruePatch[] } {
  const codes = expose(sheet, random);
  const data = new Uint8ClampedArray(SIDE * SIDE * 4).fill(255);
  for (let y = 0; y < SIDE; y++)
    for (let x = 0; x < SIDE; x++) {
      const fine = 2 * y * FINE + 2 * x;
      codes.forEach((plane, c) => {
        const sum =
          (plane[fine] ?? 0) +
          (plane[fine + 1] ?? 0) +
          (plane[fine + FINE] ?? 0) +
          (plane[fine + FINE + 1] ?? 0);
        data[4 * (y * SIDE + x) + c] = Math.round(sum / 4);
      });
    }
  return { data, truth: patchesOf(sheet.mark, codes) };
}
