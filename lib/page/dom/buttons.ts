import { allIn, nameOf, parentOf } from "./ancestors.ts";

/** Buttons looked at. */
const MOST_BUTTONS = 400;

/** What says to buy, in some forty languages. Common practice, no source. */
const BUY =
  /add to (my )?(cart|bag|basket|trolley)|buy (it )?now|order (now|here|by|online|via|on)\b|(buy|inquire|enquire|inquiry|enquiry|comprar|consultar|beli|pesan) (on|via|by|por|pelo|no|lewat) ?whats ?app|jetzt bestellen|(?<!re)commander|zamów|beställ|pre-?order|sold out|in (den |deinen |ihren )?(warenkorb|einkaufswagen|korb)|warenkorb hinzu|ausverkauft|ajouter (au|à (mon|la)) panier|mettre au panier|(añadir|agregar|adicionar)(?!.{1,12}(cuenta|conta|favorit|lista|dese))|comprar(?! (ingresso|entrada|bil[lh]et|boleto))|aggiungi al|nel carrello|(in|aan) (de |het |mijn )?winkel|lägg i|køb nu|i (varukorg|kundvagn)|köp|do (koszyka|torby)|do košík[ua]|koupit|kúpiť|kosárba|sepete|satın al|læg i|til kurv|legg i|kjøp nå|ostoskoriin|\bosta\b|ostukorvi|grozā|krepšel|u ko(šaric|rp)u|v košarico|în coș|în coş|in cos\b|adaug[aă]|в ко(рзину|личката|шик)|у кошик|у корпу|до кошика|купить(?! билет)|купити(?! квит)|купи\b|καλάθι|αγορά|カート|かご|カゴ|購入|注文する|加入|购买|[到入加]购物车|加購|구매(?! ?(안내|후기|내역|가이드|평))|장바구니|담기|[أإا]ضا?ف[ةه]?.{0,9}(سل|عرب|حقيب)|اشتر|شراء|سبد خرید|לעגלה|לסל|เพิ่มลง|ใส่ตะกร้า|สั่งซื้อ|หยิบใส่|vào giỏ|mua ngay|chọn mua|đặt (mua|hàng)|keranjang|\btroli\b|\bbeli\b|pesan sekarang|pedir|hacer pedido|fazer pedido|encargar|afegeix a|saskira|cistella|lisää koriin|lisa korvi|í körfu|në shportë|во кошничка|səbət|savatga|себетке|сагсанд|զամբյուղ|კალათა|به سبد|کارٹ میں|কার্টে|কিনুন|खरीद|कार्ट|add-?_?(to-?_?)?(cart|bag|basket|item)|cart\/add/i;
/** Pictures of a cart that are pressed, by the name of their file. */
const PRESSED_CART = /(^|[/_-])(cart|basket|buy|buy_?(car|cart|now))\.(gif|jpe?g|png|webp)$/i;

/** What markup calls a button that buys a ware, or what is around it alone. */
const CALLED_BUY = /(^|[\s_-])buy(?![\s_-]?ticket)([\s_-]|$)/i;

/** Whether a button is called so, whatever it says. */
function isCalledBuy(button: Element): boolean {
  const around = parentOf(button);
  const names = around?.childElementCount === 1 ? `${nameOf(button)} ${nameOf(around)}` : nameOf(button);
  return button.tagName === "BUTTON" && CALLED_BUY.test(names);
}

/** What leads to a basket and puts nothing in. */
const LOOKS =
  /^[^\p{L}]*(view|see|show|go to|zum|your|my|mein|voir|mon|ver|mi|vedi|bekijk|visa|zobacz|(カート|かご|カゴ)(を見る)?|(내 ?)?장바구니(?! ?에? ?담)|giỏ hàng|keranjang|troli|购物车|購物車|سبد خرید|(το )?καλάθι( μου)?|(購入|注文)履歴|购买记录|구매 ?내역)(?![\p{L}])/iu;

/** What says so where it is all that is said. */
const BUY_ALONE =
  /^[^\p{L}]*(buy|purchase|kaufen|bestellen|acheter|acquista( ora| subito)?|ordina|(koop|bestel)( nu)?|kopen|kup|zamawiam|osta|köp|køb|kjøp|pesan|купи(ть)?|заказать|buy now!?|购买|買う|구매하기)[^\p{L}]*$/iu;
const BUTTONS =
  'button,[type=submit],[type=image],input[type=button],[role=button],a[class*="cart"],a[class*="btn" i],a[class*="button" i],a[href*="add="],form[action*="cart/add"],div[class*="cart" i],span[class*="cart" i],div[class*="basket"],div[class*="winkel"],span.btn,div.btn,span[class^="button"]';

/** Fields that say how many of a product are to be bought. */
const QUANTITIES =
  'input[type=number][value="1"],input[name*="qty" i],input[name*="quantit" i],input[id*="quantit" i],select[name*="qty" i],select[name*="quantit" i]';

/** Whether a link says to buy by a picture that is all of it: by what that is called, or the name of its file. */
function showsToBuy(link: Element): boolean {
  const [picture, ...more] = link.children;
  if (picture?.tagName !== "IMG" || more.length > 0 || link.textContent.trim()) return false;
  const file =
    picture
      .getAttribute("src")
      ?.replace(/.*\//, "")
      .replace(/[_.-]+/g, " ") ?? "";
  return BUY.test(`${picture.getAttribute("alt")}\n${file}`);
}

/** Whether a button, a link or a form puts a product into a basket. */
export const buys = (button: Element): boolean => {
  const said = ["class", "id", "value", "action", "alt", "src"].map((name) => button.getAttribute(name));
  const text = button.textContent.slice(0, 200).replace(/\s+/g, " ");
  if (BUY.test(said.join("\n")) || button.getAttribute("name") === "add") return true;
  if (isCalledBuy(button)) return true;
  if (button.matches("[type=image]") && PRESSED_CART.test(button.getAttribute("src") ?? "")) return true;
  return saysToBuy(text.slice(0, 80)) || (button.tagName === "A" && showsToBuy(button));
};

/** Whether a text says to buy, or that something is sold out. */
export const saysToBuy = (text: string): boolean =>
  (BUY.test(text) && !LOOKS.test(text)) || BUY_ALONE.test(text);

/** Whether an element is a button itself and not what lies around some. */
const isOne = (element: Element): boolean =>
  !/^(DIV|SPAN)$/.test(element.tagName) || element.querySelector("a,button,input,form") === null;

/** Buttons, links and forms that may buy a product, in a document or a part of it. */
export const buttonsIn = (scope: ParentNode): readonly Element[] =>
  allIn(scope, BUTTONS).filter(isOne).slice(0, MOST_BUTTONS);

/** Links looked at between two yields. */
const STRIDE = 40;

/** Links of a document that say to buy and are not marked as buttons. */
export function* buyingLinksIn(doc: Document): Generator<undefined, readonly Element[], undefined> {
  const found: Element[] = [];
  for (const [i, link] of allIn(doc, "a[href]").slice(0, MOST_BUTTONS).entries()) {
    if (i % STRIDE === 0) yield;
    if (!link.matches(BUTTONS) && buys(link)) found.push(link);
  }
  return found;
}

/** Whether something in an element says to buy, a button or a plain link. */
export const sells = (element: Element): boolean =>
  buttonsIn(element).some(buys) || allIn(element, "a[href]").slice(0, MOST_BUTTONS).some(buys);

/** What says that it opens the page of a product. Common practice, no source. */
const SHOWS =
  /(view|see|show|open|zum|ansehen|voir|ver|vedi|bekijk|visa|zobacz|arat[aă]|vezi|detalii|lihat|xem|смотреть|переглянути).{0,12}(product|produs|produit|produkt|producto|produto|prodotto|item|artikel|товар|sản phẩm)|(product|produkt|produs) (ansehen|details|detail)/i;

/** Whether a button or a link says that it opens the page of a product. */
export const opensProduct = ({ textContent }: Element): boolean =>
  SHOWS.test(textContent.slice(0, 80).replace(/\s+/g, " "));

/** Fields in a document that say how many to buy: beside a price they tell as much as a button in any language. */
export const quantitiesIn = (doc: Document): readonly Element[] =>
  allIn(doc, QUANTITIES).slice(0, MOST_BUTTONS);
