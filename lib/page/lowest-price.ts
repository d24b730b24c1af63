import type { Amount } from "./price.ts";
import type { Price } from "./product.ts";

/** The price to pay now: the lowest of several (a sale beside a struck price, the start of a range). */
export function lowestPrice(amounts: readonly Amount[]): Price | null {
  const plain = amounts.filter((price) => !price.aside);
  let best: Price | null = null;
  for (const { amount, currency } of plain.length > 0 ? plain : amounts)
    if (!best || amount < best.amount) best = { amount, currency };
  return best;
}
