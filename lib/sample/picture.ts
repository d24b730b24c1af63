import { binOf, clearBins, linkBins } from "./color-bins.ts";
import { oklab, readOklab, STEPS_OF_BYTE } from "./pixel-oklab.ts";
import { intAt, sumAt } from "./plane.ts";
import { GRID_PIXELS, GRID_SIDE, PER, type Picture, rasterOf, SKETCH_PIXELS, SKETCH_SIDE } from "./raster.ts";

/** 0–255. Below this a pixel shows what is behind the picture: soft edges of cut-outs go too. Common practice, no source. */
const OPAQUE = 250;
/**
 * 0–255, a power of two. Pixels side by side whose bytes differ less than this are read as one of their mean colour: the
 * noise of a compressed photo. 2 and 4 measured alike; 8 lost pictures.
 */
const EVEN = 4;
/** Red and blue of a pixel, 16 bits apart: both are added and compared at once. */
const RED_BLUE = 0xff00ff;
const BOTH = 0x10001;

/** The one picture: its planes are written over by the next one, so that a long page allocates nothing. */
const picture: Picture = {
  count: 0,
  opaque: 0,
  sketch: rasterOf(SKETCH_PIXELS),
  even: new Uint8Array(SKETCH_PIXELS),
  lightness: new Float32Array(GRID_PIXELS),
  a: new Float32Array(GRID_PIXELS),
  b: new Float32Array(GRID_PIXELS),
  bin: new Int32Array(GRID_PIXELS),
};
/** Where the pixels of each row (in the given pixels) and of each column (in its row) come from; the size for which that holds. */
const rows = new Int32Array(GRID_SIDE);
const columns = new Int32Array(GRID_SIDE);
const given = { width: 0, height: 0 };
/** The pixels of one pixel of the sketch. */
const quad = new Int32Array(PER);

/**
 * Fills the picture from RGBA bytes whose size has been checked. Of a larger picture every nth pixel is taken, a small one is
 * as if drawn larger.
 */
export function readPicture(data: Uint8ClampedArray, width: number, height: number): Picture {
  resize(width, height);
  clearBins();
  // Four bytes as one number, red the lowest: every machine that runs a browser stores the lowest byte first.
  const aligned = data.byteOffset % 4 ? data.slice() : data;
  picture.opaque = fill(new Int32Array(aligned.buffer, aligned.byteOffset, width * height));
  linkBins();
  return picture;
}

/** Fills the planes; returns how many pixels are opaque. */
function fill(words: Int32Array): number {
  const { even, sketch } = picture;
  const { width, height, lightness, a, b, bin } = sketch;
  let opaque = 0;
  for (let y = 0, s = 0; y < height; y++) {
    const above = intAt(rows, 2 * y);
    const below = intAt(rows, 2 * y + 1);
    for (let x = 0; x < width; x++, s++) {
      const left = intAt(columns, 2 * x);
      const right = intAt(columns, 2 * x + 1);
      const p = intAt(words, above + left);
      const q = intAt(words, above + right);
      const r = intAt(words, below + left);
      const t = intAt(words, below + right);
      const of = isOpaque(p) + isOpaque(q) + isOpaque(r) + isOpaque(t);
      opaque += of;
      if (of === PER && (unlike(p, q) | unlike(p, r) | unlike(p, t)) === 0) {
        const redBlue = (p & RED_BLUE) + (q & RED_BLUE) + (r & RED_BLUE) + (t & RED_BLUE);
        // Sums of four bytes: steps of a byte, as they are read.
        readOklab(redBlue & 0xffff, greenOf(p) + greenOf(q) + greenOf(r) + greenOf(t), redBlue >>> 16);
        even[s] = 1;
        lightness[s] = sumAt(oklab, 0);
        a[s] = sumAt(oklab, 1);
        b[s] = sumAt(oklab, 2);
        bin[s] = binOf(sumAt(oklab, 0), sumAt(oklab, 1), sumAt(oklab, 2));
      } else {
        even[s] = 0;
        quad[0] = p;
        quad[1] = q;
        quad[2] = r;
        quad[3] = t;
        fillUneven(s, of);
      }
    }
  }
  return opaque;
}

/** 1 or 0, since they are counted. */
const isOpaque = (color: number): number => (((color >>> 24) - OPAQUE) >>> 31) ^ 1;
const greenOf = (color: number): number => (color >> 8) & 255;
/** 0 where two colours are so near that they are even. */
const unlike = (p: number, q: number): number =>
  beyond((q & RED_BLUE) - (p & RED_BLUE)) | beyond(greenOf(q) - greenOf(p));
/** 0 where a difference, or each of two differences 16 bits apart, is small. */
const beyond = (difference: number): number => (difference + EVEN * BOTH) & ~((2 * EVEN - 1) * BOTH);

/** Pixels of several colours, `of` of them opaque, each for itself; the pixel of the sketch is their mean. */
function fillUneven(s: number, of: number): void {
  const { lightness, a, b, bin, sketch } = picture;
  let last = 0;
  let sumL = 0;
  let sumA = 0;
  let sumB = 0;
  for (let n = 0, i = s * PER; n < PER; n++, i++) {
    const color = intAt(quad, n);
    bin[i] = 0;
    if (color >>> 24 < OPAQUE) continue;
    readOklab(
      STEPS_OF_BYTE * (color & 255),
      STEPS_OF_BYTE * greenOf(color),
      STEPS_OF_BYTE * ((color >> 16) & 255),
    );
    lightness[i] = sumAt(oklab, 0);
    a[i] = sumAt(oklab, 1);
    b[i] = sumAt(oklab, 2);
    last = binOf(sumAt(oklab, 0), sumAt(oklab, 1), sumAt(oklab, 2));
    bin[i] = last;
    sumL += sumAt(oklab, 0);
    sumA += sumAt(oklab, 1);
    sumB += sumAt(oklab, 2);
  }
  const part = of ? 1 / of : 0;
  // Its bin is one of theirs, since that of the mean would be a blend's.
  sketch.bin[s] = last;
  sketch.lightness[s] = sumL * part;
  sketch.a[s] = sumA * part;
  sketch.b[s] = sumB * part;
}

/** Sets the sizes; pictures nearly always have the size of the one before. */
function resize(width: number, height: number): void {
  if (given.width === width && given.height === height) return;
  Object.assign(given, { width, height });
  const { sketch } = picture;
  sketch.width = takeLines(columns, width, 1);
  sketch.height = takeLines(rows, height, width);
  sketch.count = sketch.width * sketch.height;
  picture.count = sketch.count * PER;
}

/** Which lines of a side are looked at, two for each of the sketch, `step` values apart; returns the side of the sketch. */
function takeLines(lines: Int32Array, side: number, step: number): number {
  const taken = Math.min(side, GRID_SIDE);
  const each = taken > SKETCH_SIDE ? 2 : 1;
  const sketched = Math.ceil(taken / each);
  for (let n = 0; n < 2 * sketched; n++) {
    // The last line of an odd side stands twice, and each line of a short one.
    const line = Math.min(taken - 1, each === 2 ? n : n >> 1);
    lines[n] = step * Math.floor(((line + 0.5) * side) / taken);
  }
  return sketched;
}
