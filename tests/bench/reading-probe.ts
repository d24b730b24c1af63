import { breathe } from "../../lib/badge/breathe.ts";
import { SLICE } from "../../lib/visit/in-slices.ts";
import { readAdded, readPage } from "../page/read-page.ts";

/** What one reading took on the page's own thread, in milliseconds. */
export interface Reading {
  readonly ms: number;
  /** The longest work without a breath, as the page script slices it. */
  readonly slice: number;
  /** The longest work between two yields of the reader; a slice ends only there. */
  readonly step: number;
  readonly products: number;
}

async function timed<T>(work: Generator<undefined, T, undefined>, count: (found: T) => number) {
  let [ms, slice, step] = [0, 0, 0];
  for (;;) {
    await breathe();
    const start = performance.now();
    let now = start;
    do {
      const next = work.next();
      const before = now;
      now = performance.now();
      step = Math.max(step, now - before);
      if (!next.done) continue;
      ms += now - start;
      return { ms, slice: Math.max(slice, now - start), step, products: count(next.value) };
    } while (now - start < SLICE);
    ms += now - start;
    slice = Math.max(slice, now - start);
  }
}

/** Runs in the page: reads all of it. */
export const whole = (): Promise<Reading> => timed(readPage(document), ({ products }) => products.length);

/** Runs in the page: adds tiles to its list and reads them, or reads the whole page again. */
export async function grown(markup: string, again: boolean): Promise<Reading> {
  const list = document.getElementById("list");
  if (!list) throw new Error("The page has no list.");
  const before = list.children.length;
  list.insertAdjacentHTML("beforeend", markup);
  // The page's own layout of what it added is not the reader's cost.
  list.getBoundingClientRect();
  await breathe();
  const added = [...list.children].slice(before);
  return again ? whole() : timed(readAdded(document, added), (products) => products.length);
}
