import type { Cluster } from "../clusters.ts";
import type { Context } from "../context.ts";
import { nameOf, nearest } from "../dom/ancestors.ts";
import { buys, quantitiesIn } from "../dom/buttons.ts";
import { isCalledProduct, leadsToProduct } from "../dom/link.ts";
import { isLarge } from "../picture/picture-area.ts";
import { addressedOn, FIRST_PAGE } from "./said-by-address.ts";
import { isCalledDetails } from "./told-by-markup.ts";

/** Buttons looked at between two yields. */
const STRIDE = 50;

/** What markup calls the block of a page's own product, and that of a tile. */
const INFO =
  /(^|[\s_-])(product|produkt|produit|producto|produto|prodotto|urun)[-_]*(info|content)(?![a-z])/i;

/** What is sold on a page where nothing leads. */
export interface Sold {
  readonly blocks: readonly Cluster[];
  /** True where nothing else is bought on a page that is a product's by its address, or shows nothing else with a price below the shop's first page. */
  readonly alone: boolean;
}

/** The clusters with a button that buys or a quantity, or called a product's page, or what the address is; all where such a button stands beside them and none has one, or the page's address is a product's. */
export function* soldBlocks(
  loose: readonly Cluster[],
  single: readonly Cluster[],
  buttons: readonly Element[],
  { doc, furniture }: Context,
): Generator<undefined, Sold, undefined> {
  const roots = new Set(single.map(({ root }) => root));
  // What holds one block only, and that; null where it holds several.
  const held = new Map<Element, Element | null>();
  for (const { root } of single)
    nearest(root, (up) => {
      held.set(up, held.has(up) ? null : root);
      return false;
    });
  // A button stands in a block, or beside it where no second one is near.
  const blockOf = (button: Element): Element | null => {
    const around = nearest(button, (up) => held.has(up));
    return around && (roots.has(around) ? around : (held.get(around) ?? null));
  };
  const within = new Set<Element | null>();
  for (const [i, button] of buttons.entries()) {
    if (i % STRIDE === 0) yield;
    if (buys(button) && !furniture.isApart(button)) within.add(blockOf(button));
  }
  yield;
  for (const [i, field] of quantitiesIn(doc).entries()) {
    if (i % STRIDE === 0) yield;
    const block = nearest(field, (up) => roots.has(up));
    if (block && !furniture.isApart(field)) within.add(block);
  }
  const isFirst = FIRST_PAGE.test(doc.URL);
  const isAddressed = addressedOn(doc);
  const isCalled = (block: Cluster) =>
    isCalledDetails(block.root) ||
    isAddressed(block) ||
    (!isFirst && INFO.test(nameOf(block.root)) && block.pictures.some(isLarge));
  const own = loose.filter((block) => within.has(block.root) || isCalled(block));
  const byAddress = leadsToProduct(doc.URL) || isCalledProduct(doc.URL);
  const all = own.length === 0 && (byAddress || (within.size === 1 && within.has(null)));
  const only = byAddress || (single.length === 1 && !isFirst);
  const alone = only && own.length === 1 && within.size === 1 && !within.has(null);
  return { blocks: all ? loose : own, alone };
}
