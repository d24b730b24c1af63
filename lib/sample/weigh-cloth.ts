import { fitBackdrop, flat } from "./backdrop.ts";
import { measureBarrier } from "./barrier.ts";
import { binOf, bins, histogram, smooth } from "./color-bins.ts";
import { GRID_PIXELS, type Picture } from "./picture.ts";
import { at } from "./plane.ts";
import { isAmong, spanOf } from "./span.ts";

/** Share of the side. Width of the frame that shows what the border of the picture is made of. */
const FRAME = 0.04;
/** Place of the cloth: half widths, as shares of the picture, of the area where it usually lies; and its edge. */
const PLACE_X = 0.36;
const PLACE_Y = 0.42;
const PLACE_EDGE = 2.4;
/** Probability of cloth at the outermost pixels; one minus it in the middle. */
const PLACE_FLOOR = 0.03;
/** OKLab × 100. Start cost of a border pixel whose colour is rare along the border: cloth that leaves the picture. */
const RARE_COST = 14;
/** 0–1. A border colour this common, relative to the commonest, is a free seed. */
const COMMON = 0.5;
/** OKLab × 100. Barrier at which cloth and backdrop are as likely: at least, per unit of border noise, at most. */
const BARRIER_BASE = 2;
const BARRIER_PER_NOISE = 4;
const BARRIER_TOP = 7;
/** OKLab × 100. A higher barrier says no more, so that it cannot outvote colour and place. */
const BARRIER_CAP = 25;
/** Log odds per unit of barrier. */
const BARRIER_SLOPE = 0.35;
/** Differences of a border pixel and its neighbour above this are edges, not noise. */
const NOISE_CAP = 6;
/** Share of a histogram that is nothing. */
const NOTHING = 1e-5;
/** Rounds of colour refinement before and after the backdrop is modelled: later rounds change little. */
const ROUNDS_BEFORE = 3;
const ROUNDS_AFTER = 2;
/** How often histograms are smoothed. */
const SMOOTHING = 1;
/** Distance from a smooth backdrop, in its noise (plus a floor, OKLab × 100), that tips the scale; limits in log odds. */
const DIFFERENCE_AT = 2.5;
const NOISE_FLOOR = 0.6;
const DIFFERENCE_LIMIT = 3;
/** Trust in the model above which the barrier is measured again without the backdrop's gradient. */
const SMOOTH_ENOUGH = 0.3;
/** OKLab × 100. Behind such a barrier and yet this near the backdrop: a hole or a lettering, rarely the cloth. */
const HOLE_BARRIER = 10;
const HOLE_DIFFERENCE = 6;
const HOLE_WEIGHT = 0.3;
/** 0–1. Least weight where cloth lies on all four sides and no strong edge between: white cloth on a white backdrop. */
const FILL = 0.6;

const plane = () => new Float32Array(GRID_PIXELS);
/** Probability that a pixel shows the cloth, 0–1; the result. */
export const cloth = plane();
const barrier = plane();
const seed = plane();
const place = plane();
const difference = plane();
const hole = new Uint8Array(GRID_PIXELS);
const front = histogram();
const back = histogram();
/** Log odds that the words on the page add to each bin. */
const said = histogram();
/** Histograms that `fillBins` must clear. */
export const clothHistograms = [front, back, said];

/** Weighs every pixel: barrier from the border, place, colour against the rest, distance from the backdrop. */
export function weighCloth(picture: Picture, wordOdds: ((k: number) => number) | null): void {
  setPlace(picture);
  const even = Math.min(BARRIER_TOP, BARRIER_BASE + BARRIER_PER_NOISE * readBorder(picture));
  if (wordOdds) for (let q = 0; q < bins.used; q++) said[at(bins.list, q)] = wordOdds(at(bins.list, q));
  measureBarrier(picture, picture.lightness, picture.a, picture.b, seed, barrier);
  difference.fill(0);
  hole.fill(0);
  weigh(picture, even, false);
  for (let round = 0; round < ROUNDS_BEFORE; round++) refine(picture, even);
  const { noise, trust } = fitBackdrop(picture, cloth, barrier, difference);
  if (trust > SMOOTH_ENOUGH) measureBarrier(picture, flat.lightness, flat.a, flat.b, seed, barrier);
  readDifference(picture, noise, trust);
  for (let round = 0; round < ROUNDS_AFTER; round++) refine(picture, even);
  fillIn(picture, trust);
}

/** Turns the distance from the backdrop into log odds and finds holes. */
function readDifference({ count }: Picture, noise: number, trust: number): void {
  for (let i = 0; i < count; i++) {
    const apart = at(difference, i);
    const far = apart / (noise + NOISE_FLOOR) - DIFFERENCE_AT;
    const plain = Math.hypot(at(flat.lightness, i), at(flat.a, i), at(flat.b, i));
    hole[i] = at(barrier, i) > HOLE_BARRIER && plain < HOLE_DIFFERENCE * trust && !at(said, Math.max(0, at(binOf, i))) ? 1 : 0;
    difference[i] = trust * Math.max(-DIFFERENCE_LIMIT, Math.min(DIFFERENCE_LIMIT, far));
  }
}

/** Fills in what cloth lies around on all four sides without a strong edge between. */
function fillIn(picture: Picture, trust: number): void {
  const span = spanOf(picture, (i) => at(cloth, i) > 0.5);
  for (let y = 0, i = 0; y < picture.height; y++) {
    for (let x = 0; x < picture.width; x++, i++) {
      if (at(barrier, i) < HOLE_BARRIER && at(binOf, i) >= 0 && isAmong(span, x, y)) {
        cloth[i] = Math.max(at(cloth, i), FILL * trust);
      }
    }
  }
}

function setPlace({ width, height }: Picture): void {
  for (let y = 0, i = 0; y < height; y++) {
    const v = Math.abs((y + 0.5) / height - 0.5) / PLACE_Y;
    for (let x = 0; x < width; x++, i++) {
      const u = Math.abs((x + 0.5) / width - 0.5) / PLACE_X;
      const p = PLACE_FLOOR + (1 - 2 * PLACE_FLOOR) * Math.exp(-(u ** PLACE_EDGE + v ** PLACE_EDGE));
      place[i] = Math.log(p / (1 - p));
    }
  }
}

/** Sets the seeds of the barrier along the border and returns the noise of the frame, OKLab × 100. */
function readBorder({ width, height, lightness, a, b }: Picture): number {
  const ring = Math.ceil(FRAME * Math.max(width, height));
  let noise = 0;
  let pairs = 0;
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i++) {
      const k = at(binOf, i);
      if ((x >= ring && x < width - ring && y >= ring && y < height - ring) || k < 0) continue;
      back[k] = at(back, k) + 1;
      const next = x < width - 1 ? i + 1 : i - 1;
      if (at(binOf, next) < 0) continue;
      const dl = Math.abs(at(lightness, i) - at(lightness, next));
      const da = Math.abs(at(a, i) - at(a, next));
      noise += Math.min(NOISE_CAP, dl + da + Math.abs(at(b, i) - at(b, next)));
      pairs++;
    }
  }
  smooth(back, 2);
  let top = NOTHING;
  for (let q = 0; q < bins.used; q++) top = Math.max(top, at(back, at(bins.list, q)));
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i++) {
      const k = at(binOf, i);
      const border = x === 0 || y === 0 || x === width - 1 || y === height - 1;
      seed[i] = k < 0 ? 0 : border ? RARE_COST * (1 - Math.min(1, at(back, k) / (top * COMMON))) : -1;
    }
  }
  return pairs ? noise / pairs : 0;
}

/** Histograms of cloth and rest as weighed so far, then the weights again with them. */
function refine(picture: Picture, even: number): void {
  for (let q = 0; q < bins.used; q++) front[at(bins.list, q)] = back[at(bins.list, q)] = 0;
  let sum = 0;
  for (let i = 0; i < picture.count; i++) {
    const k = at(binOf, i);
    if (k < 0) continue;
    const w = at(cloth, i);
    front[k] = at(front, k) + w;
    back[k] = at(back, k) + 1 - w;
    sum += w;
  }
  smooth(front, SMOOTHING);
  smooth(back, SMOOTHING);
  const rest = picture.opaque - sum;
  for (let q = 0; q < bins.used; q++) {
    const k = at(bins.list, q);
    const odds = (at(front, k) / (sum + NOTHING) + NOTHING) / (at(back, k) / (rest + NOTHING) + NOTHING);
    front[k] = Math.log(odds) + at(said, k);
  }
  weigh(picture, even, true);
}

function weigh(picture: Picture, even: number, withColor: boolean): void {
  for (let i = 0; i < picture.count; i++) {
    const k = at(binOf, i);
    const color = withColor && k >= 0 ? at(front, k) : 0;
    const wall = BARRIER_SLOPE * (Math.min(at(barrier, i), BARRIER_CAP) - even);
    const odds = wall + at(place, i) + color + at(difference, i);
    cloth[i] = k < 0 ? 0 : (hole[i] ? HOLE_WEIGHT : 1) / (1 + Math.exp(-odds));
  }
}
