import { buttonsIn, buys } from "./buttons.ts";
import type { Cluster } from "./clusters.ts";
import type { Context } from "./context.ts";
import { isPutAway } from "./furniture.ts";
import { leadsToGroup, leadsToProduct } from "./link.ts";
import type { FoundProduct } from "./product.ts";
import { BROKEN } from "./survey.ts";

/** Told what was taken for a product and is none, and by the name of which doubt. */
export type Doubted = (root: Element, doubt: string) => void;

/** What could be a product, and what stands around it. */
export interface Suspect extends Pick<Cluster, "pictures" | "prices"> {
  readonly root: Element;
  /** Puts it together when first asked; null where it has no name or no picture. */
  readonly product: () => FoundProduct | null;
  /** True where the page has no other like it. */
  readonly alone: boolean;
  readonly context: Context;
}

type Doubt = (suspect: Suspect) => boolean;

const GIFT =
  /donat(e|ion)|spenden|faire un don|donación|donazione|doação|doneren|pledge|\/(give|join|subscribe)\b/i;
const FROM = /^(from|ab|à partir de|dès|desde|da|a partire da|vanaf|från|fra|od|mulai)(?!\p{L})/iu;
const GROUP_TITLE =
  /^(shop|all|discover|explore|alle|tous|toutes|todo)\b|^\p{L}+( (&|and|und|et|y|e|en|och) \p{L}+)?$/iu;
/** A picture without a link, a button or a product's name around it is at least this wide, in CSS pixels. */
const SMALLEST_BARE = 100;

/*
 * Each doubt is named in the words that a person reads who asks why (`tests/commands/explain-page.ts`); the build of
 * the extension drops the names.
 */
const standsApart: Doubt = ({ root, context }) => context.furniture.isApart(root);
const isPutAwayWithItsList: Doubt = ({ root, context }) => isPutAway(root, context.furniture);
const asksForAGift: Doubt = ({ root }) =>
  GIFT.test(`${root.textContent.slice(0, 600)} ${root.querySelector("a[href]")?.getAttribute("href")}`);
const hasNoNameOrPicture: Doubt = ({ product }) => !product();
const leadsToAGroup: Doubt = ({ product }) => leadsToGroup(product()?.link ?? "");

/** A group of products is shown as one is, with the lowest of its prices. */
const namesAGroup: Doubt = ({ product, prices, root }) =>
  prices.length > 0 &&
  prices.every(({ text, tag }) => FROM.test(text) || FROM.test(tag)) &&
  GROUP_TITLE.test(product()?.title ?? "") &&
  !leadsToProduct(product()?.link ?? "") &&
  !buttonsIn(root).some(buys);

/** A picture and an amount that nothing calls a product must at least look like one among others. */
const isBare: Doubt = ({ product, alone, pictures, root }) => {
  const { link, title, evidence } = product() ?? {};
  if (link || evidence?.length !== 1) return false;
  if (alone) return true;
  const small = pictures.every((picture) => {
    const { width } = picture.getBoundingClientRect();
    return width > BROKEN && width < SMALLEST_BARE;
  });
  const odd = small || /^\p{Ll}/u.test(title ?? "");
  return odd && !buttonsIn(root).some(buys);
};

/** What speaks against a product, the doubts that cost least first. */
export const DOUBTS: readonly Doubt[] = [
  standsApart,
  isPutAwayWithItsList,
  asksForAGift,
  hasNoNameOrPicture,
  leadsToAGroup,
  namesAGroup,
  isBare,
];
