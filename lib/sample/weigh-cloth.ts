import { fitBackdrop, plainDifference } from "./backdrop.ts";
import { measureBarrier } from "./barrier.ts";
import { bins } from "./color-bins.ts";
import { colorOdds, forgetColors, front, learnColors, wordOdds } from "./color-odds.ts";
import { findGround } from "./ground.ts";
import { placeOdds } from "./place-odds.ts";
import { at, intAt, sumAt } from "./plane.ts";
import { ODDS_STEPS, probabilityOf } from "./probability-of.ts";
import { type Raster, SKETCH_PIXELS, sketchPlane } from "./raster.ts";
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
/** Rounds of colour refinement once the backdrop is modelled; more, or one before it, change nothing. */
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
/** Log odds of a pixel of the sketch by all but its colour, in `ODDS_STEPS`; limits of its weight. */
const odds = new Int32Array(SKETCH_PIXELS);
const most = sketchPlane();
const least = sketchPlane();
const barrier = sketchPlane();
const seed = sketchPlane();
const difference = sketchPlane();
const isCloth = new Uint8Array(SKETCH_PIXELS);

/**
 * Weighs every pixel of the sketch: barrier from the border, place, distance from the backdrop,
 * colour against the rest. `ofWords` gives the log odds that the page's words add to a colour bin.
 */
export function weighCloth(sketch: Raster, ofWords: ((bin: number) => number) | null): void {
  forgetColors(sketch, ofWords);
  const even = Math.min(BARRIER_TOP, BARRIER_BASE + BARRIER_PER_NOISE * readBorder(sketch, seed));
  measureBarrier(sketch, seed, barrier);
  readBarrier(sketch, even);
  weigh(sketch);
  const { noise, trust } = fitBackdrop(sketch, cloth, barrier, difference, even);
  readDifference(sketch, noise, trust);
  for (let round = 0; round < ROUNDS; round++) {
    learnColors();
    weigh(sketch);
  }
  fillIn(sketch, trust);
  findGround(sketch, cloth);
}

function weigh({ count, bin }: Raster): void {
  front.fill(0, 0, bins.used + 1);
  for (let s = 0; s < count; s++) {
    const k = intAt(bin, s);
    const w = at(most, s) * probabilityOf(intAt(odds, s) + intAt(colorOdds, k));
    cloth[s] = w;
    front[k] = sumAt(front, k) + w;
  }
}

/** Weight, 0–1, of a colour bin within a pixel of the sketch; `cloth` holds that of its own bin. */
export function weightOf(s: number, bin: number): number {
  return Math.max(at(least, s), at(most, s) * probabilityOf(intAt(odds, s) + intAt(colorOdds, bin)));
}

/** Log odds by barrier and place. */
function readBarrier(sketch: Raster, even: number): void {
  const place = placeOdds(sketch);
  for (let s = 0; s < sketch.count; s++) {
    const far = at(barrier, s) - even;
    odds[s] = ODDS_STEPS * ((far < 0 ? (NO_BARRIER * far) / even : BARRIER_SLOPE * far) + at(place, s));
    most[s] = intAt(sketch.bin, s) ? 1 : 0;
    least[s] = 0;
  }
}

/** Adds the log odds by distance from the backdrop, and finds holes. */
function readDifference({ count, bin }: Raster, noise: number, trust: number): void {
  for (let s = 0; s < count; s++) {
    const far = at(difference, s) / (noise + NOISE_FLOOR) - DIFFERENCE_AT;
    odds[s] =
      intAt(odds, s) + ODDS_STEPS * trust * Math.max(-DIFFERENCE_LIMIT, Math.min(DIFFERENCE_LIMIT, far));
    const hole = at(barrier, s) > HOLE_BARRIER && at(plainDifference, s) < HOLE_DIFFERENCE * trust;
    if (hole && sumAt(wordOdds, intAt(bin, s)) < NAMED) most[s] = at(most, s) * HOLE_WEIGHT;
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
