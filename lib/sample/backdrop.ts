import { GRID_PIXELS, type Picture } from "./picture.ts";
import { at } from "./plane.ts";

/** OKLab × 100. A backdrop this far from its smooth model on average is half trusted: cloth, wood, carpet. */
const ROUGH = 2;
/** A difference in hue counts this much more than one in lightness: light varies over a backdrop, hue hardly. */
const HUE_WEIGHT = 1.5;
/** 0–1. What is darker than the backdrop may be a shadow on it, so it differs by this much of its depth only. */
const SHADOW_WEIGHT = 0.35;
/** OKLab × 100. Barrier below which a pixel may join the model in full, and the weight of the others. */
const NEAR = 8;
const FAR_WEIGHT = 0.02;
/** OKLab × 100. Residual at which a pixel counts half in the second fit (Cauchy weights). */
const OUTLIER = 6;
/** Pulls the slopes of a badly covered model to zero; in pixels of full weight. */
const RIDGE = 1;
/** Terms of the surface (quadratic, and a radial one for vignettes), and columns of the equations: terms, L, a, b. */
const TERMS = 7;
const COLUMNS = TERMS + 3;

const plane = () => new Float32Array(GRID_PIXELS);
/** What is left of the picture when the smooth backdrop is taken off, OKLab × 100. */
export const flat = { lightness: plane(), a: plane(), b: plane() };
const weight = plane();
const matrix = new Float64Array(TERMS * COLUMNS);
const term = new Float64Array(TERMS);

/**
 * Fits a smooth surface to the pixels that are probably backdrop (least squares, refitted once with the
 * weights of a robust estimate) and writes into `difference` how far each pixel is from it.
 * @returns noise: mean distance of the backdrop from its model, OKLab × 100; trust: 0–1, high where it is smooth.
 */
export function fitBackdrop(
  picture: Picture,
  cloth: Float32Array,
  barrier: Float32Array,
  difference: Float32Array,
): { noise: number; trust: number } {
  for (let i = 0; i < picture.count; i++) {
    const open = (1 - at(cloth, i)) ** 4;
    weight[i] = picture.solid[i] ? open * (at(barrier, i) < NEAR ? 1 : FAR_WEIGHT) : 0;
  }
  solve(picture);
  measure(picture, difference, true);
  solve(picture);
  const noise = measure(picture, difference, false);
  return { noise, trust: 1 / (1 + (noise / ROUGH) ** 2) };
}

function setTerms(u: number, v: number): void {
  term[0] = 1;
  term[1] = u;
  term[2] = v;
  term[3] = u * u;
  term[4] = u * v;
  term[5] = v * v;
  term[6] = (u * u + v * v) ** 2;
}

/** Normal equations over every second pixel, solved by Gauss-Jordan elimination. */
function solve({ width, height, lightness, a, b }: Picture): void {
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

/** Residuals of the solved surface; returns their weighted mean. `reweigh` turns the outliers down. */
function measure(
  { width, height, count, lightness, a, b, solid }: Picture,
  difference: Float32Array,
  reweigh: boolean,
): number {
  let sum = 0;
  let all = 1e-9;
  for (let i = 0, x = 0, y = 0; i < count; i++, x++) {
    if (x === width) {
      x = 0;
      y++;
    }
    difference[i] = 0;
    if (!solid[i]) continue;
    setTerms((2 * x) / width - 1, (2 * y) / height - 1);
    let dl = at(lightness, i);
    let da = at(a, i);
    let db = at(b, i);
    for (let p = 0; p < TERMS; p++) {
      const t = term[p] as number;
      dl -= t * (matrix[p * COLUMNS + TERMS] as number);
      da -= t * (matrix[p * COLUMNS + TERMS + 1] as number);
      db -= t * (matrix[p * COLUMNS + TERMS + 2] as number);
    }
    flat.lightness[i] = dl;
    flat.a[i] = da;
    flat.b[i] = db;
    const hue = da * da + db * db;
    const light = dl < 0 ? dl * SHADOW_WEIGHT : dl;
    difference[i] = Math.sqrt(HUE_WEIGHT * HUE_WEIGHT * hue + light * light);
    const plain = Math.sqrt(hue + dl * dl);
    const w = at(weight, i);
    all += w;
    sum += w * plain;
    if (reweigh) weight[i] = w / (1 + (plain / OUTLIER) ** 2);
  }
  return sum / all;
}
