import { originOf } from "../link/origin-of.ts";
import { fetchPicture } from "../pixels/fetch-picture.ts";
import { pixelsOfBlob } from "../pixels/pixels-of-blob.ts";
import { thumbnailOf } from "../pixels/thumbnail-of.ts";
import type { Palette } from "../sample/palette.ts";
import { samplePixels } from "../sample/sample-pixels.ts";
import type { Slot } from "../words/slot.ts";

/** Nothing of the person goes out with a picture's request: no cookie, no address of the page. */
const ANONYMOUS: RequestInit = { referrerPolicy: "no-referrer" };

const unreadable = (reason: string): Palette => ({ swatches: [], confidence: 0, evidence: [], reason });

/**
 * Fetches a picture that the page's own script may not read, and samples it. Only an origin that was granted with its
 * store can be read; anything else fails in the browser and is answered with what to do about it.
 * @param isGranted whether the person granted these origins
 */
export async function readPicture(
  url: string,
  hints: { readonly slot: Slot | null; readonly text: string },
  isGranted: (origins: readonly string[]) => Promise<boolean>,
  signal: AbortSignal,
): Promise<Palette> {
  try {
    const { data, width, height } = await pixelsOfBlob(await fetchPicture(url, signal, ANONYMOUS));
    return samplePixels(data, width, height, hints);
  } catch (error) {
    const origin = originOf(url);
    if (origin && !(await isGranted([origin]))) {
      return unreadable(
        `Pictures from ${new URL(origin).hostname} are not allowed yet. Switch this store on to read them.`,
      );
    }
    return unreadable(error instanceof Error ? error.message : "This picture cannot be read.");
  }
}

/** A small copy of a picture as a data: URL; a data: URL as it is; null where the picture cannot be had. */
export async function thumbnail(picture: string, signal: AbortSignal): Promise<string | null> {
  if (picture.startsWith("data:")) return picture;
  try {
    return await thumbnailOf(await fetchPicture(picture, signal, ANONYMOUS));
  } catch {
    return null;
  }
}
