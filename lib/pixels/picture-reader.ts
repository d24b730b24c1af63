import { fetchPicture, isTooLarge, PICTURE_TIMEOUT } from "./fetch-picture.ts";
import { PictureError, REASONS } from "./picture-error.ts";

/** Narrowest picture worth reading, in its own pixels: placeholders and icons are smaller, product pictures never. */
export const SMALLEST_PICTURE = 48;

/**
 * Refusals of a way by an origin that never let it work, after which it is not tried there again: hosts as a rule treat
 * all pictures alike, but some let only part of them be read (our choice).
 */
const REFUSALS_MOST = 3;

/** Where a picture is: its address and, where the page shows it, the element. */
export interface PictureSource {
  readonly url: string;
  readonly image: HTMLImageElement | null;
}

/** What to do with a picture in whichever form it can be had. */
export interface PictureUses<T> {
  readonly ofImage: (image: HTMLImageElement) => T | Promise<T>;
  readonly ofFile: (file: Blob) => Promise<T>;
  /** The last way, for pictures that this page may not read; without it they are refused. */
  readonly elsewhere?: (url: string) => Promise<T>;
}

export type ReadPicture = <T>(source: PictureSource, uses: PictureUses<T>) => Promise<T>;

/**
 * A reader that tries the cheapest way first: the picture on the page, in Firefox a copy of it under the extension's
 * own grant, the file, and last `elsewhere`. It remembers per origin which ways work and which are always refused. The
 * promise rejects with the last way's reason.
 */
export function pictureReader(signal: AbortSignal): ReadPicture {
  const refusals = new Map<string, number>();

  return async (source, uses) => {
    if (source.image) await loaded(source.image, signal);
    const origin = originOf(source.url);
    let reason: unknown = new PictureError(REASONS.refused);
    for (const [name, way] of waysOf(source, uses, signal)) {
      const memory = `${name} ${origin}`;
      if ((refusals.get(memory) ?? 0) >= REFUSALS_MOST) continue;
      try {
        const had = await way();
        refusals.set(memory, Number.NEGATIVE_INFINITY);
        return had;
      } catch (error) {
        signal.throwIfAborted();
        if (error instanceof PictureError && error.message === REASONS.refused)
          refusals.set(memory, (refusals.get(memory) ?? 0) + 1);
        reason = error;
      }
    }
    throw reason;
  };
}

function waysOf<T>({ url, image }: PictureSource, uses: PictureUses<T>, signal: AbortSignal) {
  const { elsewhere } = uses;
  const ways: [name: string, way: () => T | Promise<T>][] = [];
  if (image) ways.push(["image", () => uses.ofImage(image)]);
  if (isFirefox()) ways.push(["copy", async () => uses.ofImage(await grantedCopy(url, signal))]);
  ways.push(["file", async () => uses.ofFile(await fetchPicture(url, signal))]);
  // Never remembered as refused: the person may grant the picture's host at any time.
  if (elsewhere) ways.push(["elsewhere", () => elsewhere(url)]);
  return ways;
}

async function loaded(image: HTMLImageElement, signal: AbortSignal): Promise<void> {
  refuseHuge(image);
  await within(image.decode(), signal).catch((error) => {
    // A picture that changes while it is decoded rejects as well; what counts is whether one is there.
    if (!image.complete || !image.naturalWidth) throw error;
  });
  refuseHuge(image);
  if (image.naturalWidth < SMALLEST_PICTURE) throw new PictureError(REASONS.small);
}

/** What unfolds to more than a machine can bear is not even decoded, where that is known already. */
function refuseHuge({ naturalWidth: width, naturalHeight: height }: HTMLImageElement): void {
  if (isTooLarge({ width, height })) throw new PictureError(REASONS.large);
}

/** Firefox lifts the cross-origin rule for pictures a content script loads from hosts the extension was granted. */
async function grantedCopy(url: string, signal: AbortSignal): Promise<HTMLImageElement> {
  const copy = new Image();
  copy.crossOrigin = "anonymous";
  copy.src = url;
  await within(copy.decode(), signal).catch(() => {
    throw new PictureError(REASONS.refused);
  });
  return copy;
}

function isFirefox(): boolean {
  return CSS.supports("-moz-appearance", "none");
}

/** The picture, or a `PictureError` once it fails or takes longer than `PICTURE_TIMEOUT`. */
function within(decoding: Promise<void>, signal: AbortSignal): Promise<void> {
  const ends = AbortSignal.any([signal, AbortSignal.timeout(PICTURE_TIMEOUT)]);
  return new Promise((resolve, reject) => {
    ends.addEventListener("abort", () => reject(new PictureError(REASONS.slow)));
    decoding.then(resolve, () => reject(new PictureError(REASONS.broken)));
  });
}

function originOf(url: string): string {
  return URL.parse(url)?.origin ?? "";
}
