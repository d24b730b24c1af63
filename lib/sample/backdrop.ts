import { at, intAt, sumAt } from "./plane.ts";
import { type Raster, sketchPlane } from "./raster.ts";

/** OKLab × 100. A backdrop this far from its smooth model on average is half trusted: cloth, wood, carpet. */
const ROUGH = 2;
/** A difference in hue counts this much more than one in lightness: light varies over a backdrop, hue hardly. */
const HUE_WEIGHT = 1.5;
/** 0–1. What is darker than the backdrop may be a shadow on it, so it differs by this much of its depth only. */
const SHADOW_WEIGHT = 0.35;
/** Weight in the model of a pixel behind a barrier. */
const FAR_WEIGHT = 0.02;
/** OKLab × 100. Residual at which a pixel counts half in the second fit (Cauchy weights). */
const OUTLIER = 6;
/** Pulls the slopes of a badly covered model to zero; in pixels of full weight. */
const RIDGE = 1;
/** Pixels. Width of the grid that the first fit, which only finds the outliers, and the second one look at. */
const ROUGH_STEP = 4;
const STEP = 2;
/** Terms of the surface (quadratic, and a radial one for vignettes), and columns of the equations: terms, L, a, b. */
const TERMS = 7;
const COLUMNS = TERMS + 3;

/** Plain distance of each pixel from the smooth backdrop, OKLab × 100. */
export const plainDifference = sketchPlane();
const weight = sketchPlane();
const matrix = new Float64Array(TERMS * COLUMNS);
const term = new Float64Array(COLUMNS);

/**
 * Fits a smooth surface to the pixels that are probably backdrop (least squares, refitted once with the
 * weights of a robust estimate) and writes into `difference` how far each pixel is from it. Pixels behind a
 * barrier of `near` (OKLab × 100) or more hardly count.
 * @returns noise: mean distance of the backdrop from its model, OKLab × 100; trust: 0–1, high where it is smooth.
 */
export function fitBackdrop(
  sketch: Raster,
  cloth: Float32Array,
  barrier: Float32Array,
  difference: Float32Array,
  near: number,
): { noise: number; trust: number } {
  for (let i = 0; i < sketch.count; i++) {
    const open = (1 - at(cloth, i)) * (1 - at(cloth, i));
    weight[i] = intAt(sketch.bin, i) ? open * open * (at(barrier, i) < near ? 1 : FAR_WEIGHT) : 0;
  }
  solve(sketch, ROUGH_STEP);
  measure(sketch, difference, STEP);
  solve(sketch, STEP);
  const noise = measure(sketch, difference, 1);
  return { noise, trust: 1 / (1 + (noise / ROUGH) ** 2) };
}

/** Terms of the surface at a pixel, and its L, a and b. */
function setTerms(u: number, v: number, l: number, a: number, b: number): void {
  const round = u * u + v * v;
  term[0] = 1;
  term[1] = u;
  term[2] = v;
  term[3] = u * u;
  term[4] = u * v;
  term[5] = v * v;
  term[6] = round * round;
  term[TERMS] = l;
  term[TERMS + 1] = a;
  term[TERMS + 2] = b;
}

/** Normal equations over the pixels of a grid of so many pixels' width, solved by Gauss-Jordan elimination. */
function solve({ width, height, lightness, a, b }: Raster, step: number): void {
  matrix.fill(0);
  for (let y = 0; y < height; y += step) {
    for (let x = 0; x < width; x += step) {
      const i = y * width + x;
      const w = at(weight, i);
      if (w < 0.01) continue;
      setTerms((2 * x) / width - 1, (2 * y) / height - 1, at(lightness, i), at(a, i), at(b, i));
      // The equations are symmetric: the left half is filled in below.
      for (let p = 0; p < TERMS; p++) {
        const wp = w * sumAt(term, p);
        for (let q = p; q < COLUMNS; q++) add(p * COLUMNS + q, wp * sumAt(term, q));
      }
    }
  }
  for (let p = 0; p < TERMS; p++) {
    for (let q = 0; q < p; q++) matrix[p * COLUMNS + q] = sumAt(matrix, q * COLUMNS + p);
    add(p * COLUMNS + p, p ? RIDGE : 1e-3);
  }
  for (let p = 0; p < TERMS; p++) {
    const pivot = sumAt(matrix, p * COLUMNS + p);
    for (let q = 0; q < COLUMNS; q++) matrix[p * COLUMNS + q] = sumAt(matrix, p * COLUMNS + q) / pivot;
    for (let row = 0; row < TERMS; row++) {
      if (row === p) continue;
      const factor = sumAt(matrix, row * COLUMNS + p);
      for (let q = 0; q < COLUMNS; q++) add(row * COLUMNS + q, -factor * sumAt(matrix, p * COLUMNS + q));
    }
  }
}

function add(cell: number, value: number): void {
  matrix[cell] = sumAt(matrix, cell) + value;
}

/** Surface of one channel along a row: factors of the powers of u. */
interface Row {
  readonly c0: number;
  readonly c1: number;
  readonly c2: number;
  readonly c4: number;
}

/** Row v of a channel, by its column of the solved matrix. */
function rowOf(column: number, v: number): Row {
  const c = (t: number): number => sumAt(matrix, t * COLUMNS + column);
  return {
    c0: c(0) + v * (c(2) + v * (c(5) + v * v * c(6))),
    c1: c(1) + v * c(4),
    c2: c(3) + 2 * v * v * c(6),
    c4: c(6),
  };
}

function onRow({ c0, c1, c2, c4 }: Row, u: number): number {
  const uu = u * u;
  return c0 + u * c1 + uu * (c2 + uu * c4);
}

/**
 * Residuals of the solved surface; returns their weighted mean. In steps of `STEP` it only turns the outliers of the
 * pixels down that `solve` looks at.
 */
function measure(
  { width, height, lightness, a, b, bin }: Raster,
  difference: Float32Array,
  step: number,
): number {
  let sum = 0;
  let all = 1e-9;
  for (let y = 0; y < height; y += step) {
    const v = (2 * y) / height - 1;
    const rowL = rowOf(TERMS, v);
    const rowA = rowOf(TERMS + 1, v);
    const rowB = rowOf(TERMS + 2, v);
    for (let x = 0, i = y * width; x < width; x += step, i += step) {
      if (intAt(bin, i) === 0) {
        difference[i] = 0;
        continue;
      }
      const u = (2 * x) / width - 1;
      const dl = at(lightness, i) - onRow(rowL, u);
      const da = at(a, i) - onRow(rowA, u);
      const db = at(b, i) - onRow(rowB, u);
      const hue = da * da + db * db;
      const plain = Math.sqrt(hue + dl * dl);
      const light = dl < 0 ? dl * SHADOW_WEIGHT : dl;
      difference[i] = Math.sqrt(HUE_WEIGHT * HUE_WEIGHT * hue + light * light);
      plainDifference[i] = plain;
      const w = at(weight, i);
      all += w;
      sum += w * plain;
      if (step === STEP) weight[i] = w / (1 + (plain * plain) / (OUTLIER * OUTLIER));
    }
  }
  return sum / all;
}
