/** Pictures made for the tests: shapes over a backdrop, with light, noise and soft edges as a camera leaves them. */
export type Paint = readonly [r: number, g: number, b: number];

/** A colour for the point (x, y), 0–1 from the top left, or null where the layer is not. */
export type Layer = (x: number, y: number) => Paint | null;

export interface PaintedOptions {
  readonly width?: number;
  readonly height?: number;
  /** Half the spread of the noise, 8-bit steps. */
  readonly noise?: number;
  /** Leaves what no layer covers transparent. */
  readonly cutOut?: boolean;
}

/** Subpixels a side: edges blend as a lens blends them. */
const FINE = 3;

/** RGBA of layers painted over each other, the last on top. Same layers, same bytes. */
export function painted(layers: readonly Layer[], options: PaintedOptions = {}): Uint8ClampedArray {
  const { width = 96, height = 96, noise = 3, cutOut = false } = options;
  const data = new Uint8ClampedArray(width * height * 4);
  let seed = 12345;
  const random = () => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    return seed / 2 ** 32;
  };
  for (let i = 0; i < width * height; i++) {
    const sum = [0, 0, 0];
    let covered = 0;
    for (let s = 0; s < FINE * FINE; s++) {
      const x = ((i % width) + ((s % FINE) + 0.5) / FINE) / width;
      const y = (Math.floor(i / width) + (Math.floor(s / FINE) + 0.5) / FINE) / height;
      const paint = layers.reduce<Paint | null>((under, layer) => layer(x, y) ?? under, null);
      if (!paint) continue;
      covered++;
      paint.forEach((value, c) => {
        sum[c] = (sum[c] ?? 0) + value;
      });
    }
    const shake = (random() - 0.5) * 2 * noise;
    sum.forEach((value, c) => {
      data[i * 4 + c] = covered ? value / covered + shake : 0;
    });
    data[i * 4 + 3] = cutOut ? Math.round((255 * covered) / (FINE * FINE)) : 255;
  }
  return data;
}

export const everywhere =
  (paint: Paint): Layer =>
  () =>
    paint;

export const box =
  (x0: number, y0: number, x1: number, y1: number, paint: Paint): Layer =>
  (x, y) =>
    x >= x0 && x < x1 && y >= y0 && y < y1 ? paint : null;

export const disc =
  (cx: number, cy: number, radius: number, paint: Paint): Layer =>
  (x, y) =>
    (x - cx) ** 2 + (y - cy) ** 2 < radius ** 2 ? paint : null;

/** Multiplies a layer's light by `light(x, y)`. */
export const lit =
  (layer: Layer, light: (x: number, y: number) => number): Layer =>
  (x, y) => {
    const paint = layer(x, y);
    if (!paint) return null;
    const by = light(x, y);
    return [paint[0] * by, paint[1] * by, paint[2] * by];
  };

/** Soft folds of hanging cloth: ±8 % of light. */
export const folds = (x: number, y: number): number => 1 + 0.08 * Math.sin(23 * x + 5 * y);

/** Keeps the second layer where the first one is. */
export const within =
  (shape: Layer, layer: Layer): Layer =>
  (x, y) =>
    shape(x, y) ? layer(x, y) : null;

/** A top with sleeves, laid flat. */
export const shirt =
  (paint: Paint): Layer =>
  (x, y) => {
    const body = x > 0.3 && x < 0.7 && y > 0.2 && y < 0.82;
    const sleeves = y > 0.2 && y < 0.5 && Math.abs(x - 0.5) < 0.2 + 0.5 * (y - 0.2) + 0.04;
    const neck = (x - 0.5) ** 2 + (y - 0.2) ** 2 < 0.07 ** 2;
    return (body || sleeves) && !neck ? paint : null;
  };

/** A person in a top and trousers, from the head to the thighs. */
export function model(skin: Paint, hair: Paint, top: Paint, trousers: Paint): Layer[] {
  return [
    disc(0.5, 0.13, 0.11, hair),
    disc(0.5, 0.16, 0.08, skin),
    box(0.46, 0.22, 0.54, 0.3, skin),
    box(0.27, 0.32, 0.34, 0.72, skin),
    box(0.66, 0.32, 0.73, 0.72, skin),
    lit(box(0.35, 0.68, 0.65, 1, trousers), folds),
    lit(box(0.34, 0.28, 0.66, 0.7, top), folds),
    lit(box(0.27, 0.28, 0.73, 0.42, top), folds),
  ];
}
