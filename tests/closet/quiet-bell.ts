import type { ChangeBell } from "../../lib/closet/closet.ts";

/** A bell within one process; `rings` counts. */
export function quietBell(): ChangeBell & { readonly rings: () => number } {
  const listeners = new Set<() => void>();
  let rings = 0;
  return {
    async ring() {
      rings += 1;
      for (const listener of listeners) listener();
    },
    onRing(listener, signal) {
      if (signal.aborted) return;
      listeners.add(listener);
      signal.addEventListener("abort", () => listeners.delete(listener), { once: true });
    },
    rings: () => rings,
  };
}
