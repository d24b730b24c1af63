/** What a link to a basket says, without counts and marks, in lower case. Common practice, no source. */
export const BASKET_WORDS: ReadonlySet<string> = new Set(
  "cart|my cart|shopping cart|basket|my basket|shopping basket|bag|my bag|shopping bag|warenkorb|einkaufswagen|panier|mon panier|carrito|mi carrito|cesta|carrello|carrinho|winkelwagen|winkelmand|winkelmandje|varukorg|kundvagn|koszyk|kurv|indkøbskurv|handlekurv|ostoskori|košík|kosár|coș|cos|coșul meu|cosul meu|sepet|sepetim|корзина|кошик|количка|καλάθι|keranjang|giỏ hàng|カート|買い物かご|购物车|購物車|장바구니|سلة|السلة|עגלה|ตะกร้า".split(
    "|",
  ),
);

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
