import type { FoundProduct } from "../page/product.ts";
import { PICTURE_TIMEOUT } from "../pixels/fetch-picture.ts";
import { SMALLEST_PICTURE } from "../pixels/picture-reader.ts";

/** How long a page may take to replace a stand-in by the picture, in milliseconds, before we read the one it names. */
const PLACEHOLDER_PATIENCE = 600;

/** Resolves once a product's picture has loaded or failed, so that a slow one keeps no other waiting; a stand-in gets a little longer. */
export async function settled({ image, images }: FoundProduct): Promise<void> {
  if (!(image instanceof HTMLImageElement)) return;
  if (!image.complete) {
    await new Promise<unknown>((done) => {
      for (const type of ["load", "error"]) image.addEventListener(type, done, { once: true });
      setTimeout(done, PICTURE_TIMEOUT);
    });
  }
  const isPlaceholder =
    image.naturalWidth < SMALLEST_PICTURE && images.some((url) => url !== image.currentSrc);
  if (isPlaceholder) await new Promise((done) => setTimeout(done, PLACEHOLDER_PATIENCE));
}
