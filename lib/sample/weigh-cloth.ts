import { fitBackdrop, plainDifference } from "./backdrop.ts";
import { measureBarrier } from "./barrier.ts";
import { binOf, bins, histogram, smooth } from "./color-bins.ts";
import { GRID_PIXELS, type Picture } from "./picture.ts";
import { at, intAt } from "./plane.ts";
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
/** Log odds per unit of barrier. */
const BARRIER_SLOPE = 0.35;
/** Differences of a border pixel and its neighbour above this are edges, not noise. */
const NOISE_CAP = 6;
/** Log odds beyond which a pixel is cloth, or is not, without further reckoning: 1 in 3,000. */
const CERTAIN = 8;
/** Share of a histogram that is nothing. */
const NOTHING = 1e-5;
/** Rounds of colour refinement after the backdrop is modelled: more change nothing. */
const ROUNDS = 2;
/** How often histograms are smoothed. */
const SMOOTHING = 1;
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

const plane = () => new Float32Array(GRID_PIXELS);
/** Probability that a pixel shows the cloth, 0–1; the result. */
export const cloth = plane();
const barrier = plane();
const seed = plane();
const place = plane();
const placed = { width: 0, height: 0 };
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
  if (wordOdds) for (let q = 0; q < bins.used; q++) said[intAt(bins.list, q)] = wordOdds(intAt(bins.list, q));
  measureBarrier(picture, seed, barrier);
  difference.fill(0);
  hole.fill(0);
  weigh(picture, even, false);
  refine(picture, even);
  const { noise, trust } = fitBackdrop(picture, cloth, barrier, difference);
  readDifference(picture, noise, trust);
  for (let round = 0; round < ROUNDS; round++) refine(picture, even);
  fillIn(picture, trust);
}

/** Turns the distance from the backdrop into log odds and finds holes. */
function readDifference({ count }: Picture, noise: number, trust: number): void {
  for (let i = 0; i < count; i++) {
    const apart = at(difference, i);
    const far = apart / (noise + NOISE_FLOOR) - DIFFERENCE_AT;
    hole[i] =
      at(barrier, i) > HOLE_BARRIER &&
      at(plainDifference, i) < HOLE_DIFFERENCE * trust &&
      at(said, Math.max(0, intAt(binOf, i))) < NAMED
        ? 1
        : 0;
    difference[i] = trust * Math.max(-DIFFERENCE_LIMIT, Math.min(DIFFERENCE_LIMIT, far));
  }
}

/** Fills in what cloth lies around on all four sides without a strong edge between. */
function fillIn(picture: Picture, trust: number): void {
  const span = spanOf(picture, (i) => at(cloth, i) > 0.5);
  for (let y = 0, i = 0; y < picture.height; y++) {
    for (let x = 0; x < picture.width; x++, i++) {
      if (at(barrier, i) < HOLE_BARRIER && intAt(binOf, i) >= 0 && isAmong(span, x, y)) {
        cloth[i] = Math.max(at(cloth, i), FILL * trust);
      }
    }
  }
}

/** Log odds by place; kept while the size stays, as it nearly always does. */
function setPlace({ width, height }: Picture): void {
  if (placed.width === width && placed.height === height) return;
  Object.assign(placed, { width, height });
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
      const k = intAt(binOf, i);
      if ((x >= ring && x < width - ring && y >= ring && y < height - ring) || k < 0) continue;
      back[k] = at(back, k) + 1;
      const next = x < width - 1 ? i + 1 : i - 1;
      if (intAt(binOf, next) < 0) continue;
      const dl = Math.abs(at(lightness, i) - at(lightness, next));
      const da = Math.abs(at(a, i) - at(a, next));
      noise += Math.min(NOISE_CAP, dl + da + Math.abs(at(b, i) - at(b, next)));
      pairs++;
    }
  }
  smooth(back, 2);
  let top = NOTHING;
  for (let q = 0; q < bins.used; q++) top = Math.max(top, at(back, intAt(bins.list, q)));
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i++) {
      const k = intAt(binOf, i);
      const border = x === 0 || y === 0 || x === width - 1 || y === height - 1;
      seed[i] = k < 0 ? 0 : border ? RARE_COST * (1 - Math.min(1, at(back, k) / (top * COMMON))) : -1;
    }
  }
  return pairs ? noise / pairs : 0;
}

/** Histograms of cloth and rest as weighed so far, then the weights again with them. */
function refine(picture: Picture, even: number): void {
  for (let q = 0; q < bins.used; q++) front[intAt(bins.list, q)] = back[intAt(bins.list, q)] = 0;
  let sum = 0;
  for (let i = 0; i < picture.count; i++) {
    const k = intAt(binOf, i);
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
    const k = intAt(bins.list, q);
    const odds = (at(front, k) / (sum + NOTHING) + NOTHING) / (at(back, k) / (rest + NOTHING) + NOTHING);
    front[k] = Math.log(odds) + at(said, k);
  }
  weigh(picture, even, true);
}

function weigh(picture: Picture, even: number, withColor: boolean): void {
  for (let i = 0; i < picture.count; i++) {
    const k = intAt(binOf, i);
    const color = withColor && k >= 0 ? at(front, k) : 0;
    const wall = BARRIER_SLOPE * (at(barrier, i) - even);
    const odds = wall + at(place, i) + color + at(difference, i);
    const most = hole[i] ? HOLE_WEIGHT : 1;
    if (k < 0 || odds < -CERTAIN) cloth[i] = 0;
    else cloth[i] = odds > CERTAIN ? most : most / (1 + Math.exp(-odds));
  }
}
