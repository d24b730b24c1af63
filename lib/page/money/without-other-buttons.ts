import { countUp, nameOf, parentOf } from "../dom/ancestors.ts";
import { buys } from "../dom/buttons.ts";
import type { Survey } from "../survey.ts";
import { LABELLED_PRICE } from "./price-label.ts";
import type { WrittenPrice } from "./written-price.ts";

/** What markup calls a button that may show no more than the price. */
const BASKET_NAME = /cart|buy|basket/i;

/** Whether a price stands on a button that does not buy, nor does one beside it, and no label says that it is one: what it costs to give, to book, to send. */
function isOnOther({ element, text }: WrittenPrice): boolean {
  const button = element.closest("button");
  if (button === null || BASKET_NAME.test(nameOf(button)) || LABELLED_PRICE.test(text.toLowerCase()))
    return false;
  return ![...(parentOf(button)?.children ?? [])].some((one) => one.localName === "button" && buys(one));
}

/** What a page shows without the prices on buttons that do not buy. */
export function withoutOtherButtons(survey: Survey<WrittenPrice>): Survey<WrittenPrice> {
  const prices = survey.prices.filter((price) => !isOnOther(price));
  if (prices.length === survey.prices.length) return survey;
  const pricesIn = new Map<Element, number>();
  for (const { element } of prices) countUp(pricesIn, element);
  return { ...survey, prices, pricesIn };
}
