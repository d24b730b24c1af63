import type { Context } from "./context.ts";
import { nameOf, nearest, parentOf } from "./dom/ancestors.ts";
import { linkIn, linkUrl } from "./dom/link.ts";
import { besideStruck } from "./money/beside-struck.ts";
import { isStruck } from "./money/is-struck.ts";
import { lowestPrice } from "./money/lowest-price.ts";
import { isNamedPart } from "./money/what-for.ts";
import type { PriceLeaf } from "./money/written-price.ts";
import { isCopy } from "./picture/is-copy.ts";
import { isCovered } from "./picture/is-covered.ts";
import { framesAmong } from "./picture/is-frame.ts";
import { isStrip } from "./picture/picture-area.ts";
import { pictureUrl, pictureUrls, type StandsIn } from "./picture/picture-urls.ts";
import { standInsOf } from "./picture/stand-ins.ts";
import type { FoundProduct, ProductRole } from "./product.ts";
import { productKey } from "./product-key.ts";
import type { Described } from "./structured.ts";
import { titleIn } from "./tile/title.ts";

/** Picture addresses kept for one product. */
const MOST_IMAGES = 12;

const PRODUCT_NAME = /product|produkt|produit|prodott|(^|[\s_-])item([\s_-]|$)/i;

/** What is known of a product before it is put together. */
export interface Draft {
  readonly role: ProductRole;
  readonly root: Element;
  /** What it is made of, where that is more than the root. */
  readonly parts?: readonly Element[];
  /** Pictures inside, in document order. */
  readonly pictures: readonly Element[];
  readonly prices: readonly PriceLeaf[];
  readonly title?: string;
  readonly link?: string;
  readonly described?: Described | undefined;
}

/** A picture narrower than this part of the widest is a stamp on it, or one of its small views. Layout choice. */
const STAMP = 0.4;

/** So is one without a name that covers less than this part of one with a name. Layout choice. */
const NAMELESS = 0.5;

/** Whether what clips a picture's slides leaves nothing of it to be seen. */
function isClipped(picture: Element, root: Element): boolean {
  const { left, right } = picture.getBoundingClientRect();
  const clips = (up: Element): boolean => {
    if (up.ownerDocument.defaultView?.getComputedStyle(up).overflowX === "visible") return false;
    const box = up.getBoundingClientRect();
    return box.width > 0 && (right <= box.left + 1 || left >= box.right - 1);
  };
  return nearest(parentOf(picture), (up) => up === root || clips(up)) !== root;
}

/** Puts the picture that shows first: displayed, not see-through, no stand-in, no stamp or frame, nothing behind another, no slide that waits; a back picture comes after the front. */
function byFront(
  { role, root, pictures }: Draft,
  context: Context,
  standsIn: StandsIn,
): { picture: Element; urls: readonly string[] }[] {
  const { doc, furniture } = context;
  const view = doc.defaultView;
  const alone = pictures.length === 1;
  const kept = pictures.slice(0, MOST_IMAGES);
  const boxes = alone ? [] : kept.map((picture) => picture.getBoundingClientRect());
  const widest = Math.max(...boxes.map(({ width }) => width));
  const isWide = (at: number) => (boxes[at]?.width ?? 0) >= STAMP * widest;
  const areas = boxes.map(({ width, height }) => width * height);
  const called = Math.max(0, ...areas.filter((_, at) => kept[at]?.getAttribute("alt")));
  const isNameless = (at: number) => !kept[at]?.getAttribute("alt") && (areas[at] ?? 0) < called * NAMELESS;
  const frames = new Set(kept.filter(framesAmong(kept, context)));
  const ranked = kept.map((picture, i) => {
    const urls = pictureUrls(picture, standsIn);
    const hidden = !alone && furniture.isHidden(picture);
    const clear = !alone && view?.getComputedStyle(picture).opacity === "0";
    const stamp = !alone && (!isWide(i) || isStrip(picture) || isNameless(i) || frames.has(picture));
    const aside = !alone && (isCopy(picture, root) || (role === "main" && isClipped(picture, root)));
    const isBehind = (other: Element, at: number) =>
      other !== picture &&
      !frames.has(other) &&
      (picture.contains(other) ? isWide(at) : isCovered([picture, boxes[i]], [other, boxes[at]]));
    const faults = [aside, clear || stamp || kept.some(isBehind), hidden, urls.length === 0];
    return { picture, urls, rank: faults.reduce((sum, fault, i) => sum + Number(fault) * 2 ** i, 0) };
  });
  return ranked.sort((a, b) => a.rank - b.rank);
}

/** Of several prices those that are seen, have a sign, are not crossed out and no instalments, if any: what a law asks for may be struck and lower. */
function standing(all: readonly PriceLeaf[], { furniture }: Context): readonly PriceLeaf[] {
  if (all.length < 2) return all;
  const signed = all.filter(({ amounts }) => amounts.some(({ meant }) => meant !== null));
  const prices = signed.length > 0 ? signed : all;
  const seen = prices.filter(({ element }) => !furniture.isHidden(element));
  const valid = seen.filter(({ element }) => !isStruck(element));
  const whole = valid.filter((price) => !isNamedPart(price));
  return [whole, valid, seen, prices].find(({ length }) => length > 0) ?? prices;
}

/** The same, or what stands beside those where all are crossed out. */
function payable(all: readonly PriceLeaf[], context: Context): readonly PriceLeaf[] {
  const prices = standing(all, context);
  const beside = prices.every(({ element }) => isStruck(element))
    ? prices.flatMap((price) => besideStruck(price, context))
    : [];
  return beside.length > 0 ? beside : prices;
}

/** Puts a product together from its elements and what the page's data says; null without a title or a picture. */
export function foundProduct(draft: Draft, context: Context): FoundProduct | null {
  const { root, role, prices, parts = [root] } = draft;
  const { language, subject } = context;
  const standsIn = standInsOf(context);
  const ranked = byFront(draft, context, standsIn);
  const image = ranked[0]?.picture ?? null;
  const anchor = draft.link ? null : linkIn(parts, image);
  const link = draft.link ? (URL.parse(draft.link, root.baseURI)?.href ?? null) : anchor && linkUrl(anchor);
  const upTo = role === "main" ? prices[0]?.element : undefined;
  const title = draft.title || titleIn(parts, image, anchor, prices, context, upTo);
  const described = draft.described ?? context.describedAs(link, title);
  const told = (described?.images ?? []).flatMap((address) => pictureUrl(address, root) ?? []);
  const front = ranked[0]?.urls ?? [];
  const others = ranked.slice(1).flatMap(({ urls }) => urls.slice(0, 1));
  const images = [...new Set([...front, ...others, ...told])].slice(0, MOST_IMAGES);
  if (title.length < 2 || (!image && images.length === 0)) return null;
  const named = PRODUCT_NAME.test(`${nameOf(root)} ${root.localName} ${parentOf(root)?.className}`);
  return {
    role,
    key: productKey(link, images, title),
    title,
    price:
      lowestPrice(payable(prices, context).flatMap(({ amounts }) => amounts)) ?? described?.price ?? null,
    link,
    images,
    told: { category: described?.category ?? "", color: described?.color ?? "" },
    subject,
    language,
    image,
    root,
    parts,
    evidence: [
      ...(described ? (["structured"] as const) : []),
      ...(named ? (["markup"] as const) : []),
      "layout",
    ],
  };
}
