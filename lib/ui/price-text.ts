import type { Price } from "../page/product.ts";

/**
 * A price as the reader's language writes it. Without a currency on the page the bare number is shown, since a guess
 * would be a claim. `locale`: a BCP 47 tag; the browser's own where it is left out.
 */
export function priceText(price: Price, locale?: string): string {
  const digits = { minimumFractionDigits: Number.isInteger(price.amount) ? 0 : 2, maximumFractionDigits: 2 };
  if (price.currency === null) return new Intl.NumberFormat(locale, digits).format(price.amount);
  try {
    return new Intl.NumberFormat(locale, { style: "currency", currency: price.currency }).format(
      price.amount,
    );
  } catch {
    return `${new Intl.NumberFormat(locale, digits).format(price.amount)} ${price.currency}`;
  }
}
