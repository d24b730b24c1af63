import type { Cluster } from "../clusters.ts";
import type { Context } from "../context.ts";
import { follows, nameOf, nearest, parentOf } from "../dom/ancestors.ts";
import { buys, quantitiesIn } from "../dom/buttons.ts";
import { hasWord } from "../dom/letters.ts";
import { isCalledProduct, leadsAway, leadsToProduct } from "../dom/link.ts";
import { pathOf } from "../dom/page-heading.ts";
import { nameKey, plainKey } from "../dom/plain-text.ts";
import { hasBasket } from "../doubt/is-sold-by-press.ts";
import { namesThings } from "../doubt/names-a-group.ts";
import { offersNoWare, sellsNothing } from "../doubt/offers-no-ware.ts";
import { foundProduct } from "../found-product.ts";
import { kindOf, LEAST_MEMBERS, unlikeOthers } from "../members.ts";
import { PRICE_NAME } from "../money/price-name.ts";
import { LARGE_MAIN } from "../picture/picture-sizes.ts";
import { firstRank, isAboutAny, labelledNames } from "./main-headings.ts";
import { isCalledDetails } from "./told-by-markup.ts";

/** Of several blocks that may be sold under one heading, the one it names shows a picture that covers so many times as much. */
const LARGER = 1.5;

/** The address of a shop's first page, whoever sent the visitor; scripts keep other pages behind "#/". */
const FIRST_PAGE = /^https?:\/\/[^/]+\/(index\.\w+)?(\?(utm|fbclid|gclid|ref)[^#]*)?(#(?!!?\/\w)|$)/;

/** An address that tells one of several in a folder by its number. */
const IN_FOLDER = /\/[^/]+\/\d+\/?([?#]|$)/;

/** Buttons looked at between two yields. */
const STRIDE = 50;

/** How much of the page a picture covers, in CSS pixels. */
export const areaOf = (picture: Element): number => {
  const { width, height } = picture.getBoundingClientRect();
  return width * height;
};

const isLarge = (picture: Element): boolean => picture.getBoundingClientRect().width >= LARGE_MAIN;

/** What markup calls the block of a page's own product, and that of a tile. */
const INFO =
  /(^|[\s_-])(product|produkt|produit|producto|produto|prodotto|urun)[-_]*(info|content)(?![a-z])/i;

/** The headings that can be seen before the first price and say something else than those in `known`. */
const ownNames = (
  { root, prices }: Cluster,
  known: readonly Element[],
  { furniture }: Context,
): readonly Element[] =>
  [...root.querySelectorAll("h1,h2,h3,h4,h5,h6")].filter(
    (heading) =>
      !furniture.isHidden(heading) &&
      !heading.closest("th") &&
      hasWord(heading.textContent) &&
      !isAboutAny(heading) &&
      !known.some((other) => nameKey(other.textContent) === nameKey(heading.textContent)) &&
      prices
        .slice(0, 1)
        .some(
          ({ element }) =>
            !heading.contains(element) && !element.contains(heading) && follows(heading, element),
        ),
  );

/** Whether the page's title begins with what a heading says. */
function isInTitle(heading: Element): boolean {
  const key = nameKey(heading.textContent);
  return key.length > 3 && nameKey(heading.ownerDocument.title).startsWith(key);
}

/** Letters of a name from which on an address that ends in it is no accident. */
const LONG_NAME = 8;

/** What the address of a page ends in, for comparing. */
function addressKey(doc: Document): string {
  const [end = ""] = pathOf(doc.URL).split("/").filter(Boolean).slice(-1);
  return plainKey(end.replace(/\.\w+$/, ""));
}

/** Whether a name begins with what the address of a page ends in. */
function isAddress(name: string, doc: Document): boolean {
  const address = addressKey(doc);
  return address.length >= LONG_NAME && plainKey(name).startsWith(address);
}

/** Tells whether a heading in a block says what the page's title begins with and its address ends in, and markup calls its price one. */
function addressedOn(doc: Document): (block: Cluster) => boolean {
  const address = addressKey(doc);
  const title = plainKey(doc.title);
  const isPrice = (element: Element | null) => element !== null && PRICE_NAME.test(nameOf(element));
  return ({ root, prices }) =>
    address.length >= LONG_NAME &&
    prices.some(({ element }) => isPrice(element) || isPrice(parentOf(element))) &&
    [...root.querySelectorAll("h1,h2,h3,h4")]
      .map((heading) => plainKey(heading.textContent))
      .some((said) => said.endsWith(address) && title.startsWith(said));
}

/** What is sold on a page where nothing leads. */
interface Sold {
  readonly blocks: readonly Cluster[];
  /** True where nothing else is bought on a page that is a product's by its address, or shows nothing else with a price below the shop's first page. */
  readonly alone: boolean;
}

/** The clusters with a button that buys or a quantity, or called a product's page, or what the address is; all where such a button stands beside them and none has one, or the page's address is a product's. */
function* sold(
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

/** Whether a block is a member of a list, others of which are sold as well. */
const isOneOfMany = ({ root }: Cluster, blocks: readonly Cluster[]): boolean =>
  blocks.filter((other) => parentOf(other.root) === parentOf(root) && kindOf(other.root) === kindOf(root))
    .length >= LEAST_MEMBERS;

/** At the address of a product the only block that is unlike the others, where they are alike; else all. */
function notAlike(blocks: readonly Cluster[], doc: Document): readonly Cluster[] {
  const lone = leadsToProduct(doc.URL) || isCalledProduct(doc.URL) ? unlikeOthers(blocks) : [];
  return lone.length === 1 ? lone : blocks;
}

/** The block that a page is about, as far as its place tells. */
export interface OwnBlock {
  readonly cluster: Cluster;
  /** Its own headings, where those name it and none above it does. */
  readonly names: readonly Element[];
}

/** The only block with a price on a page of a shop, below its first page, where nothing says to buy: it has a name and a large picture; or null. */
function onlyBlock(loose: readonly Cluster[], single: readonly Cluster[], context: Context): OwnBlock | null {
  const [cluster] = loose;
  const { doc, furniture } = context;
  if (!cluster || single.length > 1 || furniture.isApart(cluster.root)) return null;
  // A price on a link elsewhere is not this page's.
  if (cluster.prices.every((price) => namesThings(price) || leadsAway(price.element))) return null;
  if (FIRST_PAGE.test(doc.URL) || !cluster.pictures.some(isLarge)) return null;
  const names = ownNames(cluster, [], context);
  const isAddressed = [...names, ...firstRank(context)].some(({ textContent }) =>
    isAddress(textContent, doc),
  );
  const isLabelled = () => labelledNames(context).some((name) => cluster.root.contains(name));
  if ((names.length === 0 && !isAddressed && !isLabelled()) || sellsNothing(context)) return null;
  if (hasBasket(context)) return { cluster, names };
  // Where nothing can be pressed to buy, the address must say that it is one of several, and nothing that it is no ware.
  const isOne = isAddressed || IN_FOLDER.test(doc.URL);
  const product = isOne ? foundProduct({ ...cluster, role: "main" }, context) : null;
  return product && !offersNoWare(product) ? { cluster, names } : null;
}

/**
 * The block with the picture and the price of what a heading above it names, or null: it is sold there, and there is no
 * second like it. Where it has a name of its own under such a heading, it is one of a list, unless nothing else is
 * bought on a page that is a product's by its address, or the page's title has that name. `loose`: clusters whose largest picture leads nowhere
 */
export function* ownBlock(
  loose: readonly Cluster[],
  single: readonly Cluster[],
  buttons: readonly Element[],
  context: Context,
): Generator<undefined, OwnBlock | null, undefined> {
  const { blocks, alone } = yield* sold(loose, single, buttons, context);
  const only = blocks.length === 0 ? onlyBlock(loose, single, context) : null;
  if (only) return only;
  const free = notAlike(
    blocks.filter(({ root }) => !context.furniture.isApart(root)),
    context.doc,
  );
  if (free.length === 0) return null;
  yield;
  const ranked = firstRank(context);
  const isHeaded = (root: Element) =>
    ranked.some((heading) => !root.contains(heading) && follows(heading, root));
  // Under a heading that the page's title knows, others name parts.
  const isNamed = ranked.some(isInTitle);
  const namesIn = (cluster: Cluster) =>
    ownNames(cluster, ranked, context).filter((name) => !isNamed || isInTitle(name));
  const [first, second] = free
    .map((cluster) => ({
      cluster,
      names: isHeaded(cluster.root) ? namesIn(cluster) : [],
      area: Math.max(0, ...cluster.pictures.map(areaOf)),
    }))
    .filter(({ names }) => alone || names.length === 0 || names.some(isInTitle))
    .sort((a, b) => b.area - a.area);
  if (!first) return null;
  // Where others of a list have names, one without is no more than they are.
  const isTold = !second && (alone || first.names.length > 0);
  if (!isTold && isOneOfMany(first.cluster, free)) return null;
  return !second || first.area > LARGER * second.area ? first : null;
}
