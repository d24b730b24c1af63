import { spared } from "../page/spared.ts";
import { breathe } from "./breathe.ts";

/** Measuring between two breaths of the page, in milliseconds; the changes that follow and their layout take about as long. */
const TURN = 2;

/**
 * Measures things and then changes the page, for as many as one turn holds, until all had their turn: each change between
 * two measures would make the browser lay out anew. The first turn is taken at once. What `measure` answers null for, or
 * breaks, is left out.
 */
export async function inTurns<T, M>(
  things: Iterable<T>,
  measure: (thing: T) => M | null,
  change: (measured: readonly M[]) => void,
): Promise<void> {
  const waiting = [...things];
  while (waiting.length) {
    const end = performance.now() + TURN;
    let count = 0;
    const measured: M[] = [];
    do {
      const thing = waiting[count++] as T;
      const found = spared(() => measure(thing));
      if (found != null) measured.push(found);
    } while (count < waiting.length && performance.now() < end);
    waiting.splice(0, count);
    spared(() => change(measured));
    if (waiting.length) await breathe();
  }
}
