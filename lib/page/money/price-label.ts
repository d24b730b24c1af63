/** What stands above, before or beside a price in tables and lists of facts. Common practice, no source. */
export const PRICE_LABELS: readonly string[] =
  "price|unit price|preis|prix|precio|preço|prezzo|prijs|pris|cena|ár|preț|цена|ціна|τιμή|fiyat|fiyatı|harga|giá|ราคา|السعر|قیمت|מחיר|価格|价格|價格|가격".split(
    "|",
  );

/** A text in lower case that begins with such a label. */
export const LABELLED_PRICE = new RegExp(`^(?:${PRICE_LABELS.join("|")}) ?[:：]`);
