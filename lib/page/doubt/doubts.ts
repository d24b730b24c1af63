import type { Cluster } from "../clusters.ts";
import type { Context } from "../context.ts";
import { buttonsIn, buys } from "../dom/buttons.ts";
import { arePutAway, isPutAway } from "../dom/furniture.ts";
import { letters } from "../dom/letters.ts";
import { leadsToGroup, leadsToProduct, linkUrl } from "../dom/link.ts";
import { isTitledShop } from "../dom/titled-shop.ts";
import { BROKEN, SMALLEST_BARE } from "../picture/picture-sizes.ts";
import type { FoundProduct } from "../product.ts";
import type { Survey } from "../survey.ts";
import { isAlreadyTaken } from "./already-taken.ts";
import { leadsNowhere } from "./leads-nowhere.ts";
import { listAround, namesAGroup } from "./names-a-group.ts";
import { isAmongNoWares, isWare, namesVoucher, offersNoWare } from "./offers-no-ware.ts";

/** Told what was taken for a product and is none, and by the name of which doubt. */
export type Doubted = (root: Element, doubt: string) => void;

/** What could be a product, and what stands around it. */
export interface Suspect extends Pick<Cluster, "parts" | "pictures" | "prices"> {
  readonly root: Element;
  /** Puts it together when first asked; null where it has no name or no picture. */
  readonly product: () => FoundProduct | null;
  /** True where the page has no other like it. */
  readonly alone: boolean;
  /** True where others on the page lead somewhere. */
  readonly othersLead: boolean;
  /** True where the page of a product announces it beside that. */
  readonly announced: boolean;
  /** What the page shows. */
  readonly survey: Survey;
  readonly context: Context;
}

type Doubt = (suspect: Suspect) => boolean;

const GIFT =
  /donat(e|ion)|spenden|faire un don|donación|donazione|doação|doneren|donera|darowizn|adomány|lahjoit|bağış|donați|δωρεά|пожертв|תרומה|תרומת|לתרום|تبرع|寄付|기부|donasi|infaq|sedekah|pledge|\/(give|join|subscribe)\b/i;
/** Characters of a tile in which it may ask for a gift. */
const MOST_TEXT = 600;

/*
 * Each doubt is named in the words that a person reads who asks why (`tests/browser/explain-page.ts`); the build of
 * the extension drops the names.
 */
const standsApart: Doubt = ({ root, pictures, prices, context: { furniture } }) =>
  furniture.isApart(root) ||
  pictures.every((picture) => furniture.isApart(picture)) ||
  (prices.length > 0 && prices.every(({ element }) => furniture.isApart(element)));
const isPutAwayWithItsList: Doubt = ({ root, pictures, prices, context: { furniture } }) =>
  isPutAway(root, furniture) ||
  (prices.length > 0 && arePutAway([...pictures, ...prices.map(({ element }) => element)], root, furniture));
const isTaken: Doubt = ({ root, survey, context }) => isAlreadyTaken(root, survey, context);
const asksForAGift: Doubt = ({ parts }) =>
  parts.some((part) => {
    const link = part.querySelector("a[href]")?.getAttribute("href");
    return GIFT.test(`${part.textContent.slice(0, MOST_TEXT)} ${link}`);
  });
const hasNoNameOrPicture: Doubt = ({ product }) => !product();
const isAmongServices: Doubt = ({ product, context }) => {
  const one = product();
  return one !== null && isAmongNoWares(one, context);
};
/** Whether a tile offers a time, a place, work or a gift; what lies with it in a list is no ware, either. */
export const isNoWare: Doubt = ({ product }) => {
  const one = product();
  return one !== null && offersNoWare(one);
};
const isAVoucher: Doubt = ({ product }) => namesVoucher(product()?.title ?? "");
/** A ware with its price may lie in the folder of its group. */
const leadsToAGroup: Doubt = ({ product }) => {
  const one = product();
  return one !== null && leadsToGroup(one.link ?? "") && (one.price === null || !isWare(one));
};

/** Pictures that lead to so many places show several things. */
const MANY_PLACES = 3;

const showsSeveral: Doubt = ({ product, pictures, root }) => {
  const { evidence, link } = product() ?? {};
  if (pictures.length < MANY_PLACES || evidence?.length !== 1 || leadsToProduct(link ?? "")) return false;
  const places = pictures.flatMap((picture) => {
    const anchor = picture.closest("a[href]");
    return (anchor && linkUrl(anchor)?.split(/[?#]/)[0]) ?? [];
  });
  return new Set(places).size >= MANY_PLACES && !buttonsIn(root).some(buys);
};

/** What a page has around all that it shows. */
const AROUND_ALL = "nav,footer,[role=contentinfo]";

/** What meets no sooner than in the whole page belongs to nothing on it. */
const holdsThePage: Doubt = ({ pictures, root }) =>
  pictures.length >= MANY_PLACES && root.querySelector(AROUND_ALL) !== null;

const isAGroup: Doubt = ({ product, root, prices, survey }) => {
  const one = product();
  return one !== null && namesAGroup(one, { root, prices }, survey);
};

/** From so many links with words on a picture without one belongs to none of them. */
const MANY_LINKS = 3;

const linksIn = (root: Element): number =>
  new Set(
    [...root.querySelectorAll("a[href]")].flatMap((anchor) =>
      letters(anchor.textContent) > 2 ? (linkUrl(anchor) ?? []) : [],
    ),
  ).size;

/** So large a part of a list has a price: that of wares, not of groups with a campaign; more where it stands in their names. */
const LEAST_PRICED = 0.25;
const LEAST_NAMED_PRICED = 0.5;

const isOddOneOut: Doubt = ({ product, prices, root, survey }) => {
  const { evidence, link, title = "" } = product() ?? {};
  if (
    !survey.pricesIn.has(root) ||
    prices.length === 0 ||
    evidence?.includes("structured") ||
    leadsToProduct(link ?? "")
  )
    return false;
  if (buttonsIn(root).some(buys)) return false;
  const list = listAround(root, survey);
  if (!list) return false;
  const named = prices.some(({ words }) => letters(words) > 2 && title.includes(words));
  return list.priced <= list.pictured * (named ? LEAST_NAMED_PRICED : LEAST_PRICED);
};

/** What tabs and folded parts say of shipping stands under a picture that it does not belong to. */
const hidesItsPrice: Doubt = ({ product, prices, root, context: { furniture } }) =>
  !product()?.link &&
  prices.length > 0 &&
  prices.every(({ element }) => furniture.isHidden(element)) &&
  !furniture.isHidden(root) &&
  !buttonsIn(root).some(buys);

const isOutOfReach: Doubt = ({ product, othersLead, announced, context }) => {
  const one = announced ? null : product();
  return one?.evidence.length === 1 && leadsNowhere(one, othersLead, context);
};

/** A picture and an amount that nothing calls a product must at least look like one among others. */
const isBare: Doubt = ({ product, alone, pictures, root, survey, context }) => {
  const { link, title, evidence, image } = product() ?? {};
  if (evidence?.length !== 1) return false;
  if (link) return !image?.closest("a[href]") && linksIn(root) >= MANY_LINKS && !buttonsIn(root).some(buys);
  if (alone) return true;
  const small = pictures.every((picture) => {
    const { width } = picture.getBoundingClientRect();
    return width > BROKEN && width < SMALLEST_BARE && !picture.closest("a[href]");
  });
  // In a list in which all have a price, it is a habit of the shop's.
  const list = listAround(root, survey);
  const isHabit = list?.priced === (list?.pictured ?? 0);
  const isSmall = small && !(list && isHabit && isTitledShop(context.doc));
  const odd = isSmall || (/^\p{Ll}/u.test(title ?? "") && !isHabit);
  return odd && !buttonsIn(root).some(buys);
};

/** What speaks against a product, the doubts that cost least first. */
export const DOUBTS: readonly Doubt[] = [
  standsApart,
  isPutAwayWithItsList,
  isTaken,
  asksForAGift,
  hasNoNameOrPicture,
  isAVoucher,
  leadsToAGroup,
  isAmongServices,
  isNoWare,
  showsSeveral,
  holdsThePage,
  isAGroup,
  isOddOneOut,
  hidesItsPrice,
  isBare,
  isOutOfReach,
];
