import type { Cluster } from "../clusters.ts";
import type { Context } from "../context.ts";
import { countUp, follows, nameOf, nearest, parentOf, WHOLE } from "../dom/ancestors.ts";
import { isCrumb } from "../dom/is-crumb.ts";
import { leadsAway } from "../dom/link.ts";
import { nameKey } from "../dom/plain-text.ts";
import { namesVoucher } from "../doubt/offers-no-ware.ts";
import { isPriceLabel } from "../money/price-label.ts";
import { PRICE_NAME } from "../money/price-name.ts";
import type { PriceLeaf } from "../money/written-price.ts";
import { isStrip } from "../picture/picture-area.ts";
import { LARGE_MAIN } from "../picture/picture-sizes.ts";
import { pictureUrl, pictureUrls } from "../picture/picture-urls.ts";
import { standInsOf } from "../picture/stand-ins.ts";
import type { Described } from "../structured.ts";
import { evidenceOf, saleOf } from "./evidence.ts";
import type { MainPage } from "./main-page.ts";
import { nameBy, readName } from "./name-by.ts";
import { ownPictures } from "./own-pictures.ts";
import { isSpelledBy } from "./said-by-address.ts";
import { LABEL_END, namesPart } from "./says-any.ts";
import { type Standing, standingOf } from "./standing.ts";
import { withPicture } from "./with-picture.ts";

/** More buttons that buy than this belong to a list. */
const MOST_BUYS = 4;

/** What is known of the product that a page is about, before it is put together. */
export interface MainDraft extends Pick<Cluster, "root" | "pictures" | "prices"> {
  /** What names it. */
  readonly heading: Element;
  readonly title?: string;
  readonly link: string;
  readonly described: Described | undefined;
}

const sameName = (a: string, b: string): boolean => {
  const [x, y] = [nameKey(a), nameKey(b)];
  return x.length > 2 && y.length > 2 && (x.includes(y) || y.includes(x));
};

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

/** Elements around a price that markup may call one. */
const STEPS_TO_TAG = 4;

/** What holds a price and others that are called just as it is, as paragraphs beside one another are; or two elements up. */
function blockOf(price: Element): Element | null {
  let tag: Element | null = price;
  for (let step = 0; tag && step < STEPS_TO_TAG; tag = parentOf(tag), step++) {
    const { tagName, className, nextElementSibling: next } = tag;
    const isTwin = next?.tagName === tagName && next.className === className && PRICE_NAME.test(nameOf(tag));
    if (isTwin) return parentOf(tag);
  }
  const inner = parentOf(price);
  return inner && parentOf(inner);
}

/** Prices of the same tag as the first: not far from it, and before the next heading. */
function tagOf(prices: readonly PriceLeaf[]): readonly PriceLeaf[] {
  const first = prices[0]?.element;
  const block = first && blockOf(first);
  if (!first || !block) return prices;
  const next = [...block.querySelectorAll("h2,h3,h4,h5,h6,summary")].find((part) => follows(first, part));
  return prices.filter(({ element }) => block.contains(element) && !(next && follows(next, element)));
}

/** The address by which a page wants to be known. */
export const pageLink = (doc: Document): string =>
  doc.querySelector("link[rel=canonical]")?.getAttribute("href") || doc.URL;

/** The block that holds a heading, its prices and its largest pictures; null where nothing does. */
function rootOf(
  heading: Element,
  written: string,
  shown: readonly Element[],
  large: ReadonlySet<Element>,
  prices: readonly PriceLeaf[],
  { tilesIn }: Standing,
): Element | null {
  const picturesIn = new Map<Element, number>();
  const largeIn = new Map<Element, number>();
  for (const picture of shown) countUp(picturesIn, picture);
  for (const picture of large) countUp(largeIn, picture);
  const meet = (counts: ReadonlyMap<Element, number>) =>
    nearest(heading, (up) => counts.has(up) && prices.every((price) => up.contains(price.element)));
  const around = meet(largeIn);
  const found = around && !WHOLE.test(around.tagName) ? around : meet(picturesIn);
  if (!found || found.tagName === "HTML") return null;
  const isNamed = shown.some((one) => found.contains(one) && isCalled(one, written));
  return isNamed ? found : withPicture(found, shown, tilesIn);
}

/** The product of a page where `heading` names it, or null where it names none. */
export function* mainDraft(
  heading: Element,
  page: MainPage,
): Generator<undefined, MainDraft | null, undefined> {
  const { context } = page;
  const { doc } = context;
  const written = nameBy(heading);
  if (namesVoucher(written)) return null;
  const standing = standingOf(heading, page);
  const { name, isName } = readName(written);
  if (isPriceLabel(name)) return null;
  const tells = isName && !isCrumb(heading) && (!namesPart(written) || isSpelledBy(written, doc));
  const unlisted = context.described.filter((one) => !one.listed);
  const described = unlisted.find((one) => (tells ? sameName(one.name, written) : unlisted.length === 1));
  const sale = yield* saleOf(page, standing);
  if (sale.bought.length > MOST_BUYS && !described) return null;
  const isBehind = (part: Element) => sale.parts.length > 0 && sale.parts.every((one) => follows(one, part));
  // What stands behind all that one pays and presses is about a part of the page.
  if (isBehind(heading) && !sale.parts.some((one) => one.contains(heading))) return null;
  const evidence = evidenceOf(heading, tells, sale, described, page, standing);
  if (!evidence) return null;
  const { all, shown: visible, isAnyVisible } = yield* ownPictures(page, standing);
  // Beside priced tiles such data is about the shop.
  if (evidence === "data" && !described?.price && !(standing.isAlone && shows(described, all, context)))
    return null;
  const isWeak = evidence === "place" || evidence === "address";
  if (isWeak && (!isAnyVisible || visible.every(leadsAway))) return null;
  const shown = ownOf(visible);
  const leads = shown.some((picture) => !isBehind(picture) && !isStrip(picture));
  const isLarge = (picture: Element) =>
    (picture.getBoundingClientRect().width >= LARGE_MAIN && !isStrip(picture)) || isCalled(picture, written);
  // What stands behind all that sells shows details, where another picture leads.
  const large = new Set(shown.filter((picture) => isLarge(picture) && !(leads && isBehind(picture))));
  if (evidence === "address" && large.size === 0) return null;
  const root = rootOf(heading, written, shown, large, sale.prices, standing);
  if (!root) return null;
  const title = tells ? name.replace(LABEL_END, "") : described?.name;
  const inside = [...new Set([...ownOf(all), ...all])].filter((picture) => root.contains(picture));
  // Where a price is told once more far below, those by the name are its own.
  const near = WHOLE.test(root.tagName)
    ? nearest(heading, (up) => shown.some((picture) => up.contains(picture)))
    : root;
  return {
    root,
    heading,
    pictures: inside.filter((picture) => near?.contains(picture)),
    prices: tagOf(sale.prices),
    ...(title && { title }),
    link: pageLink(doc),
    described,
  };
}
