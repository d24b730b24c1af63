/** What stands above, before or beside a price in tables and lists of facts, in lower case. Common practice, no source. */
export const PRICE_LABEL =
  "(?:unit )?price|cost|costo|preis|prix|precio|preço|prezzo|prijs|pris|valor|cena|ár|preț|цена|ціна|τιμή|fiyatı?|harga|kaina|hind|hinta|giá|ราคา|السعر|قیمت|מחיר|価 *格|[价價] *格|가 *격";

/** Characters of the longest. */
const LONGEST_LABEL = 10;

const ALONE = new RegExp(`^(?:${PRICE_LABEL}) ?[:：]*$`);

/** Whether a text is such a label and no more than its mark. */
export const isPriceLabel = (text: string): boolean =>
  text.length <= LONGEST_LABEL && ALONE.test(text.toLowerCase());

/** A text in lower case that begins with such a label. */
export const LABELLED_PRICE = new RegExp(`^(?:(?:${PRICE_LABEL}) ?[:：]|【(?:${PRICE_LABEL})】)`);
