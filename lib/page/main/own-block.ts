import type { Cluster } from "../clusters.ts";
import type { Context } from "../context.ts";
import { follows, parentOf } from "../dom/ancestors.ts";
import { isLastCrumb } from "../dom/is-crumb.ts";
import { hasWord } from "../dom/letters.ts";
import { isCalledProduct, leadsAway, leadsToProduct } from "../dom/link.ts";
import { nameKey } from "../dom/plain-text.ts";
import { hasBasket } from "../doubt/is-sold-by-press.ts";
import { namesThings } from "../doubt/names-a-group.ts";
import { offersNoWare, sellsNothing } from "../doubt/offers-no-ware.ts";
import { foundProduct } from "../found-product.ts";
import { kindOf, LEAST_MEMBERS, unlikeOthers } from "../members.ts";
import { LABELLED_PRICE } from "../money/price-label.ts";
import { SENTENCE_END } from "../money/price-leaf.ts";
import type { PriceLeaf } from "../money/written-price.ts";
import { areaOf, isLarge } from "../picture/picture-area.ts";
import { firstRank, labelledNames } from "./main-headings.ts";
import { FIRST_PAGE, IN_FOLDER, isAddress } from "./said-by-address.ts";
import { isAboutAny } from "./says-any.ts";
import { soldBlocks } from "./sold-blocks.ts";

/** Of several blocks that may be sold under one heading, the one it names shows a picture that covers so many times as much. */
const LARGER = 1.5;

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

/** Whether a price is told with its label. */
const isLabelledPrice = ({ tag, text }: PriceLeaf): boolean =>
  LABELLED_PRICE.test(tag.toLowerCase()) || LABELLED_PRICE.test(text.toLowerCase());

/** The only block with a price on a page of a shop, below its first page, where nothing says to buy: it has a name and a large picture; or null. */
function onlyBlock(loose: readonly Cluster[], single: readonly Cluster[], context: Context): OwnBlock | null {
  const [cluster] = loose;
  const { doc, furniture } = context;
  if (!cluster || single.length > 1 || furniture.isApart(cluster.root)) return null;
  // A price on a link elsewhere is not this page's, nor is one that is told in sentences.
  const isOther = (price: PriceLeaf) =>
    namesThings(price) || SENTENCE_END.test(price.tag) || leadsAway(price.element);
  if (cluster.prices.every(isOther)) return null;
  if (FIRST_PAGE.test(doc.URL) || !cluster.pictures.some(isLarge)) return null;
  const names = ownNames(cluster, [], context);
  const isAddressed = [...names, ...firstRank(context)].some(({ textContent }) =>
    isAddress(textContent, doc),
  );
  const isLabelled = () => labelledNames(context).some((name) => cluster.root.contains(name));
  // Its heading is what its title begins with or its trail ends in, and its price has a label.
  const isTold =
    firstRank(context).some((heading) => isInTitle(heading) || isLastCrumb(heading)) &&
    cluster.prices.some(isLabelledPrice);
  const isNamed = names.length > 0 || isAddressed || isTold || isLabelled();
  if (!isNamed || sellsNothing(context)) return null;
  if (hasBasket(context)) return { cluster, names };
  // Where nothing can be pressed to buy, these must say that it is one of several, and nothing that it is no ware.
  const isOne = isAddressed || isTold || IN_FOLDER.test(doc.URL);
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
  if (loose.length === 0) return null;
  const { blocks, alone } = yield* soldBlocks(loose, single, buttons, context);
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
