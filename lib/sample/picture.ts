import { binOf, clearBins, linkBins } from "./color-bins.ts";
import { oklab, readOklab, STEPS_OF_BYTE } from "./pixel-oklab.ts";
import { byteAt, intAt, sumAt } from "./plane.ts";
import { GRID_PIXELS, GRID_SIDE, type Picture, rasterOf, SKETCH_PIXELS, SKETCH_SIDE } from "./raster.ts";

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
  per: 0,
  even: new Uint8Array(SKETCH_PIXELS),
  lightness: new Float32Array(GRID_PIXELS),
  a: new Float32Array(GRID_PIXELS),
  b: new Float32Array(GRID_PIXELS),
  bin: new Int32Array(GRID_PIXELS),
};
/** Which of the given pixels each pixel of the picture is, and the size for which that holds. */
const source = new Int32Array(GRID_PIXELS);
const given = { width: 0, height: 0 };

/** Fills the picture from RGBA bytes whose size has been checked. Of a larger picture every nth pixel is taken. */
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
  const { per, even, sketch } = picture;
  const { count, lightness, a, b, bin } = sketch;
  const part = STEPS_OF_BYTE / per;
  let opaque = 0;
  for (let s = 0; s < count; s++) {
    const first = intAt(words, intAt(source, s * per));
    let of = 0;
    let spread = 0;
    let redBlue = 0;
    let green = 0;
    for (let i = s * per; i < (s + 1) * per; i++) {
      const color = intAt(words, intAt(source, i));
      if (color >>> 24 >= OPAQUE) of++;
      spread |=
        beyond((color & RED_BLUE) - (first & RED_BLUE)) | beyond(((color >> 8) & 255) - ((first >> 8) & 255));
      redBlue += color & RED_BLUE;
      green += (color >> 8) & 255;
    }
    opaque += of;
    even[s] = of === per && spread === 0 ? 1 : 0;
    if (byteAt(even, s)) {
      readOklab((redBlue & 0xffff) * part, green * part, (redBlue >>> 16) * part);
      lightness[s] = sumAt(oklab, 0);
      a[s] = sumAt(oklab, 1);
      b[s] = sumAt(oklab, 2);
      bin[s] = binOf(sumAt(oklab, 0), sumAt(oklab, 1), sumAt(oklab, 2));
    } else fillUneven(words, s);
  }
  return opaque;
}

/** 0 where a difference, or each of two differences 16 bits apart, is so small that the pixels are even. */
const beyond = (difference: number): number => (difference + EVEN * BOTH) & ~((2 * EVEN - 1) * BOTH);

/** Pixels of several colours, each for itself; the pixel of the sketch is their mean. */
function fillUneven(words: Int32Array, s: number): void {
  const { per, lightness, a, b, bin, sketch } = picture;
  let of = 0;
  let last = 0;
  let sumL = 0;
  let sumA = 0;
  let sumB = 0;
  for (let i = s * per; i < (s + 1) * per; i++) {
    const color = intAt(words, intAt(source, i));
    bin[i] = 0;
    if (color >>> 24 < OPAQUE) continue;
    readOklab(
      STEPS_OF_BYTE * (color & 255),
      STEPS_OF_BYTE * ((color >> 8) & 255),
      STEPS_OF_BYTE * ((color >> 16) & 255),
    );
    lightness[i] = sumAt(oklab, 0);
    a[i] = sumAt(oklab, 1);
    b[i] = sumAt(oklab, 2);
    last = binOf(sumAt(oklab, 0), sumAt(oklab, 1), sumAt(oklab, 2));
    bin[i] = last;
    of++;
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
  const w = Math.min(width, GRID_SIDE);
  const h = Math.min(height, GRID_SIDE);
  const across = w > SKETCH_SIDE ? 2 : 1;
  const down = h > SKETCH_SIDE ? 2 : 1;
  Object.assign(sketch, { width: Math.ceil(w / across), height: Math.ceil(h / down) });
  sketch.count = sketch.width * sketch.height;
  picture.per = across * down;
  picture.count = sketch.count * picture.per;
  for (let i = 0; i < picture.count; i++) {
    const s = Math.floor(i / picture.per);
    // The last row and column of an odd size stand twice.
    const x = Math.min(w - 1, (s % sketch.width) * across + (i % across));
    const y = Math.min(h - 1, Math.floor(s / sketch.width) * down + Math.floor((i % picture.per) / across));
    source[i] = Math.floor(((y + 0.5) * height) / h) * width + Math.floor(((x + 0.5) * width) / w);
  }
}
