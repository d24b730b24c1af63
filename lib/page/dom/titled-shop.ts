/** What the title of a shop has in it, in lower case. Common practice, no source. */
const SHOP =
  /(^|[^a-z])(e-?|web)?(shop|store|boutique|tienda|loja|negozio|butik|winkel|sklep|obchod|toko|mağaza)([^a-z]|$)|магазин|cửa hàng|ショップ|商店|쇼핑몰/;

/** Whether the title of a page calls it a shop. */
export const isTitledShop = ({ title }: Document): boolean => SHOP.test(title.toLowerCase());
