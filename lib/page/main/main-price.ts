import type { Cluster } from "../clusters.ts";
import type { Context } from "../context.ts";
import { parentOf, WHOLE } from "../dom/ancestors.ts";
import { isCalledDetail, leadsToProduct } from "../dom/link.ts";
import { plainText } from "../dom/plain-text.ts";
import { headedPrices, labelledPrices, loneNumber } from "../money/bare-price.ts";
import { besideStruck } from "../money/beside-struck.ts";
import { isStruck } from "../money/is-struck.ts";
import { readTag } from "../money/price.ts";
import { settleMoney } from "../money/settle-money.ts";
import { isAside, isNamedPart, isTaxed } from "../money/what-for.ts";
import type { PriceLeaf } from "../money/written-price.ts";

/** Whether the address of a page is, by its wording, that of one product or of one thing among others. */
export const isAddressed = ({ URL: here }: Document): boolean => leadsToProduct(here) || isCalledDetail(here);

/** The price that a button names ("Add to bag, $188"). */
export function priceOn(button: Element, context: Context): PriceLeaf[] {
  const text = plainText(button.textContent);
  const { amounts: written, words, denied } = readTag(text);
  const amounts = settleMoney(written, context.hint);
  return denied || amounts.length === 0 ? [] : [{ element: button, text, tag: text, words, amounts }];
}

/** Of the prices written as large as the largest, or nearly, in parts of it: others are costs, taxes, points. */
const LARGE = 0.9;

function largest(prices: readonly PriceLeaf[]): readonly PriceLeaf[] {
  const sizeOf = ({ element }: PriceLeaf): number =>
    Number.parseFloat(element.ownerDocument.defaultView?.getComputedStyle(element).fontSize ?? "") || 0;
  const sizes = new Map(prices.map((price) => [price, sizeOf(price)]));
  const most = Math.max(...sizes.values());
  return prices.filter(
    (price) => (sizes.get(price) ?? 0) >= LARGE * most || price.amounts.some((amount) => isTaxed(amount)),
  );
}

const isPlain = (price: PriceLeaf): boolean =>
  !isNamedPart(price) && price.amounts.some((amount) => !isAside(amount));

/** Whether one of some buttons stands beside an element, or with it in a block. */
const standsBy = (buttons: readonly Element[], element: Element): boolean => {
  const around = parentOf(element);
  return buttons.some((button) => around?.contains(button) || (around && parentOf(around)?.contains(button)));
};

/**
 * The prices that stand nearest to a heading: those that can be seen and are not crossed out; where none is such, one
 * without a sign beside what is, or one on a button that buys; where there is none, one in a bar that stays with such a
 * button, one that a heading beside it or a label tells, or the only whole number between name and button.
 */
export function pricesBy(
  around: ReadonlySet<Element>,
  clusters: readonly Cluster[],
  buttons: readonly Element[],
  context: Context,
  inTile: (element: Element) => boolean,
): readonly PriceLeaf[] {
  const { isApart, isHidden } = context.furniture;
  const free = clusters.filter(({ root }) => around.has(root) || !inTile(root));
  for (const up of around) {
    const own = free
      .filter(({ root }) => root === up || (!around.has(root) && up.contains(root)))
      .flatMap(({ prices }) => prices)
      .filter(({ element }) => !isApart(element) && !inTile(element));
    if (own.length === 0) continue;
    const shown = own.filter(({ element }) => !isHidden(element) && !isStruck(element));
    const plain = shown.filter(isPlain);
    if (plain.length > 0) return largest(plain);
    const beside = own
      .filter(({ element }) => isStruck(element))
      .flatMap((one) => besideStruck(one, context));
    if (beside.length > 0) return beside;
    const onButton = buttons.flatMap((button) => priceOn(button, context));
    return onButton.length > 0 ? onButton.slice(0, 1) : shown.length > 0 ? shown : own;
  }
  const onButton = buttons.flatMap((button) => priceOn(button, context));
  if (onButton.length > 0) return onButton.slice(0, 1);
  const inBar = (buttons.length > 0 ? clusters : [])
    .flatMap(({ prices }) => prices)
    .filter(({ element }) => standsBy(buttons, element) && isApart(element) && !isHidden(element));
  if (inBar.length > 0) return inBar.slice(0, 1);
  const [heading] = around;
  // The block in which the heading meets what buys it, on a page of one product.
  const [button] = isAddressed(context.doc) ? buttons : [];
  const block = [...around].find((up) => button !== undefined && up.contains(button));
  const bare = [
    ...(heading ? headedPrices(heading, context) : []),
    ...labelledPrices(context),
    ...(block && !WHOLE.test(block.tagName) ? loneNumber(block, context) : []),
  ];
  return bare
    .filter(({ element }) => !isApart(element) && !isHidden(element) && !inTile(element))
    .slice(0, 1);
}
