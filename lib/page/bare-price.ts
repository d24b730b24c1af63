import { parentOf } from "./ancestors.ts";
import type { Context } from "./context.ts";
import { plainText } from "./plain-text.ts";
import type { PriceLeaf } from "./price-leaf.ts";
import { settleMoney } from "./settle-money.ts";

/** Texts looked at in one product. */
const MOST_TEXTS = 40;
/** Numbers as little else than money is written: in thousands that are kept apart, or with cents. */
const LIKE_MONEY = /^(\d{1,3}([.,’' ]\d{3})+([.,]\d{2})?|\d{2,6}[.,]\d{2})$/;

/** Marks that part it from what stands beside it. */
const AROUND = /^[|/:–—-] ?| ?[|/]$/g;

/** The price of what is known to be a product, where its only number that looks like money has no sign; else none. */
export function barePrices(root: Element, { readTag, hint }: Context): readonly PriceLeaf[] {
  const walker = root.ownerDocument.createTreeWalker(root, 4);
  const found: PriceLeaf[] = [];
  for (let seen = 0; seen < MOST_TEXTS && walker.nextNode(); seen++) {
    const text = plainText(walker.currentNode.nodeValue).replace(AROUND, "");
    const element = LIKE_MONEY.test(text) ? parentOf(walker.currentNode) : null;
    // As money without a sign is written: "49,-".
    const amounts = element ? settleMoney(readTag(`${text},-`).amounts, hint) : [];
    if (element && amounts.length > 0) found.push({ element, text, tag: text, words: "", amounts });
  }
  return found.length === 1 ? found : [];
}
