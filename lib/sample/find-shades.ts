import { BIN_COUNT, binOf, bins, histogram, smooth } from "./color-bins.ts";
import { GRID_PIXELS, type Picture } from "./picture.ts";
import { at, intAt } from "./plane.ts";

/** OKLab × 100. Window of the mean shift: narrow, so that folds and edges do not pull the colour. */
const WINDOW = 6;
/** Steps of the mean shift; it stands still before. */
const SHIFTS = 4;
/** OKLab × 100. A mode takes its surroundings this far with it, so that the next one is another colour. */
const REACH = 8;
/** Weight of lightness against hue when colours are assigned: cloth varies in light more than in hue. */
const LIGHT_WEIGHT = 1;
/** Modes looked for, and the smallest share of the cloth that starts one. */
const MOST_MODES = 10;
const SMALLEST = 0.02;
/** Two modes are shades of one cloth when nearer than this (OKLab × 100, lightness and hue weighed as below)… */
const SHADE_REACH = 14;
const SHADE_LIGHT = 0.8;
const SHADE_HUE = 1.5;
/** …and the colours between them are this dense compared with the smaller one, within the radius; or nearer still. */
const VALLEY = 0.6;
const VALLEY_RADIUS = 4;
const SAME = 5;

/** One colour of the picture with its pixels. */
export interface Shade {
  /** OKLab × 100. */
  l: number;
  a: number;
  b: number;
  /** Height of the mode. */
  peak: number;
  /** Pixels weighed as cloth; the same with each weight squared; weighed also by place; all of them. */
  mass: number;
  sure: number;
  placed: number;
  area: number;
}

/** Shade of each pixel: an index into the shades, −1 where transparent. */
export const shadeOf = new Int32Array(GRID_PIXELS);

const mass = histogram();
const sure = histogram();
const placed = histogram();
const area = histogram();
const height = histogram();
const meanL = histogram();
const meanA = histogram();
const meanB = histogram();
const free = new Uint8Array(BIN_COUNT);
const owner = new Int32Array(BIN_COUNT);
export const shadeHistograms = [mass, sure, placed, area, height, meanL, meanA, meanB];

/**
 * The colours of the cloth: modes of the weighed colour density (mean shift: K. Fukunaga and L. Hostetler, 1975)
 * taken from the highest down, every bin with its nearest mode, modes without a valley between them joined.
 */
export function findShades(picture: Picture, cloth: Float32Array, placeWeight: Float32Array): Shade[] {
  const total = gather(picture, cloth, placeWeight);
  const modes: Shade[] = [];
  while (modes.length < MOST_MODES) {
    const mode = highest();
    if (!mode || (modes.length && mode.peak < SMALLEST * total)) break;
    modes.push(mode);
  }
  for (let q = 0; q < bins.used; q++) {
    const k = intAt(bins.list, q);
    let best = 0;
    modes.forEach((mode, m) => {
      const held = modes[best];
      if (held && apart(k, mode, LIGHT_WEIGHT) < apart(k, held, LIGHT_WEIGHT)) best = m;
    });
    owner[k] = best;
    const mode = modes[best];
    if (!mode) continue;
    mode.mass += at(mass, k);
    mode.sure += at(sure, k);
    mode.placed += at(placed, k);
    if (apart(k, mode, 1) < REACH * REACH) mode.area += at(area, k);
  }
  return join(picture, modes);
}

function gather(picture: Picture, cloth: Float32Array, placeWeight: Float32Array): number {
  let total = 0;
  for (let i = 0; i < picture.count; i++) {
    const k = intAt(binOf, i);
    if (k < 0) continue;
    const w = at(cloth, i) + 1e-9;
    total += w;
    mass[k] = at(mass, k) + w;
    sure[k] = at(sure, k) + w * w;
    placed[k] = at(placed, k) + w * at(placeWeight, i);
    area[k] = at(area, k) + 1;
    meanL[k] = at(meanL, k) + w * at(picture.lightness, i);
    meanA[k] = at(meanA, k) + w * at(picture.a, i);
    meanB[k] = at(meanB, k) + w * at(picture.b, i);
  }
  for (let q = 0; q < bins.used; q++) {
    const k = intAt(bins.list, q);
    const w = at(mass, k);
    meanL[k] = at(meanL, k) / w;
    meanA[k] = at(meanA, k) / w;
    meanB[k] = at(meanB, k) / w;
    height[k] = w;
    free[k] = 1;
  }
  smooth(height, 1);
  return total;
}

/** Squared distance of a bin's mean from a colour. */
function apart(k: number, color: { l: number; a: number; b: number }, lightWeight: number): number {
  const l = (at(meanL, k) - color.l) * lightWeight;
  const a = at(meanA, k) - color.a;
  const b = at(meanB, k) - color.b;
  return l * l + a * a + b * b;
}

function highest(): Shade | null {
  let top = -1;
  for (let q = 0; q < bins.used; q++) {
    const k = intAt(bins.list, q);
    if (free[k] && (top < 0 || at(height, k) > at(height, top))) top = k;
  }
  if (top < 0) return null;
  const mode = {
    l: at(meanL, top),
    a: at(meanA, top),
    b: at(meanB, top),
    peak: 0,
    mass: 0,
    sure: 0,
    placed: 0,
    area: 0,
  };
  for (let shift = 0; shift < SHIFTS; shift++) {
    let sum = 0;
    let l = 0;
    let a = 0;
    let b = 0;
    for (let q = 0; q < bins.used; q++) {
      const k = intAt(bins.list, q);
      const near = free[k] ? 1 - apart(k, mode, 1) / (WINDOW * WINDOW) : 0;
      if (near <= 0) continue;
      const w = near * at(mass, k);
      sum += w;
      l += w * at(meanL, k);
      a += w * at(meanA, k);
      b += w * at(meanB, k);
    }
    if (!sum) break;
    mode.l = l / sum;
    mode.a = a / sum;
    mode.b = b / sum;
    mode.peak = sum;
  }
  for (let q = 0; q < bins.used; q++) {
    const k = intAt(bins.list, q);
    if (k === top || apart(k, mode, LIGHT_WEIGHT) < REACH * REACH) free[k] = 0;
  }
  return mode;
}

/** Weighed density of colours around a point. */
function density(color: { l: number; a: number; b: number }): number {
  let sum = 0;
  for (let q = 0; q < bins.used; q++) {
    const k = intAt(bins.list, q);
    sum += Math.max(0, 1 - apart(k, color, 1) / (VALLEY_RADIUS * VALLEY_RADIUS)) * at(mass, k);
  }
  return sum;
}

/** Joins the modes that are shades of one cloth to the higher one, and labels the pixels. */
function join(picture: Picture, modes: Shade[]): Shade[] {
  const kept: Shade[] = [];
  const index = new Map<Shade, number>();
  for (const mode of [...modes].sort((p, q) => q.peak - p.peak)) {
    let into: Shade | null = null;
    let nearest = SHADE_REACH;
    for (const other of kept) {
      const hue = Math.hypot(other.a - mode.a, other.b - mode.b) * SHADE_HUE;
      const distance = Math.hypot((other.l - mode.l) * SHADE_LIGHT, hue);
      if (distance >= nearest) continue;
      const between = { l: (other.l + mode.l) / 2, a: (other.a + mode.a) / 2, b: (other.b + mode.b) / 2 };
      if (distance >= SAME && density(between) < VALLEY * density(mode)) continue;
      nearest = distance;
      into = other;
    }
    if (into) {
      into.mass += mode.mass;
      into.sure += mode.sure;
      into.placed += mode.placed;
      into.area += mode.area;
      index.set(mode, kept.indexOf(into));
    } else {
      index.set(mode, kept.push(mode) - 1);
    }
  }
  const merged = modes.map((mode) => index.get(mode) ?? 0);
  for (let i = 0; i < picture.count; i++) {
    const k = intAt(binOf, i);
    shadeOf[i] = k < 0 ? -1 : (merged[intAt(owner, k)] ?? 0);
  }
  return kept;
}
