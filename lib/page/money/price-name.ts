/** What markup calls a price, in several languages. Common practice, no source. */
export const PRICE_NAME = /pri(?:ce|s|x|jz)|preis|prec|prez|cena|amount|valor/i;
