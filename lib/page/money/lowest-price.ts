import type { Price } from "../product.ts";
import type { Amount } from "./price.ts";
import { isAside, isForOnePiece, isTaxed } from "./what-for.ts";

/** Pieces of which a pack may be made, and how far their price is rounded, in units of the currency. */
const MOST_PIECES = 1000;
const ROUNDED = 0.005;

/** Whether one amount is what a whole number of pieces costs at the other. */
function isPack(pack: Amount, piece: Amount): boolean {
  const pieces = Math.round(pack.amount / piece.amount);
  const off = Math.abs(pack.amount - pieces * piece.amount);
  return pieces > 1 && pieces <= MOST_PIECES && off <= (pieces + 1) * ROUNDED;
}

/** How many times as much the tax makes of an amount: from 5 % to 27 %, rounded. From memory: the rates of Japan and Hungary are about the outermost. */
const LEAST_TAXED = 1.04;
const MOST_TAXED = 1.28;

/** The amounts without those that another text beside them tells with the tax; two amounts in one text are a range. */
function withTax(amounts: readonly Amount[]): readonly Amount[] {
  const taxed = amounts.filter(isTaxed);
  const isUntaxed = ({ amount, said }: Amount) =>
    taxed.some(
      (one) => one.said !== said && one.amount >= LEAST_TAXED * amount && one.amount <= MOST_TAXED * amount,
    );
  return amounts.filter((one) => isTaxed(one) || !isUntaxed(one));
}

/**
 * The price to pay now: the lowest of several in one currency, that of the first (a sale beside a struck price, the start of a range). A bare figure beside an
 * amount with a currency counts points or pieces; what one piece costs is no price where a pack is on sale, nor what lacks
 * the tax where another says that it has it.
 */
export function lowestPrice(amounts: readonly Amount[]): Price | null {
  const told = amounts.filter(({ currency }) => currency !== null);
  const money = told.length > 0 ? told : amounts;
  const plain = withTax(money.filter((one) => !isAside(one)));
  const packs = plain.length > 1 ? plain.filter((one) => !isForOnePiece(one)) : plain;
  const paid = plain.filter((one) => packs.includes(one) || !packs.some((pack) => isPack(pack, one)));
  let best: Price | null = null;
  for (const { amount, currency } of paid.length > 0 ? paid : money)
    if (!best || (amount < best.amount && currency === best.currency)) best = { amount, currency };
  return best;
}
