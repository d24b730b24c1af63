/** Lets the page do what it waits to do. */
export function breathe(): Promise<void> {
  return "scheduler" in globalThis ? scheduler.yield() : new Promise((done) => setTimeout(done));
}
