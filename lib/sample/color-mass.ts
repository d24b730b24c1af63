import { bins, histogram } from "./color-bins.ts";
import { clearOfGround, isEdge } from "./ground.ts";
import { at, byteAt, intAt, sumAt } from "./plane.ts";
import { GRID_PIXELS, PER, type Picture } from "./raster.ts";
import { cloth, weightOf } from "./weigh-cloth.ts";

/** 0–1. Pixels that weigh less are no cloth. */
const LEAST = 0.002;

/** Of each bin: pixels weighed as cloth; with each weight squared; weighed also by place; their mean colour. */
export const mass = histogram();
export const sure = histogram();
export const placed = histogram();
export const meanL = histogram();
export const meanA = histogram();
export const meanB = histogram();
const planes = [mass, sure, placed, meanL, meanA, meanB];

/** The bins that hold any cloth, the first `massive.used` of the list. */
export const massive = { used: 0, list: new Int32Array(GRID_PIXELS) };

/** A colour in OKLab × 100. */
export interface Color {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

/** Sums the cloth of a picture over its colours; returns the mass of all. `place`: weight of each pixel of the sketch. */
export function gatherColors(picture: Picture, place: Float32Array): number {
  const { sketch, even } = picture;
  for (const plane of planes) plane.fill(0, 0, bins.used + 1);
  for (let s = 0; s < sketch.count; s++) {
    const w = at(cloth, s);
    if (w < LEAST) continue;
    if (!byteAt(even, s)) gatherUneven(picture, s, at(place, s));
    else {
      const l = at(sketch.lightness, s);
      const a = at(sketch.a, s);
      const b = at(sketch.b, s);
      add(intAt(sketch.bin, s), PER, isEdge(s) ? w * clearOfGround(s, l, a, b) : w, at(place, s), l, a, b);
    }
  }
  return takeMeans();
}

/** Pixels of several colours in a pixel of the sketch: each by its own colour and, along edges, the ground beside it. */
function gatherUneven({ lightness, a, b, bin }: Picture, s: number, place: number): void {
  const edge = isEdge(s);
  for (let i = s * PER; i < (s + 1) * PER; i++) {
    const k = intAt(bin, i);
    if (k === 0) continue;
    const l = at(lightness, i);
    const va = at(a, i);
    const vb = at(b, i);
    const w = edge ? weightOf(s, k) * clearOfGround(s, l, va, vb) : weightOf(s, k);
    if (w >= LEAST) add(k, 1, w, place, l, va, vb);
  }
}

function add(k: number, pixels: number, w: number, place: number, l: number, a: number, b: number): void {
  const all = pixels * w;
  mass[k] = sumAt(mass, k) + all;
  sure[k] = sumAt(sure, k) + all * w;
  placed[k] = sumAt(placed, k) + all * place;
  meanL[k] = sumAt(meanL, k) + all * l;
  meanA[k] = sumAt(meanA, k) + all * a;
  meanB[k] = sumAt(meanB, k) + all * b;
}

function takeMeans(): number {
  let total = 0;
  massive.used = 0;
  for (let k = 1; k <= bins.used; k++) {
    const w = sumAt(mass, k);
    if (!w) continue;
    total += w;
    massive.list[massive.used++] = k;
    meanL[k] = sumAt(meanL, k) / w;
    meanA[k] = sumAt(meanA, k) / w;
    meanB[k] = sumAt(meanB, k) / w;
  }
  return total;
}

/** Squared distance of a bin's mean from a colour. */
export function apart(k: number, color: Color): number {
  const l = sumAt(meanL, k) - color.l;
  const a = sumAt(meanA, k) - color.a;
  const b = sumAt(meanB, k) - color.b;
  return l * l + a * a + b * b;
}
