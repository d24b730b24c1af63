import type { Context } from "./context.ts";
import type { FoundProduct } from "./product.ts";

const CLONE = '[aria-hidden="true"],[class*="clone"],[class*="duplicate"]';

/**
 * One product, one badge: a clone in a carousel or a hidden second copy gives way to the one that can be seen. Where
 * several products share a link, as tiles that all lead to one order form do, their title and picture tell them apart.
 */
export function withoutRepeats(products: readonly FoundProduct[], { furniture }: Context): FoundProduct[] {
  const titles = new Map<string, string>();
  const shared = new Set<string>();
  for (const { key, title } of products) {
    if ((titles.get(key) ?? title) !== title) shared.add(key);
    titles.set(key, title);
  }
  const best = new Map<string, FoundProduct>();
  const worth = ({ role, root }: FoundProduct) =>
    Number(role === "main") * 4 + Number(!furniture.isHidden(root)) * 2 + Number(!root.closest(CLONE));
  for (const product of products) {
    const key = shared.has(product.key)
      ? `${product.title}\n${product.images[0] ?? ""}`.slice(0, 512)
      : product.key;
    const known = best.get(key);
    if (!known || worth(product) > worth(known)) best.set(key, { ...product, key });
  }
  return [...best.values()];
}
