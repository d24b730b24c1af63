import { fitBackdrop, plainDifference } from "./backdrop.ts";
import { measureBarrier } from "./barrier.ts";
import { colorOdds, forgetColors, learnColors, wordOdds } from "./color-odds.ts";
import { clearOfGround, findGround, isEdge } from "./ground.ts";
import { placeOdds } from "./place-odds.ts";
import { at, intAt } from "./plane.ts";
import { probabilityOf } from "./probability-of.ts";
import { GRID_PIXELS, type Picture, type Raster, SKETCH_PIXELS, sketchPlane } from "./raster.ts";
import { readBorder } from "./read-border.ts";
import { isAmong, spanOf } from "./span.ts";

/** OKLab × 100. Barrier at which cloth and backdrop are as likely: at least, per unit of border noise, at most. */
const BARRIER_BASE = 2;
const BARRIER_PER_NOISE = 4;
const BARRIER_TOP = 7;
/** Log odds per unit of barrier above that. */
const BARRIER_SLOPE = 0.35;
/** Log odds against cloth where there is no barrier at all, 1 in 20: whatever the noise. 2.5–3.5 measured alike. */
const NO_BARRIER = 3;
/** Rounds of colour refinement after the backdrop is modelled: more change nothing. */
const ROUNDS = 2;
/** Distance from a smooth backdrop, in its noise (plus a floor, OKLab × 100), that tips the scale; limits in log odds. */
const DIFFERENCE_AT = 2.5;
const NOISE_FLOOR = 0.6;
const DIFFERENCE_LIMIT = 3;
/** OKLab × 100. Behind such a barrier and yet this near the backdrop: a hole or a lettering, rarely the cloth. */
const HOLE_BARRIER = 10;
const HOLE_DIFFERENCE = 6;
const HOLE_WEIGHT = 0.3;
/** Log odds of the words from which a colour is named by them, and no hole. */
const NAMED = 0.6;
/** 0–1. Least weight where cloth lies on all four sides and no strong edge between: white cloth on a white backdrop. */
const FILL = 0.6;

/** Probability that a pixel of the sketch shows the cloth, 0–1. */
export const cloth = sketchPlane();
/** The same for the pixels of the picture, after `weighPixels`. */
export const pixelCloth = new Float32Array(GRID_PIXELS);
/** Log odds of a pixel of the sketch by all but its colour; limits of its weight. */
const odds = sketchPlane();
const most = sketchPlane();
const least = sketchPlane();
const barrier = sketchPlane();
const seed = sketchPlane();
const difference = sketchPlane();
const isCloth = new Uint8Array(SKETCH_PIXELS);

/**
 * Weighs every pixel of the sketch, then of the picture: barrier from the border, place, distance from the backdrop,
 * colour against the rest. `ofWords` gives the log odds that the page's words add to a colour bin.
 */
export function weighCloth(picture: Picture, ofWords: ((bin: number) => number) | null): void {
  const { sketch } = picture;
  forgetColors(ofWords);
  const even = Math.min(BARRIER_TOP, BARRIER_BASE + BARRIER_PER_NOISE * readBorder(sketch, seed));
  measureBarrier(sketch, seed, barrier);
  readBarrier(sketch, even);
  weigh(sketch);
  refine(sketch);
  const { noise, trust } = fitBackdrop(sketch, cloth, barrier, difference, even);
  readDifference(sketch, noise, trust);
  for (let round = 0; round < ROUNDS; round++) refine(sketch);
  fillIn(sketch, trust);
  findGround(sketch, cloth);
  weighPixels(picture);
}

function refine(sketch: Raster): void {
  learnColors(sketch, cloth);
  weigh(sketch);
}

function weigh({ count, bin }: Raster): void {
  for (let s = 0; s < count; s++) {
    cloth[s] = at(most, s) * probabilityOf(at(odds, s) + at(colorOdds, intAt(bin, s)));
  }
}

/** Pixels of the picture: by their pixel of the sketch, their own colour and, along edges, the ground beside them. */
function weighPixels({ width, height, lightness, a, b, bin, sketch }: Picture): void {
  const across = width > sketch.width ? 2 : 1;
  const down = height > sketch.height ? 2 : 1;
  for (let top = 0, s = 0; top < height; top += down) {
    const bottom = Math.min(height, top + down);
    for (let left = 0; left < width; left += across, s++) {
      const right = Math.min(width, left + across);
      const own = at(odds, s);
      const high = at(most, s);
      const low = at(least, s);
      const edge = isEdge(s);
      for (let y = top; y < bottom; y++) {
        for (let i = y * width + left; i < y * width + right; i++) {
          const k = intAt(bin, i);
          const w = k ? Math.max(low, high * probabilityOf(own + at(colorOdds, k))) : 0;
          pixelCloth[i] = edge && w > 0 ? w * clearOfGround(s, at(lightness, i), at(a, i), at(b, i)) : w;
        }
      }
    }
  }
}

/** Log odds by barrier and place. */
function readBarrier(sketch: Raster, even: number): void {
  const place = placeOdds(sketch);
  for (let s = 0; s < sketch.count; s++) {
    const far = at(barrier, s) - even;
    odds[s] = (far < 0 ? (NO_BARRIER * far) / even : BARRIER_SLOPE * far) + at(place, s);
    most[s] = intAt(sketch.bin, s) ? 1 : 0;
    least[s] = 0;
  }
}

/** Adds the log odds by distance from the backdrop, and finds holes. */
function readDifference({ count, bin }: Raster, noise: number, trust: number): void {
  for (let s = 0; s < count; s++) {
    const far = at(difference, s) / (noise + NOISE_FLOOR) - DIFFERENCE_AT;
    odds[s] = at(odds, s) + trust * Math.max(-DIFFERENCE_LIMIT, Math.min(DIFFERENCE_LIMIT, far));
    const hole = at(barrier, s) > HOLE_BARRIER && at(plainDifference, s) < HOLE_DIFFERENCE * trust;
    if (hole && at(wordOdds, intAt(bin, s)) < NAMED) most[s] = at(most, s) * HOLE_WEIGHT;
  }
}

/** Fills in what cloth lies around on all four sides without a strong edge between. */
function fillIn(sketch: Raster, trust: number): void {
  for (let s = 0; s < sketch.count; s++) isCloth[s] = at(cloth, s) > 0.5 ? 1 : 0;
  const span = spanOf(sketch, isCloth);
  for (let y = 0, s = 0; y < sketch.height; y++) {
    for (let x = 0; x < sketch.width; x++, s++) {
      if (at(barrier, s) >= HOLE_BARRIER || intAt(sketch.bin, s) === 0 || !isAmong(span, x, y)) continue;
      least[s] = FILL * trust;
      cloth[s] = Math.max(at(cloth, s), FILL * trust);
    }
  }
}
