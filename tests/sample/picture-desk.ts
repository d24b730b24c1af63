import { fileURLToPath } from "node:url";
import { SAMPLE_SIDE } from "../../lib/pixels/pixels.ts";
import type { Palette } from "../../lib/sample/palette.ts";
import type { SampleHints } from "../../lib/sample/sample-pixels.ts";
import { bundle } from "../browser/bundle.ts";
import { openBrowser } from "../browser/open-browser.ts";

/** A rectangle in percent of a picture's width and height: left, top, right, bottom. */
export type Box = readonly [x0: number, y0: number, x1: number, y1: number];

/** A picture as another shop would cut it: shares of its sides that are cut off, and whether it is mirrored. */
export interface Cut {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly mirrored: boolean;
}

export const UNCUT: Cut = { left: 0, top: 0, right: 0, bottom: 0, mirrored: false };

/** A palette and the milliseconds that the sampler alone took in the page. */
export interface Sampled {
  readonly palette: Palette;
  readonly ms: number;
}

/** A real browser that decodes pictures as the extension does. */
export interface PictureDesk {
  /** Samples picture bytes of any format the browser reads. Throws where it cannot decode them. */
  sample(bytes: Uint8Array, hints?: SampleHints, cut?: Cut): Promise<Sampled>;
  /** The picture squeezed to the sampler's size, RGBA. */
  pixels(bytes: Uint8Array): Promise<Uint8ClampedArray>;
  /** Median red, green and blue of each box, measured on the picture at its own size. */
  medians(bytes: Uint8Array, boxes: readonly Box[]): Promise<number[][]>;
  close(): Promise<void>;
}

/** Runs inside the page. The file's name and type are kept from the browser: it looks at the bytes. */
const PAGE_SCRIPT = `
  async function imageOf(base64) {
    const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
    const image = new Image();
    image.src = URL.createObjectURL(new Blob([bytes]));
    try { await image.decode(); } catch { throw new Error("The browser cannot read this picture."); }
    finally { URL.revokeObjectURL(image.src); }
    return image;
  }
  function drawn(image, width, height) {
    const canvas = Object.assign(document.createElement("canvas"), { width, height });
    const context = canvas.getContext("2d", { willReadFrequently: true });
    context.imageSmoothingQuality = "medium";
    context.drawImage(image, 0, 0, width, height);
    return context;
  }
  async function pixelsOf(base64, side, { left, top, right, bottom, mirrored }) {
    const image = await imageOf(base64);
    const canvas = new OffscreenCanvas(side, side);
    const context = canvas.getContext("2d", { willReadFrequently: true });
    context.imageSmoothingQuality = "medium";
    if (mirrored) context.setTransform(-1, 0, 0, 1, side, 0);
    const [w, h] = [image.naturalWidth, image.naturalHeight];
    context.drawImage(image, left * w, top * h, (1 - left - right) * w, (1 - top - bottom) * h, 0, 0, side, side);
    return context.getImageData(0, 0, side, side).data;
  }
  async function sampleOf(base64, side, hints, cut) {
    const data = await pixelsOf(base64, side, cut);
    const start = performance.now();
    const palette = Sampler.samplePixels(data, side, side, hints);
    return { palette, ms: performance.now() - start };
  }
  async function mediansOf(base64, boxes) {
    const image = await imageOf(base64);
    const { naturalWidth: w, naturalHeight: h } = image;
    const context = drawn(image, w, h);
    return boxes.map(([x0, y0, x1, y1]) => {
      const left = Math.floor((x0 * w) / 100), top = Math.floor((y0 * h) / 100);
      const right = Math.max(left + 1, Math.ceil((x1 * w) / 100)), bottom = Math.max(top + 1, Math.ceil((y1 * h) / 100));
      const data = context.getImageData(left, top, right - left, bottom - top).data;
      return [0, 1, 2].map((channel) => {
        const values = data.filter((_, i) => i % 4 === channel).sort();
        return values[values.length >> 1];
      });
    });
  }
`;

/** The first runs of any code in a browser are slow: they are not what a page of tiles costs. */
const WARM_UP = `
  for (let run = 0; run < 20; run++) {
    const noise = Uint8ClampedArray.from({ length: 36864 }, (_, i) => (i % 4 === 3 ? 255 : (i * i * (run + 7)) % 251));
    Sampler.samplePixels(noise, 96, 96, { slot: "top", text: "red" });
  }
`;

/** Opens one Chromium for any number of pictures. The caller closes the desk. */
export async function openPictureDesk(): Promise<PictureDesk> {
  const entry = fileURLToPath(new URL("../../lib/sample/sample-pixels.ts", import.meta.url));
  const code = await bundle(entry, "Sampler");
  const browser = await openBrowser();
  const page = await browser.newPage();
  await page.addScriptTag({ content: code });
  await page.addScriptTag({ content: PAGE_SCRIPT });
  await page.evaluate(WARM_UP);
  const call = (name: string, bytes: Uint8Array, ...rest: unknown[]): Promise<unknown> => {
    const values = [Buffer.from(bytes).toString("base64"), ...rest].map((value) => JSON.stringify(value));
    return page.evaluate(`${name}(${values.join(", ")})`).catch((error: Error) => {
      throw new Error(error.message.replace(/^page\.evaluate: (Error: )?/, "").split("\n")[0]);
    });
  };
  return {
    sample: async (bytes, hints = { slot: null, text: "" }, cut = UNCUT) =>
      (await call("sampleOf", bytes, SAMPLE_SIDE, hints, cut)) as Sampled,
    pixels: async (bytes) =>
      Uint8ClampedArray.from(
        Object.values((await call("pixelsOf", bytes, SAMPLE_SIDE, UNCUT)) as Record<string, number>),
      ),
    medians: async (bytes, boxes) => (await call("mediansOf", bytes, boxes)) as number[][],
    close: () => browser.close(),
  };
}
