import type { Amount } from "./price.ts";
import type { Price } from "./product.ts";

/**
 * The price to pay now: the lowest of several (a sale beside a struck price, the start of a range). A bare figure beside an
 * amount with a currency counts points or pieces.
 */
export function lowestPrice(amounts: readonly Amount[]): Price | null {
  const told = amounts.filter(({ currency }) => currency !== null);
  const money = told.length > 0 ? told : amounts;
  const plain = money.filter(({ aside }) => !aside);
  let best: Price | null = null;
  for (const { amount, currency } of plain.length > 0 ? plain : money)
    if (!best || amount < best.amount) best = { amount, currency };
  return best;
}
