/** Pixels. The longest side that is looked at. */
export const GRID_SIDE = 96;
/** Largest number of pixels that is looked at. */
export const GRID_PIXELS = GRID_SIDE * GRID_SIDE;
/** Pixels. Longest side of the sketch: half of the picture's. */
export const SKETCH_SIDE = GRID_SIDE / 2;
/** Pixels of the picture in one of the sketch: two by two. Along a short side each stands twice. */
export const PER = 4;
/** Largest number of pixels of the sketch. */
export const SKETCH_PIXELS = SKETCH_SIDE * SKETCH_SIDE;

/** Pixels in OKLab × 100 (L 0–100), one value per pixel in each plane, row by row. */
export interface Raster {
  width: number;
  height: number;
  /** width × height. */
  count: number;
  readonly lightness: Float32Array;
  readonly a: Float32Array;
  readonly b: Float32Array;
  /** Colour bin of each pixel, 0 where it is transparent: `color-bins.ts`. */
  readonly bin: Int32Array;
}

/**
 * A picture and its sketch at half the size. What is cloth is decided on the sketch, whose pixels are means, so less
 * noisy, and a quarter in number; which colours the cloth has is read from the picture itself.
 */
export interface Picture {
  /** Pixels, and how many of them are opaque. */
  count: number;
  opaque: number;
  readonly sketch: Raster;
  /** Whether those are as good as one colour: then only the sketch holds it. */
  readonly even: Uint8Array;
  /** Where they are not: each by itself, those of a pixel of the sketch side by side; no bin where transparent. */
  readonly lightness: Float32Array;
  readonly a: Float32Array;
  readonly b: Float32Array;
  readonly bin: Int32Array;
}

/** An empty raster with room for so many pixels. */
export function rasterOf(pixels: number): Raster {
  return {
    width: 0,
    height: 0,
    count: 0,
    lightness: new Float32Array(pixels),
    a: new Float32Array(pixels),
    b: new Float32Array(pixels),
    bin: new Int32Array(pixels),
  };
}

/** A value for each pixel of the sketch. */
export function sketchPlane(): Float32Array {
  return new Float32Array(SKETCH_PIXELS);
}
