import { isSettled } from "./already-taken.ts";
import { nearest } from "./ancestors.ts";
import { buttonsIn, buys, quantitiesIn } from "./buttons.ts";
import type { Clustered } from "./clusters.ts";
import { type MainDraft, type MainPage, mainDraft } from "./main-draft.ts";
import { mainHeadings } from "./main-headings.ts";
import { nameKey } from "./plain-text.ts";
import { tilesBeside } from "./tiles-beside.ts";

/** Characters. No name of a product is longer. */
const LONGEST_NAME = 300;

/** Of several headings of one product: the one that data or the page's title knows, then the longer, since one may name its maker. */
const namesBetter = ({ title = "", described }: MainDraft, doc: Document): number =>
  (described || nameKey(doc.title).includes(nameKey(title)) ? LONGEST_NAME : 0) +
  Math.min(title.length, LONGEST_NAME - 1);

/**
 * Of headings less likely than those looked at before, the ones that stand in no tile and before something that buys
 * outside all tiles: a page that sells so has a product of its own, whatever names that.
 */
function headingsAtSale(
  headings: readonly Element[],
  { buttons, beside, context: { doc, furniture } }: MainPage,
): readonly Element[] {
  const tiles = new Set(beside.map(({ root }) => root));
  const isLoose = (element: Element) =>
    !furniture.isApart(element) && nearest(element, (up) => tiles.has(up)) === null;
  const sales = [...buttons.filter(buys), ...quantitiesIn(doc)].filter(isLoose);
  return headings.filter(
    (heading) => isLoose(heading) && sales.some((sale) => (heading.compareDocumentPosition(sale) & 4) > 0),
  );
}

/**
 * The product that a product page is about, or null. A heading names it; a button that buys it, the page's data under
 * the same name, or its address and a price must agree. Data alone proves nothing: home pages and listings carry it too.
 */
export function* mainProduct(places: Clustered): Generator<undefined, MainDraft | null, undefined> {
  const { context, clusters, survey } = places;
  if (isSettled(context)) return null;
  const page = { ...places, buttons: buttonsIn(context.doc), beside: tilesBeside(clusters, context) };
  yield;
  let first = true;
  for (const headings of mainHeadings(survey, context)) {
    yield;
    if (!headings) continue;
    const found: MainDraft[] = [];
    for (const heading of first ? headings : headingsAtSale(headings, page)) {
      yield;
      const draft = yield* mainDraft(heading, page);
      if (draft) found.push(draft);
    }
    first = false;
    const [one] = found.toSorted((a, b) => namesBetter(b, context.doc) - namesBetter(a, context.doc));
    if (one && found.every((other) => other.root === one.root)) return one;
  }
  return null;
}
