import { PictureError, REASONS } from "./picture-error.ts";
import { decode } from "./pixels-of-blob.ts";

/** Longest side of a thumbnail in pixels: twice the 120 px a card in the closet gives it. Layout choice. */
export const THUMBNAIL_SIDE = 240;

/** Characters a thumbnail may take as a data: URL, so that 1,000 of them stay below 40 MB. Storage choice. */
export const THUMBNAIL_LIMIT = 40_000;

/** JPEG qualities tried in turn until the limit holds; 0.1 of 240 × 240 noise is far below it. */
const QUALITIES = [0.85, 0.7, 0.5, 0.3, 0.1];

/** Other colours for RGBA pixels; as many as it was given. */
export type Recolour = (data: Uint8ClampedArray) => Uint8ClampedArray;

/**
 * A small JPEG of a picture file as a data: URL of at most `THUMBNAIL_LIMIT` characters; transparent parts white, colours changed
 * by `recolour`. Works in a window and in a worker. Throws `PictureError` where the browser cannot decode it.
 */
export async function thumbnailOf(blob: Blob, recolour?: Recolour): Promise<string> {
  const bitmap = await decode(blob);
  try {
    return await encode(bitmap, bitmap.width, bitmap.height, recolour);
  } finally {
    bitmap.close();
  }
}

/** As `thumbnailOf`, of a loaded picture on the page. Throws `PictureError` where the page may not read it. */
export async function thumbnailOfImage(image: HTMLImageElement): Promise<string> {
  try {
    return await encode(image, image.naturalWidth, image.naturalHeight);
  } catch (error) {
    throw error instanceof PictureError ? error : new PictureError(REASONS.refused);
  }
}

async function encode(
  picture: CanvasImageSource,
  width: number,
  height: number,
  recolour?: Recolour,
): Promise<string> {
  const scale = Math.min(1, THUMBNAIL_SIDE / Math.max(width, height));
  const canvas = new OffscreenCanvas(
    Math.max(1, Math.round(width * scale)),
    Math.max(1, Math.round(height * scale)),
  );
  const context = canvas.getContext("2d");
  if (!context) throw new PictureError(REASONS.format);
  context.fillStyle = "#fff";
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.imageSmoothingQuality = "high";
  context.drawImage(picture, 0, 0, canvas.width, canvas.height);
  if (recolour) {
    const drawn = context.getImageData(0, 0, canvas.width, canvas.height);
    drawn.data.set(recolour(drawn.data));
    context.putImageData(drawn, 0, 0);
  }
  for (const quality of QUALITIES) {
    const url = await dataUrlOf(await canvas.convertToBlob({ type: "image/jpeg", quality }));
    if (url.length <= THUMBNAIL_LIMIT) return url;
  }
  throw new PictureError(REASONS.large);
}

async function dataUrlOf(jpeg: Blob): Promise<string> {
  const bytes = new Uint8Array(await jpeg.arrayBuffer());
  return `data:image/jpeg;base64,${btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""))}`;
}
