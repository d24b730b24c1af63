import { breathe } from "../badge/breathe.ts";
import { otherPictures } from "../page/picture/other-pictures.ts";
import type { FoundProduct } from "../page/product.ts";
import { SMALLEST_PICTURE } from "../pixels/picture-reader.ts";
import type { Pixels } from "../pixels/pixels.ts";
import { pixelsOfImage } from "../pixels/pixels-of-image.ts";
import { type Palette, SURE } from "../sample/palette.ts";

/** Whether other photos of the product may make a palette surer, or another one. */
export function mayGain({ swatches, confidence, evidence }: Palette): boolean {
  return swatches.length > 0 && confidence < SURE && !evidence.includes("photos");
}

/** The page's other pictures of a product that can be read where they are, without asking for anything again. */
export function witnessesOf(product: FoundProduct): HTMLImageElement[] {
  return otherPictures(product).filter(
    ({ naturalWidth, crossOrigin, currentSrc, baseURI }) =>
      naturalWidth >= SMALLEST_PICTURE &&
      (crossOrigin !== null || URL.parse(currentSrc)?.origin === URL.parse(baseURI)?.origin),
  );
}

/** The pixels of pictures on the page, drawn one at a time; a picture that cannot be read after all is left out. */
export async function pixelsOfEach(images: readonly HTMLImageElement[]): Promise<Pixels[]> {
  const all: Pixels[] = [];
  for (const image of images) {
    await breathe();
    try {
      all.push(pixelsOfImage(image));
    } catch {
      // A further witness is worth no further attempt.
    }
  }
  return all;
}
