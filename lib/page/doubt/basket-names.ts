/** What the heading of a basket and a link to it say, in lower case; counts and marks may follow. Common practice, no source. */
export const BASKET_TEXT =
  /^((your|my|shopping|ihr|dein|mein|votre|mon|tu|mi|il tuo|o seu|meu|jouw|mijn|din|min|twój|mój) )*((shopping )?(cart|bag|basket|trolley)|(einkaufs)?wagen|warenkorb|panier( d.achat)?|carrito( de (la )?compras?)?|cesta( de (la )?compra)?|carrello|carrinho( de compras)?|sacola|winkel(wagen|mand)(je)?|varukorg|kundvagn|koszyk|カート|買い物かご|장바구니|购物车|購物車|корзина|кошик|košík|košarica|giỏ hàng( của (bạn|tôi))?|keranjang( belanja)?|ตะกร้าสินค้า|سبد خرید|korpa|корпа|кошница|kosár|καλάθι( αγορών)?|sepetim|(alışveriş )?sepeti?|indkøbskurv|kurv|handlekurv|ostoskori|coș(ul)?( de cumpărături)?|עגלת קניות|סל( ה)?קניות|(ال)?سلة|سلة (التسوق|المشتريات)|عربة التسوق)[^a-zà-ž]*$/;

/** What addresses call a basket, in the ten languages of slot words and some more. */
export const BASKET_NAMES: readonly string[] = [
  "cart",
  "basket",
  "bag",
  "checkout",
  "warenkorb",
  "panier",
  "carrito",
  "cesta",
  "carrello",
  "carrinho",
  "sacola",
  "winkelmand",
  "winkelwagen",
  "varukorg",
  "kundvagn",
  "koszyk",
  "kassa",
  "kasse",
  "kurv",
  "sepet",
  "sepetim",
  "shopcart",
  "kosar",
  "kosik",
  "korpa",
  "korzina",
  "handlekurv",
  "ostoskori",
  "keranjang",
];

/** Links to a basket. */
export const BASKET_LINKS = BASKET_NAMES.map(
  (name) => `a[href*="/${name}" i]:not([href*="/carte" i])`,
).join();
