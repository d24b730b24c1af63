import { PictureError, REASONS } from "./picture-error.ts";
import type { PictureUses } from "./picture-reader.ts";
import { decode } from "./pixels-of-blob.ts";

/** Longest side of a picture that a person points at, in pixels: as wide as the card, no larger. Layout choice. */
export const POINTING_SIDE = 296;

/** A picture as a readable canvas to point at, for `ReadPicture`; no way elsewhere, since pixels never travel. */
export const asCanvas: PictureUses<HTMLCanvasElement> = {
  ofImage: (image) => canvasOf(image, image.naturalWidth, image.naturalHeight),
  ofFile: async (file) => {
    const bitmap = await decode(file);
    try {
      return canvasOf(bitmap, bitmap.width, bitmap.height);
    } finally {
      bitmap.close();
    }
  },
};

function canvasOf(picture: CanvasImageSource, width: number, height: number): HTMLCanvasElement {
  const scale = Math.min(1, POINTING_SIDE / Math.max(width, height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(width * scale));
  canvas.height = Math.max(1, Math.round(height * scale));
  const context = canvas.getContext("2d", { willReadFrequently: true });
  if (!context) throw new PictureError(REASONS.format);
  context.drawImage(picture, 0, 0, canvas.width, canvas.height);
  try {
    context.getImageData(0, 0, 1, 1);
  } catch {
    throw new PictureError(REASONS.refused);
  }
  return canvas;
}
