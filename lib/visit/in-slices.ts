import { breathe } from "../badge/breathe.ts";

/**
 * Work between two breaths of the page, in milliseconds; with the step that runs over (two, the first time that the
 * browser compiles it), a slice stays under half a frame at 60 Hz.
 */
export const SLICE = 4;

/** Work that may pause at each `yield`, and has to where it yields something to wait for. */
export type Work<T> = Generator<Promise<void> | undefined, T, undefined>;

/** Runs work, never longer than `SLICE` and one step at a time. Throws once `signal` aborts. */
export async function inSlices<T>(work: Work<T>, signal: AbortSignal): Promise<T> {
  for (;;) {
    await breathe();
    signal.throwIfAborted();
    const end = performance.now() + SLICE;
    do {
      const step = work.next();
      if (step.done) return step.value;
      if (step.value) {
        await step.value;
        break;
      }
    } while (performance.now() < end);
  }
}
