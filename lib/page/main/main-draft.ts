import type { Cluster, Clustered } from "../clusters.ts";
import type { Context } from "../context.ts";
import { countUp, follows, nameOf, nearest, parentOf, WHOLE } from "../dom/ancestors.ts";
import { buys, quantitiesIn } from "../dom/buttons.ts";
import { isCrumb } from "../dom/is-crumb.ts";
import { hasWord } from "../dom/letters.ts";
import { isCalledProduct, leadsAway, leadsToProduct } from "../dom/link.ts";
import { headingText, nameKey } from "../dom/plain-text.ts";
import { namesVoucher } from "../doubt/offers-no-ware.ts";
import { readTag } from "../money/price.ts";
import type { PriceLeaf } from "../money/price-leaf.ts";
import { LARGE_MAIN } from "../picture/picture-sizes.ts";
import { pictureUrl, pictureUrls } from "../picture/picture-urls.ts";
import { standInsOf } from "../picture/stand-ins.ts";
import type { Described } from "../structured.ts";
import { namesPart } from "./main-headings.ts";
import { isAddressed, pricesBy } from "./main-price.ts";
import type { OwnBlock } from "./own-block.ts";
import { isToldByMarkup } from "./told-by-markup.ts";
import { withPicture } from "./with-picture.ts";

/** More buttons that buy than this belong to a list. */
const MOST_BUYS = 4;
/** A product page's own picture is at least this wide or high, in CSS pixels. */
const SMALLEST_MAIN = 140;
/** Pictures measured or buttons looked at between two yields. */
const STRIDE = 50;

/** What is known of the product that a page is about, before it is put together. */
export interface MainDraft extends Pick<Cluster, "root" | "pictures" | "prices"> {
  /** What names it. */
  readonly heading: Element;
  readonly title?: string;
  readonly link: string;
  readonly described: Described | undefined;
}

/** What a page shows besides the text that may name its product. */
export interface MainPage extends Clustered {
  /** Buttons, links and forms that may buy. */
  readonly buttons: readonly Element[];
  /** The block that the page is about, where its place tells. */
  readonly own: OwnBlock | null;
  /** Tiles, which are no part of the product that the page is about. */
  readonly beside: readonly Cluster[];
}

const sameName = (a: string, b: string): boolean => {
  const [x, y] = [nameKey(a), nameKey(b)];
  return x.length > 2 && y.length > 2 && (x.includes(y) || y.includes(x));
};

/** A name without the sign of money behind it. */
const withoutSign = (text: string): string => text.replace(/([^\p{L}\p{N})]|\b[A-Z]{3}\b)+$/u, "");

/** Whether a picture is called just as a name. */
const isCalled = (picture: Element, name: string): boolean =>
  ["alt", "title"].some((said) => nameKey(picture.getAttribute(said) ?? "") === nameKey(name));

/** Without its query, which tells renditions of a picture apart. */
const fileOf = (url: string): string | undefined => url.split("?")[0];

/** Of pictures those that lead nowhere else, if any: a banner among the words about a ware has a link. */
function ownOf(pictures: readonly Element[]): readonly Element[] {
  const own = pictures.filter((picture) => !leadsAway(picture));
  return own.length > 0 ? own : pictures;
}

/** Whether the page shows a picture that its data gives a product, which then may go without a price. */
function shows(described: Described | undefined, pictures: readonly Element[], context: Context): boolean {
  const [place] = pictures;
  const told = (described?.images ?? []).map((written) => place && pictureUrl(written, place));
  const files = new Set(told.flatMap((url) => (url ? fileOf(url) : [])));
  return (
    files.size > 0 &&
    pictures.some((picture) =>
      pictureUrls(picture, standInsOf(context)).some((url) => files.has(fileOf(url))),
    )
  );
}

/** Prices of the same tag as the first: not far from it, and before the next heading. */
function tagOf(prices: readonly PriceLeaf[]): readonly PriceLeaf[] {
  const first = prices[0]?.element;
  const inner = first && parentOf(first);
  const block = inner && parentOf(inner);
  if (!first || !block) return prices;
  const next = [...block.querySelectorAll("h2,h3,h4,h5,h6,summary")].find((part) => follows(first, part));
  return prices.filter(({ element }) => block.contains(element) && !(next && follows(next, element)));
}

/** The address by which a page wants to be known. */
export const pageLink = (doc: Document): string =>
  doc.querySelector("link[rel=canonical]")?.getAttribute("href") || doc.URL;

/** What markup calls the maker of a product, and its name. */
const MAKER = /brand|vendor|maker|designer|marca|marke|marque/i;
const NAME = /(?<![a-z])(name|title)(?![a-z])/i;

/** What a heading says, or what is called a name right after it where it is called a maker, or the heading right after it that begins with that and says more. */
function nameBy(heading: Element): string {
  const written = headingText(heading);
  const behind = heading.nextElementSibling ?? parentOf(heading)?.nextElementSibling;
  const name = MAKER.test(nameOf(heading)) && behind && NAME.test(nameOf(behind)) ? headingText(behind) : "";
  if (hasWord(name)) return name;
  const next = heading.nextElementSibling;
  const more = next && /^H[2-4]$/.test(next.tagName) ? headingText(next) : "";
  const [first = ""] = more.startsWith(`${written} `) ? more.slice(written.length + 1).split(" ") : [];
  return first && !namesPart(first) ? more : written;
}

/** The product of a page where `heading` names it, or null where it names none. */
export function* mainDraft(
  heading: Element,
  { survey, clusters, context, buttons, own, beside }: MainPage,
): Generator<undefined, MainDraft | null, undefined> {
  const { doc } = context;
  const written = nameBy(heading);
  if (namesVoucher(written)) return null;
  const above = new Set<Element>();
  nearest(heading, (up) => !above.add(up));
  const tiles = new Set<Element>();
  const tilesIn = new Map<Element, number>();
  for (const part of beside.flatMap(({ parts }) => parts)) {
    if (above.has(part)) continue;
    tiles.add(part);
    countUp(tilesIn, part);
  }
  const inTile = (element: Element) => nearest(element, (up) => tiles.has(up)) !== null;
  // A button is the heading's where the two meet before a tile does.
  const isOwn = (control: Element) => {
    const meet = nearest(control, (up) => above.has(up) || tilesIn.has(up));
    const { isApart, isHidden } = context.furniture;
    return meet !== null && above.has(meet) && !inTile(control) && !(isApart(control) && isHidden(control));
  };
  const { amounts, words } = readTag(written);
  // What stands behind an amount is what it is for: "89.99 / piece".
  const [amount] = amounts;
  const isName = amount
    ? hasWord(words) && hasWord(written.split(amount.written)[0] ?? "")
    : /\p{L}{2}/u.test(written);
  const tells = isName && !isCrumb(heading) && !namesPart(written);
  const unlisted = context.described.filter((one) => !one.listed);
  const described = unlisted.find((one) => (tells ? sameName(one.name, written) : unlisted.length === 1));
  const bought: Element[] = [];
  for (const [i, button] of buttons.entries()) {
    if (i % STRIDE === 0) yield;
    if (isOwn(button) && buys(button)) bought.push(button);
  }
  if (bought.length > MOST_BUYS && !described) return null;
  const prices = pricesBy(above, clusters, bought, context, inTile);
  const counted = quantitiesIn(doc).filter(isOwn);
  // What stands behind all that one pays and presses is about a part of the page.
  const sale = [...bought, ...counted, ...prices.map(({ element }) => element)];
  if (sale.length > 0 && sale.every((one) => follows(one, heading))) return null;
  // A list may be called "product", too: then more than one can be bought.
  const addressed =
    isAddressed(doc) ||
    (isCalledProduct(doc.URL) && bought.length === 1 && buttons.filter(buys).length === 1);
  const shop =
    (bought.length > 0 && (prices.length > 0 || addressed || counted.length > 0)) ||
    (prices.length > 0 && (described || leadsToProduct(doc.URL) || counted.length > 0));
  const told =
    !shop && prices.length > 0 && (own !== null || isToldByMarkup(heading) || isCalledProduct(doc.URL));
  // A maker's page of one ware may name no price.
  const named = leadsToProduct(doc.URL) || (isCalledProduct(doc.URL) && isToldByMarkup(heading));
  const unpriced = !shop && prices.length === 0 && tiles.size === 0 && tells && named;
  if (!shop && !described && !told && !unpriced) return null;
  const pictures: Element[] = [];
  const visible: Element[] = [];
  for (const [i, picture] of survey.pictures.entries()) {
    if (i % STRIDE === 0) yield;
    const { width, height } = picture.getBoundingClientRect();
    if ((width > 0 && Math.max(width, height) < SMALLEST_MAIN) || inTile(picture)) continue;
    pictures.push(picture);
    if (width > 0 || !context.furniture.isHidden(picture)) visible.push(picture);
  }
  const picturesIn = new Map<Element, number>();
  const largeIn = new Map<Element, number>();
  const shown = ownOf(visible.length > 0 ? visible : pictures);
  const isBehind = (picture: Element) => sale.length > 0 && sale.every((one) => follows(one, picture));
  const leads = shown.some((picture) => !isBehind(picture));
  for (const picture of shown) {
    countUp(picturesIn, picture);
    // What stands behind all that one pays and presses shows details, where another picture leads.
    const isLarge = picture.getBoundingClientRect().width >= LARGE_MAIN || isCalled(picture, written);
    const large = isLarge && !(leads && isBehind(picture));
    if (large) countUp(largeIn, picture);
  }
  // Beside priced tiles such data is about the shop.
  if ((told || unpriced) && (visible.length === 0 || visible.every(leadsAway))) return null;
  if (unpriced && largeIn.size === 0) return null;
  if (
    !shop &&
    !told &&
    !unpriced &&
    !described?.price &&
    (tiles.size > 0 || !shows(described, pictures, context))
  )
    return null;
  const meet = (counts: ReadonlyMap<Element, number>) =>
    nearest(heading, (up) => counts.has(up) && prices.every((price) => up.contains(price.element)));
  const around = meet(largeIn);
  const found = around && !WHOLE.test(around.tagName) ? around : meet(picturesIn);
  if (!found || found.tagName === "HTML") return null;
  const isNamed = shown.some((one) => found.contains(one) && isCalled(one, written));
  const root = isNamed ? found : withPicture(found, shown, tilesIn);
  // A price behind the name is no part of it; a size that looks like one is.
  const before = amount ? withoutSign(written.slice(0, written.indexOf(amount.written))) : "";
  const name = !amount ? written : written.startsWith(words) ? words : before || written;
  const title = tells ? name : described?.name;
  const inside = [...new Set([...ownOf(pictures), ...pictures])].filter((picture) => root.contains(picture));
  // Where a price is told once more far below, those by the name are its own.
  const near = WHOLE.test(root.tagName) ? nearest(heading, (up) => picturesIn.has(up)) : root;
  return {
    root,
    heading,
    pictures: inside.filter((picture) => near?.contains(picture)),
    prices: tagOf(prices),
    ...(title && { title }),
    link: pageLink(doc),
    described,
  };
}
