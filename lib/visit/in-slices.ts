/** Longest piece of work between two breaths of the page, in milliseconds: half a frame at 60 Hz. */
export const SLICE = 8;

/** Lets the page do what it waits to do. */
export function breathe(): Promise<void> {
  return "scheduler" in globalThis ? scheduler.yield() : new Promise((done) => setTimeout(done));
}

/** Runs work that may pause at each `yield`, never longer than `SLICE` at a time. Throws once `signal` aborts. */
export async function inSlices<T>(work: Generator<undefined, T, undefined>, signal: AbortSignal): Promise<T> {
  for (;;) {
    await breathe();
    signal.throwIfAborted();
    const end = performance.now() + SLICE;
    do {
      const step = work.next();
      if (step.done) return step.value;
    } while (performance.now() < end);
  }
}
