import { breathe } from "../badge/breathe.ts";
import type { AskWorker } from "../link/messages.ts";
import type { FoundProduct } from "../page/product.ts";
import { colorText } from "../page/product-words.ts";
import { PictureError, REASONS } from "../pixels/picture-error.ts";
import type { PictureSource, ReadPicture } from "../pixels/picture-reader.ts";
import type { Pixels } from "../pixels/pixels.ts";
import { pixelsOfBlob } from "../pixels/pixels-of-blob.ts";
import { pixelsOfImage } from "../pixels/pixels-of-image.ts";
import type { Palette } from "../sample/palette.ts";
import type { Slot } from "../words/slot.ts";
import { mayGain, pixelsOfEach, witnessesOf } from "./witnesses.ts";

/** Characters of the page's words that count; longer texts name no colour of one product. */
const TEXT_LENGTH = 2_000;

/** The page's words that help to read a product's colour. */
export function paletteText(product: FoundProduct): string {
  return colorText(product).slice(0, TEXT_LENGTH);
}

/**
 * The palette of a product from its picture and words: from the one it shows or, where that is a mere placeholder,
 * from the best one the page names; where that leaves it unsure, also from the product's other pictures on the page.
 * Without any, an empty palette that says why.
 */
export async function readPalette(
  product: FoundProduct,
  slot: Slot | null,
  source: PictureSource,
  read: ReadPicture,
  ask: AskWorker,
): Promise<Palette> {
  const text = paletteText(product);
  const sample = async (pixels: Pixels) => {
    const alone = await ask("samplePicture", { pixels, others: [], slot, text });
    const others = mayGain(alone) ? await pixelsOfEach(witnessesOf(product)) : [];
    return others.length ? ask("samplePicture", { pixels, others, slot, text }).catch(() => alone) : alone;
  };
  const readFrom = (from: PictureSource) =>
    read(from, {
      ofImage: async (image) => {
        // Pictures that finish decoding together must not be drawn in one task.
        await breathe();
        return sample(pixelsOfImage(image));
      },
      ofFile: async (file) => sample(await pixelsOfBlob(file)),
      elsewhere: (url) => ask("readPicture", { url, slot, text }),
    });
  const better = product.images.find((url) => url !== source.url);
  try {
    if (!source.url) throw new PictureError(REASONS.broken);
    return await readFrom(source).catch((error) => {
      if (!better || !isPlaceholder(error)) throw error;
      return readFrom({ url: better, image: null });
    });
  } catch (error) {
    const reason = error instanceof Error ? error.message : REASONS.refused;
    return { swatches: [], confidence: 0, evidence: [], reason };
  }
}

function isPlaceholder(error: unknown): boolean {
  return (
    error instanceof PictureError && (error.message === REASONS.small || error.message === REASONS.broken)
  );
}
