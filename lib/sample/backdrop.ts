import { at, intAt } from "./plane.ts";
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
/** Terms of the surface (quadratic, and a radial one for vignettes), and columns of the equations: terms, L, a, b. */
const TERMS = 7;
const COLUMNS = TERMS + 3;

/** Plain distance of each pixel from the smooth backdrop, OKLab × 100. */
export const plainDifference = sketchPlane();
const weight = sketchPlane();
const matrix = new Float64Array(TERMS * COLUMNS);
const term = new Float64Array(TERMS);

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
  solve(sketch);
  measure(sketch, difference, 2);
  solve(sketch);
  const noise = measure(sketch, difference, 1);
  return { noise, trust: 1 / (1 + (noise / ROUGH) ** 2) };
}

function setTerms(u: number, v: number): void {
  term[0] = 1;
  term[1] = u;
  term[2] = v;
  term[3] = u * u;
  term[4] = u * v;
  term[5] = v * v;
  term[6] = (u * u + v * v) * (u * u + v * v);
}

/** Normal equations over every second pixel, solved by Gauss-Jordan elimination. */
function solve({ width, height, lightness, a, b }: Raster): void {
  matrix.fill(0);
  for (let y = 0; y < height; y += 2) {
    for (let x = 0; x < width; x += 2) {
      const i = y * width + x;
      const w = at(weight, i);
      if (w < 0.01) continue;
      setTerms((2 * x) / width - 1, (2 * y) / height - 1);
      for (let p = 0, cell = 0; p < TERMS; p++) {
        const wp = w * (term[p] as number);
        for (let q = 0; q < TERMS; q++) add(cell++, wp * (term[q] as number));
        add(cell++, wp * at(lightness, i));
        add(cell++, wp * at(a, i));
        add(cell++, wp * at(b, i));
      }
    }
  }
  for (let p = 0; p < TERMS; p++) add(p * COLUMNS + p, p ? RIDGE : 1e-3);
  for (let p = 0; p < TERMS; p++) {
    const pivot = matrix[p * COLUMNS + p] as number;
    for (let q = 0; q < COLUMNS; q++) matrix[p * COLUMNS + q] = (matrix[p * COLUMNS + q] as number) / pivot;
    for (let row = 0; row < TERMS; row++) {
      if (row === p) continue;
      const factor = matrix[row * COLUMNS + p] as number;
      for (let q = 0; q < COLUMNS; q++) add(row * COLUMNS + q, -factor * (matrix[p * COLUMNS + q] as number));
    }
  }
}

function add(cell: number, value: number): void {
  matrix[cell] = (matrix[cell] as number) + value;
}

/** Surface of one channel along a row: even and odd powers of u, each channel's column of the solved matrix. */
function rowOf(column: number, v: number, out: Float64Array): void {
  const c = (t: number): number => matrix[t * COLUMNS + column] as number;
  out[0] = c(0) + v * (c(2) + v * (c(5) + v * v * c(6)));
  out[1] = c(1) + v * c(4);
  out[2] = c(3) + 2 * v * v * c(6);
  out[3] = c(6);
}

const rowL = new Float64Array(4);
const rowA = new Float64Array(4);
const rowB = new Float64Array(4);

function onRow(row: Float64Array, u: number): number {
  const uu = u * u;
  return (row[0] as number) + u * (row[1] as number) + uu * ((row[2] as number) + uu * (row[3] as number));
}

/**
 * Residuals of the solved surface; returns their weighted mean. In steps of 2 it only turns the outliers of the
 * pixels down that `solve` looks at.
 */
function measure(
  { width, height, lightness, a, b, bin }: Raster,
  difference: Float32Array,
  step: 1 | 2,
): number {
  let sum = 0;
  let all = 1e-9;
  for (let y = 0; y < height; y += step) {
    const v = (2 * y) / height - 1;
    rowOf(TERMS, v, rowL);
    rowOf(TERMS + 1, v, rowA);
    rowOf(TERMS + 2, v, rowB);
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
      if (step === 2) weight[i] = w / (1 + (plain * plain) / (OUTLIER * OUTLIER));
    }
  }
  return sum / all;
}
