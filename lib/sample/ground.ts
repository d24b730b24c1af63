import type { Color } from "./color-mass.ts";
import { at, intAt } from "./plane.ts";
import { type Raster, sketchPlane } from "./raster.ts";

/** OKLab × 100. A pixel along the edge of the cloth that differs this much from the ground beside it is all cloth. */
const CLEAR = 10;

/** For each pixel along the edge of the cloth: how many of its neighbours are no cloth (elsewhere 0), and their mean colour. */
const beside = sketchPlane();
const groundL = sketchPlane();
const groundA = sketchPlane();
const groundB = sketchPlane();

/** Finds the edge of the cloth and the ground beside it. */
export function findGround(sketch: Raster, cloth: Float32Array): void {
  const { width, height } = sketch;
  for (let y = 0, s = 0; y < height; y++) {
    for (let x = 0; x < width; x++, s++) {
      beside[s] = 0;
      if (at(cloth, s) <= 0.5) continue;
      if (x > 0) look(sketch, cloth, s, s - 1);
      if (x < width - 1) look(sketch, cloth, s, s + 1);
      if (y > 0) look(sketch, cloth, s, s - width);
      if (y < height - 1) look(sketch, cloth, s, s + width);
    }
  }
}

function look({ lightness, a, b, bin }: Raster, cloth: Float32Array, s: number, next: number): void {
  if (at(cloth, next) > 0.5 || intAt(bin, next) === 0) return;
  const n = at(beside, s) + 1;
  const kept = (n - 1) / n;
  beside[s] = n;
  groundL[s] = kept * at(groundL, s) + at(lightness, next) / n;
  groundA[s] = kept * at(groundA, s) + at(a, next) / n;
  groundB[s] = kept * at(groundB, s) + at(b, next) / n;
}

/** Mean colour of the ground along the whole edge; null where the cloth has no edge. */
export function meanGround({ count }: Raster): Color | null {
  let edge = 0;
  let l = 0;
  let a = 0;
  let b = 0;
  for (let s = 0; s < count; s++) {
    if (!isEdge(s)) continue;
    edge++;
    l += at(groundL, s);
    a += at(groundA, s);
    b += at(groundB, s);
  }
  return edge ? { l: l / edge, a: a / edge, b: b / edge } : null;
}

/** Whether a pixel of the sketch lies along the edge of the cloth. */
export function isEdge(s: number): boolean {
  return at(beside, s) > 0;
}

/** How much of a colour along the edge is cloth and not the ground beside it, 0–1. */
export function clearOfGround(s: number, l: number, a: number, b: number): number {
  const dl = l - at(groundL, s);
  const da = a - at(groundA, s);
  const db = b - at(groundB, s);
  return Math.min(1, Math.sqrt(dl * dl + da * da + db * db) / CLEAR);
}
