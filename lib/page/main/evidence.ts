import { buys, quantitiesIn } from "../dom/buttons.ts";
import { isCalledProduct, leadsToProduct } from "../dom/link.ts";
import type { PriceLeaf } from "../money/written-price.ts";
import type { Described } from "../structured.ts";
import type { MainPage } from "./main-page.ts";
import { isAddressed, pricesBy } from "./main-price.ts";
import { IN_FOLDER, isAddress } from "./said-by-address.ts";
import type { Standing } from "./standing.ts";
import { isToldByMarkup } from "./told-by-markup.ts";

/** Buttons looked at between two yields. */
const STRIDE = 50;

/** What may sell the product that a heading names. */
export interface Sale {
  readonly bought: readonly Element[];
  readonly counted: readonly Element[];
  readonly prices: readonly PriceLeaf[];
  /** All of them. */
  readonly parts: readonly Element[];
}

export function* saleOf(
  { clusters, context, buttons }: MainPage,
  { above, inTile, isOwn }: Standing,
): Generator<undefined, Sale, undefined> {
  const bought: Element[] = [];
  for (const [i, button] of buttons.entries()) {
    if (i % STRIDE === 0) yield;
    if (isOwn(button) && buys(button)) bought.push(button);
  }
  yield;
  const prices = pricesBy(above, clusters, bought, context, inTile);
  yield;
  const counted = quantitiesIn(context.doc).filter(isOwn);
  return { bought, counted, prices, parts: [...bought, ...counted, ...prices.map(({ element }) => element)] };
}

/** What shows that a page sells what a heading names; null: nothing does. "data" must have a price or a picture of its own, too. */
export type Evidence = "sale" | "place" | "address" | "data";

export function evidenceOf(
  heading: Element,
  tells: boolean,
  { bought, counted, prices }: Sale,
  described: Described | undefined,
  { context: { doc }, buttons, own }: MainPage,
  { isAlone }: Standing,
): Evidence | null {
  const hasPrice = prices.length > 0;
  const isCalled = isCalledProduct(doc.URL);
  // A list may be called "product", too: then more than one can be bought.
  const addressed =
    isAddressed(doc) ||
    (bought.length === 1 && isToldByMarkup(heading) && isAddress(heading.textContent, doc)) ||
    (bought.length === 1 && heading.tagName === "H1" && IN_FOLDER.test(doc.URL)) ||
    (isCalled && bought.length === 1 && buttons.filter(buys).length === 1);
  if (bought.length > 0 && (hasPrice || addressed || counted.length > 0)) return "sale";
  if (hasPrice && (described || leadsToProduct(doc.URL) || counted.length > 0)) return "sale";
  if (hasPrice && (own !== null || isToldByMarkup(heading) || isCalled)) return "place";
  // A maker's page of one ware may name no price.
  const named = leadsToProduct(doc.URL) || (isCalled && isToldByMarkup(heading));
  if (!hasPrice && isAlone && tells && named) return "address";
  return described ? "data" : null;
}
