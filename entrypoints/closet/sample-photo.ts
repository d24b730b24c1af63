import { pixelsOfBlob } from "../../lib/pixels/pixels-of-blob.ts";
import { pixelsWithin } from "../../lib/pixels/pixels-within.ts";
import { type Recolour, thumbnailOf } from "../../lib/pixels/thumbnail-of.ts";
import { samplePixels } from "../../lib/sample/sample-pixels.ts";
import { readWhiteCard } from "../../lib/sample/white-card.ts";
import { balanced } from "../../lib/sample/white-card-balance.ts";
import type { SampledPhoto, Spot } from "../../lib/ui/closet-page/closet-tools.ts";
import { photoName } from "../../lib/ui/closet-page/photo-name.ts";
import { readSlot } from "../../lib/words/read-words.ts";

/** Longest side at which a pointed spot is read, in pixels: a label keeps dozens of them, and 3 MB are soon read. */
const READING_SIDE = 1_024;

/** The colours and the small picture of a photo file; `white`: a place in it that is white or grey in truth. */
export async function samplePhoto(file: File, white?: Spot): Promise<SampledPhoto> {
  const text = photoName(file.name);
  const recolour = white && (await recolouring(file, white));
  const [{ data, width, height }, picture] = await Promise.all([
    pixelsOfBlob(file),
    thumbnailOf(file, recolour),
  ]);
  const hints = { slot: readSlot(text), text };
  return { palette: samplePixels(recolour ? recolour(data) : data, width, height, hints), picture };
}

async function recolouring(file: File, { x, y }: Spot): Promise<Recolour> {
  const reading = readWhiteCard(await pixelsWithin(file, READING_SIDE), x, y);
  if ("fault" in reading) throw new Error(reading.message);
  return (data) => balanced(data, reading.gains);
}
