import { at } from "./plane.ts";

/** Pixels. The longest side that is looked at; a larger picture is averaged down to it first. */
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

/** Fills the picture from RGBA bytes whose size has been checked. Sides longer than the grid are averaged down. */
export function readPicture(data: Uint8ClampedArray, width: number, height: number): Picture {
  const w = Math.min(width, GRID_SIDE);
  const h = Math.min(height, GRID_SIDE);
  picture.width = w;
  picture.height = h;
  picture.count = w * h;
  picture.opaque = 0;
  for (let y = 0, i = 0; y < h; y++) {
    const top = Math.floor((y * height) / h);
    const bottom = Math.floor(((y + 1) * height) / h);
    for (let x = 0; x < w; x++, i++) {
      const left = Math.floor((x * width) / w);
      const right = Math.floor(((x + 1) * width) / w);
      let r = 0;
      let g = 0;
      let b = 0;
      let solid = 0;
      for (let row = top; row < bottom; row++) {
        for (let p = (row * width + left) * 4, end = (row * width + right) * 4; p < end; p += 4) {
          if ((data[p + 3] as number) < OPAQUE) continue;
          r += data[p] as number;
          g += data[p + 1] as number;
          b += data[p + 2] as number;
          solid++;
        }
      }
      const kept = solid * 2 > (bottom - top) * (right - left);
      picture.solid[i] = kept ? 1 : 0;
      picture.opaque += kept ? 1 : 0;
      writeOklab(i, kept ? r / solid : 0, kept ? g / solid : 0, kept ? b / solid : 0);
    }
  }
  return picture;
}

/** OKLab × 100 of an sRGB colour (B. Ottosson, 2020): `lib/color/convert.ts` without a new array per pixel. */
function writeOklab(i: number, r: number, g: number, b: number): void {
  const lr = at(LINEAR, Math.round(r));
  const lg = at(LINEAR, Math.round(g));
  const lb = at(LINEAR, Math.round(b));
  const l = Math.cbrt(0.4122214708 * lr + 0.5363325363 * lg + 0.0514459929 * lb);
  const m = Math.cbrt(0.2119034982 * lr + 0.6806995451 * lg + 0.1073969566 * lb);
  const s = Math.cbrt(0.0883024619 * lr + 0.2817188376 * lg + 0.6299787005 * lb);
  picture.lightness[i] = 21.04542553 * l + 79.3617785 * m - 0.40720468 * s;
  picture.a[i] = 197.79984951 * l - 242.8592205 * m + 45.05937099 * s;
  picture.b[i] = 2.59040371 * l + 78.27717662 * m - 80.8675766 * s;
}
