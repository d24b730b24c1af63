/** Runs a generator to its end. */
export function finish<T>(work: Generator<unknown, T, undefined>): T {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}
