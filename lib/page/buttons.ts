/** Buttons looked at. */
const MOST_BUTTONS = 400;

const BUY =
  /add to (my )?(cart|bag|basket|trolley)|buy (it )?now|pre-?order|sold out|in den (warenkorb|einkaufswagen)|ausverkauft|ajouter au panier|añadir|agregar|comprar|aggiungi al|in winkel|adicionar|lägg i|köp|dodaj do|カート|購入|加入|أضف|add-?_?to-?_?(cart|bag|basket)|cart\/add/i;
const BUTTONS = 'button,[type=submit],[role=button],a[class*="cart"],form[action*="cart/add"]';

/** Whether a button, a link or a form puts a product into a basket. */
export const buys = (button: Element): boolean => {
  const said = ["class", "id", "value", "action"].map((name) => button.getAttribute(name));
  return (
    BUY.test([...said, button.textContent.slice(0, 80)].join("\n")) || button.getAttribute("name") === "add"
  );
};

/** Buttons, links and forms that may buy a product, in a document or a part of it. */
export const buttonsIn = (scope: ParentNode): readonly Element[] =>
  [...scope.querySelectorAll(BUTTONS)].slice(0, MOST_BUTTONS);
