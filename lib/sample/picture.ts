import { binOf, clearBins, linkBins } from "./color-bins.ts";
import { cubeRoot } from "./cube-root.ts";
import { at, intAt } from "./plane.ts";
import { GRID_PIXELS, GRID_SIDE, type Picture, rasterOf, SKETCH_PIXELS, SKETCH_SIDE } from "./raster.ts";

/** 0–255. Below this a pixel shows what is behind the picture: soft edges of cut-outs go too. Common practice, no source. */
const OPAQUE = 250;
/** Stands for the colour of a transparent pixel. */
const NONE = -1;

/** The one picture: its planes are written over by the next one, so that a long page allocates nothing. */
const picture: Picture = {
  ...rasterOf(GRID_PIXELS),
  opaque: 0,
  sketch: rasterOf(SKETCH_PIXELS),
  sketchOf: new Int32Array(GRID_PIXELS),
};
/** Linear light of each 8-bit sRGB value (IEC 61966-2-1). */
const LINEAR = Float32Array.from({ length: 256 }, (_, value) => {
  const encoded = value / 255;
  return encoded <= 0.04045 ? encoded / 12.92 : ((encoded + 0.055) / 1.055) ** 2.4;
});

/** Fills the picture from RGBA bytes whose size has been checked. Of a larger picture every nth pixel is taken. */
export function readPicture(data: Uint8ClampedArray, width: number, height: number): Picture {
  resize(Math.min(width, GRID_SIDE), Math.min(height, GRID_SIDE));
  clearBins();
  const { width: w, height: h, lightness, a, b, bin } = picture;
  let opaque = 0;
  let before = NONE;
  for (let y = 0, i = 0; y < h; y++) {
    const row = Math.floor(((y + 0.5) * height) / h) * width;
    for (let x = 0; x < w; x++, i++) {
      const p = 4 * (w === width ? row + x : row + Math.floor(((x + 0.5) * width) / w));
      const red = data[p] as number;
      const green = data[p + 1] as number;
      const blue = data[p + 2] as number;
      const color = (data[p + 3] as number) < OPAQUE ? NONE : (red << 16) | (green << 8) | blue;
      if (color === NONE) {
        bin[i] = 0;
      } else if (color === before) {
        opaque++;
        lightness[i] = at(lightness, i - 1);
        a[i] = at(a, i - 1);
        b[i] = at(b, i - 1);
        bin[i] = intAt(bin, i - 1);
      } else {
        opaque++;
        writeColor(i, at(LINEAR, red), at(LINEAR, green), at(LINEAR, blue));
      }
      before = color;
    }
  }
  linkBins();
  picture.opaque = opaque;
  drawSketch();
  return picture;
}

/** OKLab × 100 of linear light (B. Ottosson, 2020): `lib/color/convert.ts` without a new array per pixel. */
function writeColor(i: number, red: number, green: number, blue: number): void {
  const long = cubeRoot(0.4122214708 * red + 0.5363325363 * green + 0.0514459929 * blue);
  const medium = cubeRoot(0.2119034982 * red + 0.6806995451 * green + 0.1073969566 * blue);
  const short = cubeRoot(0.0883024619 * red + 0.2817188376 * green + 0.6299787005 * blue);
  const l = 21.04542553 * long + 79.3617785 * medium - 0.40720468 * short;
  const a = 197.79984951 * long - 242.8592205 * medium + 45.05937099 * short;
  const b = 2.59040371 * long + 78.27717662 * medium - 80.8675766 * short;
  picture.lightness[i] = l;
  picture.a[i] = a;
  picture.b[i] = b;
  picture.bin[i] = binOf(l, a, b);
}

/** Sets the sizes; pictures nearly always have the size of the one before. */
function resize(width: number, height: number): void {
  if (picture.width === width && picture.height === height) return;
  Object.assign(picture, { width, height, count: width * height });
  const across = width > SKETCH_SIDE ? 2 : 1;
  const down = height > SKETCH_SIDE ? 2 : 1;
  const w = Math.ceil(width / across);
  const h = Math.ceil(height / down);
  Object.assign(picture.sketch, { width: w, height: h, count: w * h });
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i++) {
      picture.sketchOf[i] = Math.floor(y / down) * w + Math.floor(x / across);
    }
  }
}

/** Means of the opaque pixels that lie in each pixel of the sketch; its bin is one of theirs, since a mean would be a blend. */
function drawSketch(): void {
  const { width, height, lightness, a, b, bin, sketch } = picture;
  const across = width > sketch.width ? 2 : 1;
  const down = height > sketch.height ? 2 : 1;
  for (let top = 0, s = 0; top < height; top += down) {
    const bottom = Math.min(height, top + down);
    for (let left = 0; left < width; left += across, s++) {
      const right = Math.min(width, left + across);
      let of = 0;
      let last = 0;
      let sumL = 0;
      let sumA = 0;
      let sumB = 0;
      for (let y = top; y < bottom; y++) {
        for (let i = y * width + left; i < y * width + right; i++) {
          const k = intAt(bin, i);
          if (k === 0) continue;
          last = k;
          of++;
          sumL += at(lightness, i);
          sumA += at(a, i);
          sumB += at(b, i);
        }
      }
      const part = of ? 1 / of : 0;
      sketch.bin[s] = last;
      sketch.lightness[s] = sumL * part;
      sketch.a[s] = sumA * part;
      sketch.b[s] = sumB * part;
    }
  }
}
