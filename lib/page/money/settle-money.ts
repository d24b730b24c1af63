import type { Survey } from "../survey.ts";
import { currencyOf, type MoneyHint } from "./currency.ts";
import { parseAmount, THOUSANDTHS } from "./parse-amount.ts";
import type { Amount, WrittenAmount } from "./price.ts";
import type { WrittenPrice } from "./written-price.ts";

/** An amount with the currency that it has on a page with this hint; which may count in thousandths after all. */
function settled(one: WrittenAmount, hint: MoneyHint): Amount {
  const currency = currencyOf(one.meant, hint);
  const thousandths = THOUSANDTHS.has(currency ?? "");
  return { ...one, currency, amount: thousandths ? parseAmount(one.written, true) : one.amount };
}

/** Amounts with their currencies. */
export const settleMoney = (amounts: readonly WrittenAmount[], hint: MoneyHint): readonly Amount[] =>
  amounts.map((one) => settled(one, hint));

/** What a page shows, its prices with their currencies. */
export const settleSurvey = (survey: Survey<WrittenPrice>, hint: MoneyHint): Survey => ({
  ...survey,
  prices: survey.prices.map((price) => ({ ...price, amounts: settleMoney(price.amounts, hint) })),
});
