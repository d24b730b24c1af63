import { partOf, partWeight } from "./find-parts.ts";
import { shadeOf } from "./find-shades.ts";
import { at, intAt } from "./plane.ts";
import { type Raster, SKETCH_PIXELS, sketchPlane } from "./raster.ts";
import { isAmong, spanOf } from "./span.ts";

/** Pixels of the sketch. What touches the border at more leaves the picture: it is worn with the piece, not part of it. */
export const CONTACT = 2;
/** 0–1. Of a further colour's part so much must lie among the first one's pixels: else it is skin or another garment. */
const AMONG = 0.7;
/**
 * 0–1. A part that is like skin belongs to a worn piece only where less of its outline than this borders on no cloth: an arm or
 * a neck does, the light flower of a print lies among its other colours. 0.25–0.45 measured alike.
 */
const BARE = 0.35;

/** Where one shade lies in the sketch. */
export interface Region {
  /** Part of its weight that lies in its largest connected part, 0–1. */
  readonly whole: number;
  /** Part of its pixels whose four neighbours are of the same shade, 0–1: low along edges. */
  readonly core: number;
}

/** Reads the regions of shades whose parts have been found. */
export function readRegions({ width, count }: Raster, shades: number): Region[] {
  const sums = Array.from({ length: shades }, () => ({ weight: 0, largest: 0, pixels: 0, inner: 0 }));
  for (let s = 0; s < count; s++) {
    const part = intAt(partOf, s);
    const sum = part < 0 ? undefined : sums[intAt(shadeOf, s)];
    if (!sum) continue;
    sum.pixels++;
    if (s >= width && s < count - width && isInner(s, width)) sum.inner++;
    if (part !== s) continue;
    sum.weight += at(partWeight, s);
    sum.largest = Math.max(sum.largest, at(partWeight, s));
  }
  return sums.map(({ weight, largest, pixels, inner }) => ({
    whole: weight ? largest / weight : 0,
    core: pixels ? inner / pixels : 0,
  }));
}

function isInner(s: number, width: number): boolean {
  const shade = intAt(shadeOf, s);
  return (
    intAt(shadeOf, s - 1) === shade &&
    intAt(shadeOf, s + 1) === shade &&
    intAt(shadeOf, s - width) === shade &&
    intAt(shadeOf, s + width) === shade
  );
}

/** Pixels of each shade along the border of the picture, in the rows from `top` up to `bottom`. */
export function contactOf({ width, height }: Raster, shades: number, top: number, bottom: number): number[] {
  const contact: number[] = new Array(shades).fill(0);
  for (let y = top; y < bottom; y++) {
    const step = y === 0 || y === height - 1 ? 1 : Math.max(1, width - 1);
    for (let s = y * width; s < (y + 1) * width; s += step) {
      const shade = intAt(partOf, s) < 0 ? -1 : intAt(shadeOf, s);
      if (shade >= 0) contact[shade] = (contact[shade] ?? 0) + 1;
    }
  }
  return contact;
}

const isLead = new Uint8Array(SKETCH_PIXELS);
/** Of each part, at the pixel that stands for it: weight among the lead's pixels, and pixels at the border. */
const inside = sketchPlane();
const edge = sketchPlane();
/** Of each part: sides of its pixels along its outline, and those of them where no cloth lies. */
const outline = sketchPlane();
const open = sketchPlane();

/**
 * How much of each shade belongs to the piece, 0–1: its parts that lie among the lead's pixels, both across and down,
 * and, where the piece is alone in the picture, those that do not leave it. A colour like skin is asked for its outline too.
 */
export function shareOwn(
  { width, height, count }: Raster,
  cloth: Float32Array,
  lead: number,
  alone: boolean,
) {
  inside.fill(0);
  edge.fill(0);
  let outlined = false;
  for (let s = 0; s < count; s++) isLead[s] = intAt(partOf, s) >= 0 && intAt(shadeOf, s) === lead ? 1 : 0;
  const span = spanOf({ width, height }, isLead);
  for (let y = 0, s = 0; y < height; y++) {
    for (let x = 0; x < width; x++, s++) {
      const part = intAt(partOf, s);
      if (part < 0) continue;
      if (isAmong(span, x, y)) inside[part] = at(inside, part) + at(cloth, s);
      if (x === 0 || y === 0 || x === width - 1 || y === height - 1) edge[part] = at(edge, part) + 1;
    }
  }
  return (shade: number, likeSkin: boolean): number => {
    if (likeSkin && !outlined) followOutlines({ width, height });
    outlined ||= likeSkin;
    let own = 0;
    let all = 0;
    for (let s = 0; s < count; s++) {
      if (intAt(partOf, s) !== s || intAt(shadeOf, s) !== shade) continue;
      const weight = at(partWeight, s);
      all += weight;
      if (likeSkin && at(open, s) > BARE * at(outline, s)) continue;
      if ((alone && at(edge, s) <= CONTACT) || at(inside, s) > AMONG * weight) own += weight;
    }
    return all ? own / all : 0;
  };
}

function followOutlines({ width, height }: Pick<Raster, "width" | "height">): void {
  outline.fill(0);
  open.fill(0);
  for (let y = 0, s = 0; y < height; y++) {
    for (let x = 0; x < width; x++, s++) {
      const part = intAt(partOf, s);
      if (part < 0) continue;
      follow(part, x > 0 ? s - 1 : -1);
      follow(part, x < width - 1 ? s + 1 : -1);
      follow(part, y > 0 ? s - width : -1);
      follow(part, y < height - 1 ? s + width : -1);
    }
  }
}

/** Takes one side of a pixel into the outline of its part; `next`: the pixel beyond, −1 outside the picture. */
function follow(part: number, next: number): void {
  const beyond = next < 0 ? -1 : intAt(partOf, next);
  if (beyond === part) return;
  outline[part] = at(outline, part) + 1;
  if (beyond < 0) open[part] = at(open, part) + 1;
}
