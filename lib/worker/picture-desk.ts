import * as v from "valibot";
import { pictureSchema } from "../closet/schemas.ts";
import { originOf } from "../link/origin-of.ts";
import { fetchPicture } from "../pixels/fetch-picture.ts";
import { PictureError } from "../pixels/picture-error.ts";
import { pixelsOfBlob } from "../pixels/pixels-of-blob.ts";
import { thumbnailOf } from "../pixels/thumbnail-of.ts";
import type { Palette } from "../sample/palette.ts";
import { samplePixels } from "../sample/sample-pixels.ts";
import type { Slot } from "../words/slot.ts";

/**
 * Nothing of the person goes out with a picture's request: no cookie, no address of the page. Nor is it led on to another
 * address, which nobody granted and which may be inside the person's own network.
 */
const ANONYMOUS: RequestInit = { referrerPolicy: "no-referrer", redirect: "error" };

/** How pictures are fetched for pages. */
export interface PictureDesk {
  /** Fetches and samples a picture that the page's own script may not read; without swatches it says why. */
  readonly read: (
    url: string,
    hints: { readonly slot: Slot | null; readonly text: string },
    pageUrl: string,
  ) => Promise<Palette>;
  /** A small copy of a picture as a data: URL; a storable data: URL as it is; null where the picture cannot be had. */
  readonly thumbnail: (picture: string, pageUrl: string) => Promise<string | null>;
}

/**
 * Fetches for switched-on stores alone: nothing is asked for unless the page's origin and the picture's both are granted.
 * @param isGranted whether the person granted these origins
 */
export function pictureDesk(
  isGranted: (origins: readonly string[]) => Promise<boolean>,
  signal: AbortSignal,
): PictureDesk {
  const fetchFor = async (url: string, pageUrl: string): Promise<Blob> => {
    const [page, picture] = [originOf(pageUrl), originOf(url)];
    if (!page || !picture || !(await isGranted([page, picture])))
      throw new PictureError(
        `Pictures from ${picture ? new URL(picture).hostname : "there"} are not allowed yet. Switch this store on to read them.`,
      );
    return fetchPicture(url, signal, ANONYMOUS);
  };
  return {
    async read(url, hints, pageUrl) {
      try {
        const { data, width, height } = await pixelsOfBlob(await fetchFor(url, pageUrl));
        return samplePixels(data, width, height, hints);
      } catch (error) {
        const reason = error instanceof Error ? error.message : "This picture cannot be read.";
        return { swatches: [], confidence: 0, evidence: [], reason };
      }
    },
    async thumbnail(picture, pageUrl) {
      if (v.is(pictureSchema, picture)) return picture;
      try {
        return await thumbnailOf(await fetchFor(picture, pageUrl));
      } catch {
        return null;
      }
    },
  };
}
