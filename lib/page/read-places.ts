import { clustersOf } from "./clusters.ts";
import { readContext } from "./context.ts";
import { buttonsIn, buys, opensProduct } from "./dom/buttons.ts";
import type { Doubted } from "./doubt/doubts.ts";
import { namesBasket } from "./doubt/is-sold-by-press.ts";
import { foundProduct } from "./found-product.ts";
import type { MainDraft } from "./main/main-draft.ts";
import { mainProduct } from "./main/main-product.ts";
import { settleSurvey } from "./money/settle-money.ts";
import { withoutOtherButtons } from "./money/without-other-buttons.ts";
import type { Places } from "./places.ts";
import type { FoundPage, FoundProduct } from "./product.ts";
import { type Survey, surveyOf } from "./survey.ts";
import { readTiles, tileClusters } from "./tile/read-tiles.ts";
import { relatedTiles } from "./tile/related.ts";
import { withoutHiddenCards } from "./tile/without-hidden-cards.ts";
import { withoutRepeats } from "./tile/without-repeats.ts";

/** Gives bare amounts the one currency that a page's products have; where they have none, that of its other amounts, as the sum of a basket. */
function inOneCurrency(products: readonly FoundProduct[], { prices }: Survey): readonly FoundProduct[] {
  const own = products.flatMap(({ price }) => price?.currency ?? []);
  const others = () => prices.flatMap(({ amounts }) => amounts.flatMap(({ currency }) => currency ?? []));
  const [currency, ...more] = new Set(own.length > 0 ? own : others());
  if (!currency || more.length > 0) return products;
  return products.map((one) => (one.price ? { ...one, price: { ...one.price, currency } } : one));
}

/** A product without the pictures of others. */
function without(draft: MainDraft, others: ReadonlyMap<Element, readonly Element[]>): MainDraft {
  const taken = new Set([...others.values()].flat());
  const pictures = draft.pictures.filter((picture) => !taken.has(picture));
  return { ...draft, pictures };
}

/**
 * Puts the products together that stand in places, and leaves out what is none. Yields often; nothing on the page is
 * changed. `doubted` hears what was taken for a product and is none.
 */
export function* readPlaces(found: Places, doubted?: Doubted): Generator<undefined, FoundPage, undefined> {
  const seen = withoutOtherButtons(yield* surveyOf(found.roots));
  const pictures = seen.pictures.length;
  const tells = (button: Element) => buys(button) || opensProduct(button);
  const mayShow = () =>
    found.mayShow(pictures) ||
    (pictures > 0 && found.whole && (buttonsIn(found.doc).some(tells) || namesBasket(found.doc)));
  if (seen.prices.length === 0 && !mayShow()) return { kind: "none", products: [] };
  yield;
  const context = yield* readContext(found);
  const survey = settleSurvey(seen, context.hint);
  const places = yield* withoutHiddenCards({ context, survey, clusters: yield* clustersOf(survey) });
  const draft = found.whole ? yield* mainProduct(places) : null;
  const related = yield* relatedTiles(places, draft, tileClusters(places.clusters, draft));
  const main = draft && foundProduct({ role: "main", ...without(draft, related.unpriced) }, context);
  yield;
  const about = main && draft;
  const tiles = yield* readTiles(places, about, tileClusters(places.clusters, about), related, doubted);
  // A part of the page may show its own product once more, under its name or with its picture.
  const isMain = ({ title, link, images: [shown] }: FoundProduct) =>
    main !== null &&
    [title === main.title, link === null, shown === main.images[0]].filter(Boolean).length > 1;
  const others = tiles.filter((tile) => !isMain(tile));
  const products = inOneCurrency(withoutRepeats(main ? [main, ...others] : tiles, context), survey);
  return { kind: main ? "product" : products.length > 0 ? "listing" : "none", products };
}
