import type { Cluster, Clustered } from "../clusters.ts";
import type { Context } from "../context.ts";
import { addTo, follows, nearest, parentOf } from "../dom/ancestors.ts";
import { buttonsIn, buyingLinksIn, buys, quantitiesIn } from "../dom/buttons.ts";
import { nameKey, plainText } from "../dom/plain-text.ts";
import { isBought } from "../doubt/already-taken.ts";
import { saysOtherwise, sellsNothing, showsEvent } from "../doubt/offers-no-ware.ts";
import { kindOf, LEAST_MEMBERS } from "../members.ts";
import { type MainDraft, mainDraft, pageLink } from "./main-draft.ts";
import { mainHeadings } from "./main-headings.ts";
import type { MainPage } from "./main-page.ts";
import { tilesBeside } from "./tiles-beside.ts";

/** Buttons looked at between two yields. */
const STRIDE = 50;

/** Characters. No name of a product is longer. */
const LONGEST_NAME = 300;

/** Whether a title says more than another that it begins with, as a name with its maker does. */
const saysMore = ({ title = "" }: MainDraft, other: MainDraft): boolean =>
  other.title !== undefined && title.startsWith(`${other.title} `);

/** From 0.8 down for headings of the second rank on; 0 for what is no heading. */
const rankOf = ({ tagName }: Element): number => (/^H\d$/.test(tagName) ? 1 - Number(tagName[1]) / 10 : 0);

/**
 * Of several headings of one product: the one that data or the page's title knows, then the longer of the first rank,
 * since one may name its maker; of others the highest.
 */
const namesBetter = ({ title = "", described, heading }: MainDraft, doc: Document): number =>
  (described || nameKey(doc.title).includes(nameKey(title)) ? LONGEST_NAME : 0) +
  (heading.tagName === "H1" ? Math.min(title.length, LONGEST_NAME - 1) : rankOf(heading));

/** Tells whether an element lies in no tile nor in what stands in a list of them, as one without a picture does, and not apart from what the page offers. */
function looseOn({ beside, context: { furniture } }: MainPage): (element: Element) => boolean {
  const tiles = new Set(beside.flatMap(({ parts }) => parts));
  const lists = new Map<Element, string[]>();
  for (const { root } of beside) {
    const list = parentOf(root);
    if (list) addTo(lists, list, kindOf(root));
  }
  const isMember = (element: Element) => {
    const list = parentOf(element);
    const kinds = (list && lists.get(list)) ?? [];
    return kinds.filter((kind) => kind === kindOf(element)).length >= LEAST_MEMBERS;
  };
  return (element) => !nearest(element, (up) => tiles.has(up) || isMember(up)) && !furniture.isApart(element);
}

/** Elements around a heading that may say no more than it does. */
const MOST_WRAPS = 5;

/** The outermost element that says no more than a heading in it. */
function wholeOf(heading: Element): Element {
  const said = plainText(heading.textContent);
  let whole = heading;
  for (let wraps = 0; wraps < MOST_WRAPS; wraps++) {
    const up = parentOf(whole);
    if (!up || plainText(up.textContent) !== said) break;
    whole = up;
  }
  return whole;
}

/** Whether a heading stands in a block or right before it: what names a group at its side does not. */
function heads(heading: Element, block: Element | undefined): boolean {
  const whole = wholeOf(heading);
  const around = parentOf(whole);
  return (
    !block ||
    [whole, around, around && parentOf(around)].some((up) => up && (block.contains(up) || up.contains(block)))
  );
}

/** Whether a name stands behind its price, or a tile between the two. */
const isCutOff = ({ heading, prices }: MainDraft, { beside }: MainPage): boolean =>
  prices.slice(0, 1).some(({ element }) => follows(element, heading)) ||
  beside.some(
    ({ root }) =>
      follows(heading, root) &&
      prices.some(({ element }) => !root.contains(element) && follows(root, element)),
  );

/** What buys outside all tiles: a page that sells so has a product of its own, whatever names that. */
function* looseSales(
  { buttons, context }: MainPage,
  isLoose: (element: Element) => boolean,
): Generator<undefined, readonly Element[], undefined> {
  const found: Element[] = [];
  for (const [i, button] of buttons.entries()) {
    if (i % STRIDE === 0) yield;
    if (buys(button) && isLoose(button)) found.push(button);
  }
  yield;
  return [...found, ...quantitiesIn(context.doc).filter(isLoose)];
}

/** A block that is sold as the page's own and that no heading names: its most telling text does. */
const namelessDraft = ({ root, pictures, prices }: Cluster, { doc }: Context): MainDraft => ({
  root,
  heading: root,
  pictures,
  prices,
  link: pageLink(doc),
  described: undefined,
});

/**
 * The product that a product page is about, or null. A heading names it; a button that buys it, the page's data under
 * the same name, or its address and a price must agree. Data alone proves nothing: home pages and listings carry it too.
 */
export function* mainProduct(places: Clustered): Generator<undefined, MainDraft | null, undefined> {
  const { context, clusters, survey } = places;
  if (isBought(context) || showsEvent(context.doc)) return null;
  const links = (yield* buyingLinksIn(context.doc)).filter((link) => !context.furniture.isApart(link));
  const pressed = buttonsIn(context.doc);
  yield;
  // A link in a menu may say to buy where nothing is sold.
  if (sellsNothing(context) && !pressed.some(buys)) return null;
  yield;
  const buttons = [...pressed, ...links];
  const { own, beside } = yield* tilesBeside(clusters, buttons, context);
  const page = { ...places, buttons, own, beside };
  const isLoose = looseOn(page);
  yield;
  let sales: readonly Element[] | null = null;
  let nameless: MainDraft | null = null;
  const named = own && own.names.length > 0 ? [own.names] : mainHeadings(survey, context, buttons);
  for (const headings of named) {
    yield;
    if (!headings) continue;
    const found: MainDraft[] = [];
    const isOfList = headings.filter((heading) => !isLoose(heading)).length >= LEAST_MEMBERS;
    for (const heading of headings) {
      yield;
      if (isOfList && !isLoose(heading)) continue;
      // Other headings than those of the first rank must stand in no tile; what is less likely to name it before what buys.
      if (heading.tagName !== "H1" && !(isLoose(heading) && heads(heading, own?.cluster.root))) continue;
      if (sales && !sales.some((sale) => follows(heading, sale))) continue;
      const draft = yield* mainDraft(heading, page);
      if (draft && (heading.tagName === "H1" || !isCutOff(draft, page))) found.push(draft);
    }
    // A heading far from price and picture names the page around them.
    const telling = found.filter(({ title }) => title);
    const able = telling.length > 0 ? telling : found;
    const inner = able.filter(
      ({ root }) => !able.some((other) => other.root !== root && root.contains(other.root)),
    );
    const [one] = inner.toSorted(
      (a, b) =>
        namesBetter(b, context.doc) - namesBetter(a, context.doc) ||
        Number(saysMore(b, a)) - Number(saysMore(a, b)),
    );
    if (one && inner.every((other) => other.root === one.root)) {
      // A heading that is all price finds the block; what names it may be no heading.
      if (one.title && (!nameless || nameless.root === one.root)) return one;
      nameless ??= one;
    }
    sales ??= yield* looseSales(page, isLoose);
    if (sales.length === 0) break;
  }
  // The block that is sold holds the name, where a heading around it only says what any product's page says.
  const isAround =
    own && nameless && nameless.root !== own.cluster.root && nameless.root.contains(own.cluster.root);
  if (own && (isAround || (!nameless && !saysOtherwise(context)))) return namelessDraft(own.cluster, context);
  return nameless;
}
