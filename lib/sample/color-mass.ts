import { bins, histogram } from "./color-bins.ts";
import { at, intAt } from "./plane.ts";
import { GRID_PIXELS, type Picture } from "./raster.ts";

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

/** Sums the cloth of a picture over its colours; returns the mass of all. */
export function gatherColors(
  { count, bin, sketchOf, lightness, a, b }: Picture,
  cloth: Float32Array,
  place: Float32Array,
): number {
  for (const plane of planes) plane.fill(0, 0, bins.used + 1);
  let total = 0;
  for (let i = 0; i < count; i++) {
    const w = at(cloth, i);
    if (w < LEAST) continue;
    const k = intAt(bin, i);
    total += w;
    mass[k] = at(mass, k) + w;
    sure[k] = at(sure, k) + w * w;
    placed[k] = at(placed, k) + w * at(place, intAt(sketchOf, i));
    meanL[k] = at(meanL, k) + w * at(lightness, i);
    meanA[k] = at(meanA, k) + w * at(a, i);
    meanB[k] = at(meanB, k) + w * at(b, i);
  }
  massive.used = 0;
  for (let k = 1; k <= bins.used; k++) {
    const w = at(mass, k);
    if (!w) continue;
    massive.list[massive.used++] = k;
    meanL[k] = at(meanL, k) / w;
    meanA[k] = at(meanA, k) / w;
    meanB[k] = at(meanB, k) / w;
  }
  return total;
}

/** Squared distance of a bin's mean from a colour. */
export function apart(k: number, color: Color): number {
  const l = at(meanL, k) - color.l;
  const a = at(meanA, k) - color.a;
  const b = at(meanB, k) - color.b;
  return l * l + a * a + b * b;
}
