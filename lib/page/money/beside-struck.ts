import type { Context } from "../context.ts";
import { parentOf } from "../dom/ancestors.ts";
import { plainText } from "../dom/plain-text.ts";
import { barePrices, leafOf } from "./bare-price.ts";
import type { PriceLeaf } from "./written-price.ts";

const NUMBER = /^\d[\d.,’' ]*$/;

/** No price is cut by more than this part. */
const MOST_CUT = 0.95;

/** The price without a sign that stands beside a struck one, in the currency of that: what looks like money, or a number that is less. */
export function besideStruck(struck: PriceLeaf, context: Context): readonly PriceLeaf[] {
  const { element, amounts } = struck;
  const [was] = amounts;
  const isLess = ({ amounts: [now] }: PriceLeaf) =>
    was !== undefined &&
    now !== undefined &&
    now.amount < was.amount &&
    now.amount > (1 - MOST_CUT) * was.amount;
  const numbers = [element.nextElementSibling, element.previousElementSibling].flatMap((beside) => {
    const text = plainText(beside?.textContent);
    return beside && NUMBER.test(text) ? leafOf(beside, text, context) : [];
  });
  const bare = barePrices(parentOf(element) ?? element, context);
  return (bare.length > 0 ? bare : numbers.filter(isLess)).map((price) => ({
    ...price,
    amounts: price.amounts.map((amount) => ({ ...amount, currency: was?.currency ?? null })),
  }));
}
