import { at } from "./plane.ts";

/** Pixels. The longest side that is looked at. */
export const GRID_SIDE = 96;

/** Largest number of pixels that is looked at. */
export const GRID_PIXELS = GRID_SIDE * GRID_SIDE;

/** 0–255. Below this a pixel shows what is behind the picture: soft edges of cut-outs go too. Common practice, no source. */
const OPAQUE = 250;

/**
 * A picture in OKLab × 100 (L 0–100), one value per pixel in each plane. There is one picture at a time: the
 * planes belong to the module and are written over by the next one, so that a long page allocates nothing.
 */
export interface Picture {
  width: number;
  height: number;
  /** width × height. */
  count: number;
  /** How many pixels are opaque. */
  opaque: number;
  readonly lightness: Float32Array;
  readonly a: Float32Array;
  readonly b: Float32Array;
  /** 1 where the pixel is opaque. */
  readonly solid: Uint8Array;
}

const picture: Picture = {
  width: 0,
  height: 0,
  count: 0,
  opaque: 0,
  lightness: new Float32Array(GRID_PIXELS),
  a: new Float32Array(GRID_PIXELS),
  b: new Float32Array(GRID_PIXELS),
  solid: new Uint8Array(GRID_PIXELS),
};

/** Linear light of each 8-bit sRGB value (IEC 61966-2-1). */
const LINEAR = Float32Array.from({ length: 256 }, (_, value) => {
  const encoded = value / 255;
  return encoded <= 0.04045 ? encoded / 12.92 : ((encoded + 0.055) / 1.055) ** 2.4;
});

/** Fills the picture from RGBA bytes whose size has been checked. Of a larger picture every nth pixel is taken. */
export function readPicture(data: Uint8ClampedArray, width: number, height: number): Picture {
  const w = Math.min(width, GRID_SIDE);
  const h = Math.min(height, GRID_SIDE);
  let opaque = 0;
  for (let y = 0, i = 0; y < h; y++) {
    const row = Math.floor(((y + 0.5) * height) / h) * width;
    for (let x = 0; x < w; x++, i++) {
      const p = (row + Math.floor(((x + 0.5) * width) / w)) * 4;
      const solid = (data[p + 3] as number) < OPAQUE ? 0 : 1;
      opaque += solid;
      picture.solid[i] = solid;
      writeOklab(
        i,
        (data[p] as number) * solid,
        (data[p + 1] as number) * solid,
        (data[p + 2] as number) * solid,
      );
    }
  }
  return Object.assign(picture, { width: w, height: h, count: w * h, opaque });
}

/** OKLab × 100 of an sRGB colour (B. Ottosson, 2020): `lib/color/convert.ts` without a new array per pixel. */
function writeOklab(i: number, r: number, g: number, b: number): void {
  const lr = at(LINEAR, r);
  const lg = at(LINEAR, g);
  const lb = at(LINEAR, b);
  const l = Math.cbrt(0.4122214708 * lr + 0.5363325363 * lg + 0.0514459929 * lb);
  const m = Math.cbrt(0.2119034982 * lr + 0.6806995451 * lg + 0.1073969566 * lb);
  const s = Math.cbrt(0.0883024619 * lr + 0.2817188376 * lg + 0.6299787005 * lb);
  picture.lightness[i] = 21.04542553 * l + 79.3617785 * m - 0.40720468 * s;
  picture.a[i] = 197.79984951 * l - 242.8592205 * m + 45.05937099 * s;
  picture.b[i] = 2.59040371 * l + 78.27717662 * m - 80.8675766 * s;
}
