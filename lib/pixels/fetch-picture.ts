import { PictureError, REASONS } from "./picture-error.ts";

/** Longest wait for a picture, in milliseconds, so that a worker that may live 30 s still has time to answer. */
export const PICTURE_TIMEOUT = 8_000;

/** Largest picture that is read, in bytes; store pictures are 20 kB to 1 MB, so this stops only abuse. */
export const PICTURE_LIMIT = 8 * 1024 * 1024;

/**
 * A picture's file, fetched without credentials and from the cache where it is there, at most `PICTURE_LIMIT` bytes
 * within `PICTURE_TIMEOUT`. Throws `PictureError` with the reason; a `signal` that aborts counts as too slow.
 */
export async function fetchPicture(url: string, signal: AbortSignal, init: RequestInit = {}): Promise<Blob> {
  const ends = AbortSignal.any([signal, AbortSignal.timeout(PICTURE_TIMEOUT)]);
  try {
    const response = await fetch(url, {
      mode: "cors",
      credentials: "omit",
      cache: "force-cache",
      ...init,
      signal: ends,
    });
    if (!response.ok) throw new PictureError(REASONS.broken);
    return await bodyOf(response);
  } catch (error) {
    if (error instanceof PictureError) throw error;
    throw new PictureError(ends.aborted ? REASONS.slow : REASONS.refused);
  }
}

async function bodyOf(response: Response): Promise<Blob> {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let size = 0;
  const reader = response.body?.getReader();
  for (let part = await reader?.read(); part && !part.done; part = await reader?.read()) {
    size += part.value.length;
    if (size > PICTURE_LIMIT) {
      await reader?.cancel();
      throw new PictureError(REASONS.large);
    }
    parts.push(part.value);
  }
  return new Blob(parts, { type: response.headers.get("content-type") ?? "" });
}
