import { bins } from "./color-bins.ts";
import { apart, type Color, gatherColors, mass, massive, placed, sure } from "./color-mass.ts";
import { findModes, type Mode } from "./find-modes.ts";
import { intAt, sumAt } from "./plane.ts";
import { GRID_PIXELS, type Picture, SKETCH_PIXELS } from "./raster.ts";

/**
 * Two modes are shades of one cloth when nearer than this (OKLab × 100), lightness weighed less than hue. Hue is compared
 * as if both were lit alike: in OKLab a change of light scales L, a and b by one factor, since it scales cone responses
 * and OKLab is their cube root.
 */
const SHADE_REACH = 14;
const SHADE_LIGHT = 0.8;
const SHADE_HUE = 2;
/** …and the colours between them are this dense compared with the smaller one, within the radius; or nearer still. */
const VALLEY = 0.65;
const VALLEY_RADIUS = 4;
const SAME = 5;

/** One colour of the picture with its pixels, OKLab × 100 at its highest mode. */
export interface Shade extends Color {
  /** Place among the shades, and in `shadeOf`. */
  readonly index: number;
  /** Mean colour of the modes that were joined into it. */
  mean: Color;
  /** Height of its mode. */
  readonly peak: number;
  /** Pixels weighed as cloth; the same with each weight squared; weighed also by place. */
  mass: number;
  sure: number;
  placed: number;
}

/** Shade of each pixel of the sketch: an index into the shades, −1 where its colour is none of the cloth's. */
export const shadeOf = new Int32Array(SKETCH_PIXELS);

/** Mode, then shade, that each bin goes to. */
const owner = new Int32Array(GRID_PIXELS + 1);

/**
 * The colours of the cloth: modes of their density, every colour with its nearest mode, modes without a valley between
 * them joined.
 * @param place weight of each pixel of the sketch when colours compete.
 * @param part of the usual share of the cloth that a colour of the piece may have, 0–1.
 */
export function findShades(picture: Picture, place: Float32Array, part: number): Shade[] {
  const modes = findModes(gatherColors(picture, place) * part);
  const masses = modes.map(() => 0);
  owner.fill(-1, 0, bins.used + 1);
  for (let q = 0; q < massive.used; q++) {
    const k = intAt(massive.list, q);
    const nearest = nearestOf(modes, k);
    owner[k] = nearest;
    masses[nearest] = (masses[nearest] ?? 0) + sumAt(mass, k);
  }
  const { shades, shadeOfMode } = joinModes(modes, masses);
  for (let q = 0; q < massive.used; q++) {
    const k = intAt(massive.list, q);
    owner[k] = shadeOfMode[intAt(owner, k)] ?? 0;
    const shade = shades[intAt(owner, k)];
    if (!shade) continue;
    shade.mass += sumAt(mass, k);
    shade.sure += sumAt(sure, k);
    shade.placed += sumAt(placed, k);
  }
  const { count, bin } = picture.sketch;
  for (let s = 0; s < count; s++) shadeOf[s] = intAt(owner, intAt(bin, s));
  return shades;
}

function nearestOf(modes: readonly Mode[], k: number): number {
  let best = 0;
  let nearest = Number.POSITIVE_INFINITY;
  for (let m = 0; m < modes.length; m++) {
    const distance = apart(k, modes[m] as Mode);
    if (distance >= nearest) continue;
    nearest = distance;
    best = m;
  }
  return best;
}

/** Joins the modes that are shades of one cloth to the higher one. */
function joinModes(modes: readonly Mode[], masses: readonly number[]) {
  const shades: Shade[] = [];
  const held: number[] = [];
  const shadeOfMode: number[] = [];
  const order = modes.map((_, m) => m).sort((p, q) => (modes[q] as Mode).peak - (modes[p] as Mode).peak);
  for (const m of order) {
    const mode = modes[m] as Mode;
    const own = masses[m] ?? 0;
    const into = nearestShade(shades, mode);
    if (into) {
      const all = (held[into.index] ?? 0) + own;
      into.mean = between(into.mean, mode, own / (all || 1));
      held[into.index] = all;
      shadeOfMode[m] = into.index;
    } else {
      shadeOfMode[m] = shades.length;
      held.push(own);
      shades.push({ ...mode, index: shades.length, mean: mode, mass: 0, sure: 0, placed: 0 });
    }
  }
  return { shades, shadeOfMode };
}

function nearestShade(shades: readonly Shade[], mode: Mode): Shade | null {
  let into: Shade | null = null;
  let nearest = SHADE_REACH;
  for (const shade of shades) {
    const distance = shadeDistance(shade, mode);
    if (distance >= nearest) continue;
    if (distance >= SAME && density(between(shade, mode, 0.5)) < VALLEY * density(mode)) continue;
    nearest = distance;
    into = shade;
  }
  return into;
}

/** Distance of two colours as shades of one cloth: their hues are compared in the light of the darker one. */
export function shadeDistance(p: Color, q: Color): number {
  const dark = Math.min(p.l, q.l);
  const dimP = dark / (p.l || 1);
  const dimQ = dark / (q.l || 1);
  const hue = Math.hypot(p.a * dimP - q.a * dimQ, p.b * dimP - q.b * dimQ);
  return Math.hypot((p.l - q.l) * SHADE_LIGHT, hue * SHADE_HUE);
}

const between = (p: Color, q: Color, part: number): Color => ({
  l: p.l + part * (q.l - p.l),
  a: p.a + part * (q.a - p.a),
  b: p.b + part * (q.b - p.b),
});

/** Weighed density of colours around a point. */
function density(color: Color): number {
  let sum = 0;
  for (let q = 0; q < massive.used; q++) {
    const k = intAt(massive.list, q);
    const near = 1 - apart(k, color) / (VALLEY_RADIUS * VALLEY_RADIUS);
    if (near > 0) sum += near * sumAt(mass, k);
  }
  return sum;
}
