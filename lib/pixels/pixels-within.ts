import { PictureError, REASONS } from "./picture-error.ts";
import type { Pixels } from "./pixels.ts";
import { decode } from "./pixels-of-blob.ts";

/**
 * The pixels of a picture file in its own shape, its longest side at most `side`; never enlarged. Works in a window and in a
 * worker. Throws `PictureError` where the browser cannot decode it.
 */
export async function pixelsWithin(blob: Blob, side: number): Promise<Pixels> {
  const bitmap = await decode(blob);
  try {
    const scale = Math.min(1, side / Math.max(bitmap.width, bitmap.height));
    const width = Math.max(1, Math.round(bitmap.width * scale));
    const height = Math.max(1, Math.round(bitmap.height * scale));
    const context = new OffscreenCanvas(width, height).getContext("2d", { willReadFrequently: true });
    if (!context) throw new PictureError(REASONS.format);
    context.imageSmoothingQuality = "high";
    context.drawImage(bitmap, 0, 0, width, height);
    return { data: context.getImageData(0, 0, width, height).data, width, height };
  } finally {
    bitmap.close();
  }
}
