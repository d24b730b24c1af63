/** RGBA pixels, four bytes each, row by row from the top left; sRGB, not premultiplied. */
export interface Pixels {
  readonly data: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

/** Every picture is squeezed to this many pixels a side, whatever its shape, before it is sampled. */
export const SAMPLE_SIDE = 96;
