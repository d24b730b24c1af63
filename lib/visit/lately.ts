import type { Tracked } from "./tracked.ts";

/** Products remembered at most; what a page draws anew at once is less. */
const MOST = 200;

/** What a product's badge said when the page took its elements away; holds no element, so that those can go. */
export type Said = Pick<Tracked, "slot" | "palette" | "brief">;

/** Products that were on the page a moment ago, so that one drawn anew has its badge back at once, as it was. */
export interface Lately {
  readonly keep: (tracked: Tracked) => void;
  /** What was said of the product with this key and this picture; handed out once. */
  readonly take: (key: string, url: string) => Said | null;
  /** Forgets all: it is true no longer. */
  readonly clear: () => void;
}

export function latelyShown(): Lately {
  const byKey = new Map<string, { readonly url: string; readonly said: Said }>();
  return {
    keep({ product: { key }, source, slot, palette, brief }) {
      if (!brief) return;
      byKey.delete(key);
      byKey.set(key, { url: source.url, said: { slot, palette, brief } });
      const [oldest] = byKey.keys();
      if (byKey.size > MOST && oldest !== undefined) byKey.delete(oldest);
    },
    take(key, url) {
      const kept = byKey.get(key);
      byKey.delete(key);
      return url && kept?.url === url ? kept.said : null;
    },
    clear: () => byKey.clear(),
  };
}
