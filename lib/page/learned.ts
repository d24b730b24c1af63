import type { Context } from "./context.ts";

/**
 * What is known of a document by what each of its readings saw, the first as well as those of what it added later: none
 * looks once more at what another saw.
 */
export function learned<T>(
  start: () => T,
  learn: (known: T, scopes: readonly ParentNode[]) => void,
): (context: Context) => T {
  const all = new WeakMap<Document, T>();
  const read = new WeakSet<Context>();
  return (context) => {
    const known = all.get(context.doc) ?? start();
    if (read.has(context)) return known;
    all.set(context.doc, known);
    read.add(context);
    learn(known, context.scopes);
    return known;
  };
}

/** Entries kept of a document that shows one list after another. */
const MOST_KEPT = 4000;

/** Forgets what was learned first, of more than is kept. */
export function forgetOldest(known: Map<string, unknown>): void {
  for (const key of known.keys()) {
    if (known.size <= MOST_KEPT) return;
    known.delete(key);
  }
}
