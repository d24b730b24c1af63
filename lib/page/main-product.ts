import { countUp, nearest } from "./ancestors.ts";
import { buttonsIn, buys } from "./buttons.ts";
import type { Cluster } from "./clusters.ts";
import type { Context } from "./context.ts";
import { headingText, nameKey } from "./plain-text.ts";
import type { Described } from "./structured.ts";
import type { Survey } from "./survey.ts";

/** Headings looked at. */
const MOST_HEADINGS = 12;
/** More buttons that buy than this belong to a list. */
const MOST_BUYS = 4;
/** A product page's own picture is at least this wide or high, in CSS pixels. */
const SMALLEST_MAIN = 140;
/** Pictures measured or buttons looked at between two yields. */
const STRIDE = 50;

/** What is known of the product that a page is about, before it is put together. */
export interface MainDraft extends Pick<Cluster, "root" | "pictures" | "prices"> {
  readonly title?: string;
  readonly link: string;
  readonly described: Described | undefined;
}

const sameName = (a: string, b: string): boolean => {
  const [x, y] = [nameKey(a), nameKey(b)];
  return x.length > 2 && y.length > 2 && (x.includes(y) || y.includes(x));
};

/**
 * The product that a product page is about, or null. A heading names it; a button that buys it, or the page's data
 * under the same name, must agree. Data alone proves nothing: home pages and listings carry it too.
 */
export function* mainProduct(
  survey: Survey,
  clusters: readonly Cluster[],
  context: Context,
): Generator<undefined, MainDraft | null, undefined> {
  const { doc, furniture } = context;
  const shown = (selector: string) =>
    [...doc.querySelectorAll(selector)]
      .slice(0, MOST_HEADINGS)
      .filter((heading) => !furniture.isApart(heading) && !furniture.isHidden(heading));
  const first = shown("h1");
  const headings = first.length > 0 ? first : shown("h2,h3,[itemprop=name]");
  yield;
  const buttons = headings.length > 0 ? buttonsIn(doc) : [];
  const unlisted = context.described.filter((one) => !one.listed);
  const found: MainDraft[] = [];
  for (const heading of headings) {
    yield;
    const above = new Set<Element>();
    nearest(heading, (up) => !above.add(up));
    const tiles = new Set<Element>();
    const tilesIn = new Map<Element, number>();
    for (const { root, holdsMore } of clusters) {
      if (holdsMore || above.has(root)) continue;
      tiles.add(root);
      countUp(tilesIn, root);
    }
    const inTile = (element: Element) => nearest(element, (up) => tiles.has(up)) !== null;
    const written = headingText(heading);
    const named = /\p{L}{3}/u.test(written);
    const described = unlisted.find((one) => (named ? sameName(one.name, written) : unlisted.length === 1));
    let bought = 0;
    for (const [i, button] of buttons.entries()) {
      if (i % STRIDE === 0) yield;
      if (inTile(button) || !buys(button)) continue;
      // A button is the heading's where the two meet before a tile does.
      const meet = nearest(button, (up) => above.has(up) || tilesIn.has(up));
      if (meet && above.has(meet)) bought++;
    }
    if (!described && (bought === 0 || bought > MOST_BUYS)) continue;
    const pictures: Element[] = [];
    const picturesIn = new Map<Element, number>();
    for (const [i, picture] of survey.pictures.entries()) {
      if (i % STRIDE === 0) yield;
      const { width, height } = picture.getBoundingClientRect();
      if ((width > 0 && Math.max(width, height) < SMALLEST_MAIN) || inTile(picture)) continue;
      pictures.push(picture);
      countUp(picturesIn, picture);
    }
    const prices = clusters
      .filter((cluster) => above.has(cluster.root))
      .flatMap((cluster) => cluster.prices)
      .filter((price) => !inTile(price.element));
    const root = nearest(
      heading,
      (up) => picturesIn.has(up) && prices.every((price) => up.contains(price.element)),
    );
    if (!root || root.tagName === "HTML") continue;
    const block = prices[0]?.element.parentElement?.parentElement;
    const title = named ? written : described?.name;
    found.push({
      root,
      pictures: pictures.filter((picture) => root.contains(picture)),
      prices: prices.filter((price) => block?.contains(price.element)),
      ...(title && { title }),
      link: doc.querySelector("link[rel=canonical]")?.getAttribute("href") || doc.URL,
      described,
    });
  }
  const [one] = found;
  return one && found.every((other) => other.root === one.root) ? one : null;
}
