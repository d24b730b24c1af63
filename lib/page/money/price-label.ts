/** What stands above, before or beside a price in tables and lists of facts. Common practice, no source. */
export const PRICE_LABELS: readonly string[] =
  "price|our price|sale price|product price|item price|unit price|preis|prix|precio|preço|prezzo|prijs|pris|cena|ár|preț|pret|цена|ціна|τιμή|fiyat|fiyatı|harga|giá|giá bán|ราคา|السعر|قیمت|מחיר|価格|販売価格|价格|商品价格|售价|價格|商品價格|售價|가격|판매가격|판매 가격|판매가".split(
    "|",
  );

/** A text in lower case that begins with such a label. */
export const LABELLED_PRICE = new RegExp(`^(?:${PRICE_LABELS.join("|")}) ?[:：]`);
