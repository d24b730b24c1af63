import { PictureError, REASONS } from "./picture-error.ts";
import { type Pixels, SAMPLE_SIDE } from "./pixels.ts";

let reused: CanvasRenderingContext2D | null = null;

function context(): CanvasRenderingContext2D {
  if (reused) return reused;
  const canvas = document.createElement("canvas");
  canvas.width = canvas.height = SAMPLE_SIDE;
  const fresh = canvas.getContext("2d", { willReadFrequently: true });
  if (!fresh) throw new PictureError(REASONS.format);
  fresh.imageSmoothingQuality = "medium";
  reused = fresh;
  return fresh;
}

/**
 * The pixels of a loaded picture on the page, squeezed to `SAMPLE_SIDE` a side.
 * Throws `PictureError` where the browser keeps the picture from being read.
 */
export function pixelsOfImage(image: HTMLImageElement): Pixels {
  const canvas = context();
  canvas.clearRect(0, 0, SAMPLE_SIDE, SAMPLE_SIDE);
  try {
    canvas.drawImage(image, 0, 0, SAMPLE_SIDE, SAMPLE_SIDE);
    return {
      data: canvas.getImageData(0, 0, SAMPLE_SIDE, SAMPLE_SIDE).data,
      width: SAMPLE_SIDE,
      height: SAMPLE_SIDE,
    };
  } catch (error) {
    // A canvas that once held a foreign picture stays unreadable for good.
    reused = null;
    throw new PictureError(isRefusal(error) ? REASONS.refused : REASONS.broken);
  }
}

function isRefusal(error: unknown): boolean {
  return error instanceof DOMException && error.name === "SecurityError";
}
