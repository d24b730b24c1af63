import { PictureError, REASONS } from "./picture-error.ts";
import { type SaidSize, sizeInFile } from "./size-in-file.ts";

/** Longest wait for a picture, in milliseconds, so that a worker that may live 30 s still has time to answer. */
export const PICTURE_TIMEOUT = 8_000;

/** Largest picture that is read, in bytes; store pictures are 20 kB to 1 MB, so this stops only abuse. */
export const PICTURE_LIMIT = 8 * 1024 * 1024;

/** Most pixels of a picture that is read: twice what common cameras make, 200 MB once it is decoded (our choice). */
export const PIXELS_MOST = 50_000_000;

/** Content types worth reading on: pictures but for drawings, and what servers say that do not know their files. */
const MAY_BE_PICTURE = /^(?:image\/(?!svg)|(?:application|binary)\/octet-stream|$)/i;

/** Whether a picture of this size is left alone. */
export const isTooLarge = ({ width, height }: SaidSize): boolean => width * height > PIXELS_MOST;

/**
 * A picture's file, fetched without credentials and from the cache where it is there, at most `PICTURE_LIMIT` bytes
 * within `PICTURE_TIMEOUT`, and by its own account at most `PIXELS_MOST` pixels. Throws `PictureError` with the reason;
 * a `signal` that aborts counts as too slow.
 */
export async function fetchPicture(url: string, signal: AbortSignal, init: RequestInit = {}): Promise<Blob> {
  const leave = new AbortController();
  const ends = AbortSignal.any([signal, leave.signal, AbortSignal.timeout(PICTURE_TIMEOUT)]);
  try {
    const response = await fetch(url, {
      mode: "cors",
      credentials: "omit",
      cache: "force-cache",
      ...init,
      signal: ends,
    });
    if (!response.ok) throw new PictureError(REASONS.broken);
    const type = response.headers.get("content-type") ?? "";
    if (!MAY_BE_PICTURE.test(type)) throw new PictureError(REASONS.format);
    const file = await bodyOf(response, type);
    const size = sizeInFile(new Uint8Array(await file.arrayBuffer()));
    if (!size) throw new PictureError(REASONS.format);
    if (isTooLarge(size)) throw new PictureError(REASONS.large);
    return file;
  } catch (error) {
    if (error instanceof PictureError) throw error;
    throw new PictureError(ends.aborted ? REASONS.slow : REASONS.refused);
  } finally {
    // What was not read to its end is not worth the rest.
    leave.abort();
  }
}

async function bodyOf(response: Response, type: string): Promise<Blob> {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let size = 0;
  const reader = response.body?.getReader();
  for (let part = await reader?.read(); part && !part.done; part = await reader?.read()) {
    size += part.value.length;
    if (size > PICTURE_LIMIT) throw new PictureError(REASONS.large);
    parts.push(part.value);
  }
  return new Blob(parts, { type });
}
