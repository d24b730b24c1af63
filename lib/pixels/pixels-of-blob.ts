import { PictureError, REASONS } from "./picture-error.ts";
import { type Pixels, SAMPLE_SIDE } from "./pixels.ts";

/**
 * The pixels of a picture file, squeezed to `SAMPLE_SIDE` a side; of an animation, its first frame.
 * Works in a window and in a worker. Throws `PictureError` where the browser cannot decode it (SVG among them).
 */
export async function pixelsOfBlob(blob: Blob): Promise<Pixels> {
  const bitmap = await decode(blob, {
    resizeWidth: SAMPLE_SIDE,
    resizeHeight: SAMPLE_SIDE,
    resizeQuality: "medium",
  });
  try {
    const context = new OffscreenCanvas(SAMPLE_SIDE, SAMPLE_SIDE).getContext("2d", {
      willReadFrequently: true,
    });
    if (!context) throw new PictureError(REASONS.format);
    context.drawImage(bitmap, 0, 0);
    return {
      data: context.getImageData(0, 0, SAMPLE_SIDE, SAMPLE_SIDE).data,
      width: SAMPLE_SIDE,
      height: SAMPLE_SIDE,
    };
  } finally {
    bitmap.close();
  }
}

/** A decoded picture; the caller closes it. Throws `PictureError` where the browser cannot decode it. */
export async function decode(blob: Blob, options: ImageBitmapOptions = {}): Promise<ImageBitmap> {
  try {
    return await createImageBitmap(blob, options);
  } catch {
    throw new PictureError(REASONS.format);
  }
}
