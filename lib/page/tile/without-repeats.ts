import type { Context } from "../context.ts";
import { parentOf } from "../dom/ancestors.ts";
import { kindOf } from "../members.ts";
import { isCopy } from "../picture/is-copy.ts";
import type { FoundProduct } from "../product.ts";

/** Of two equal tiles the one with a picture so many times as wide is where a person looks. Layout choice. */
const LARGER = 1.5;

/** Whether two tiles are members of one list, by themselves or with what is around each. */
function areSiblings(one: Element, other: Element): boolean {
  if (one === other || one.className !== other.className) return false;
  const [a, b] = [parentOf(one), parentOf(other)];
  return a !== null && b !== null && (a === b || (kindOf(a) === kindOf(b) && parentOf(a) === parentOf(b)));
}

/**
 * One product, one badge: a clone in a carousel or a hidden second copy gives way to the one that can be seen. Where
 * several products share a link, as tiles that all lead to one order form do, their title and picture tell them apart.
 */
export function withoutRepeats(products: readonly FoundProduct[], { furniture }: Context): FoundProduct[] {
  const firsts = new Map<string, FoundProduct>();
  const shared = new Set<string>();
  const apart = (one: FoundProduct, other: FoundProduct) =>
    one.images[0] !== other.images[0] &&
    areSiblings(one.root, other.root) &&
    ![one.root, other.root].some((root) => furniture.isHidden(root) || isCopy(root));
  const names = (one: FoundProduct, other: FoundProduct) => one.root.textContent.includes(other.title);
  for (const product of products) {
    const first = firsts.get(product.key) ?? product;
    firsts.set(product.key, first);
    const named = first.title !== product.title && !names(first, product) && !names(product, first);
    if (named || apart(first, product)) shared.add(product.key);
  }
  const best = new Map<string, FoundProduct>();
  const worth = ({ role, root }: FoundProduct) =>
    Number(role === "main") * 4 + Number(!furniture.isHidden(root)) * 2 + Number(!isCopy(root));
  const width = ({ image }: FoundProduct) => image?.getBoundingClientRect().width ?? 0;
  for (const product of products) {
    const key = shared.has(product.key)
      ? `${product.title}\n${product.images[0] ?? ""}`.slice(0, 512)
      : product.key;
    const known = best.get(key);
    // Of two that are worth the same, the one whose name stands in both, or whose picture is much larger.
    const better =
      known &&
      (worth(product) - worth(known) ||
        Number(names(known, product)) - Number(names(product, known)) ||
        Number(width(product) > LARGER * width(known)));
    if (better === undefined || better > 0) best.set(key, { ...product, key });
  }
  // A copy is one whatever it leads to: templates count them through.
  const look = ({ title, images }: FoundProduct) => `${title}\n${images[0]}`;
  const seen = new Set([...best.values()].filter(({ root }) => !isCopy(root)).map(look));
  return [...best.values()].filter((one) => {
    const isNew = !isCopy(one.root) || !seen.has(look(one));
    seen.add(look(one));
    return isNew;
  });
}
