import { PictureError, REASONS } from "./picture-error.ts";
import { type Pixels, SAMPLE_SIDE } from "./pixels.ts";
import { decode } from "./pixels-of-blob.ts";

/** A rectangle in parts of a picture's width and height, 0–1. */
export interface Part {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * The pixels of parts of a snapshot, each squeezed to `SAMPLE_SIDE` a side; pixels that a part's edge runs through are left out.
 * Throws `PictureError` where the browser cannot decode the snapshot.
 */
export async function pixelsOfSnapshot(snapshot: Blob, parts: readonly Part[]): Promise<Pixels[]> {
  const whole = await decode(snapshot);
  try {
    return await Promise.all(parts.map((part) => pixelsOfPart(whole, part)));
  } finally {
    whole.close();
  }
}

async function pixelsOfPart(whole: ImageBitmap, part: Part): Promise<Pixels> {
  const left = Math.ceil(part.left * whole.width);
  const top = Math.ceil(part.top * whole.height);
  const width = Math.max(1, Math.floor(part.right * whole.width) - left);
  const height = Math.max(1, Math.floor(part.bottom * whole.height) - top);
  // Cut out before it is squeezed: a canvas that enlarges takes in what lies beside it.
  const cut = await createImageBitmap(whole, left, top, width, height);
  try {
    const context = new OffscreenCanvas(SAMPLE_SIDE, SAMPLE_SIDE).getContext("2d", {
      willReadFrequently: true,
    });
    if (!context) throw new PictureError(REASONS.format);
    context.imageSmoothingQuality = "medium";
    context.drawImage(cut, 0, 0, SAMPLE_SIDE, SAMPLE_SIDE);
    const { data } = context.getImageData(0, 0, SAMPLE_SIDE, SAMPLE_SIDE);
    return { data, width: SAMPLE_SIDE, height: SAMPLE_SIDE };
  } finally {
    cut.close();
  }
}
