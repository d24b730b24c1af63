import { parentOf } from "../dom/ancestors.ts";
import { MOST_NODES, MOST_SHADOWS, NODES_STRIDE } from "../dom/bounds.ts";
import { isPriceLabel, LABELLED_PRICE } from "./price-label.ts";
import { DIGITS, FIGURE, namesMoney } from "./scan-money.ts";
import { LONGEST_SOURCE, LONGEST_TAG } from "./tag-size.ts";

/** What holds no text of the page. */
const NO_TEXT = "script,style,noscript,template,option,textarea";

/** A number of two figures or more, as a price cut from its sign is written. */
const NUMBER = new RegExp(`^[${DIGITS}][${DIGITS} .,'’٬٫]*[${DIGITS}]$`);

/** Whether a text names money, is a number alone, or says that a price follows. */
function tellsPrice(node: Node): boolean {
  const written = node.nodeValue ?? "";
  if (written.length > LONGEST_SOURCE) return false;
  const text = written.replace(/\s+/g, " ").trim();
  if (text.length > LONGEST_TAG) return false;
  const tells = FIGURE.test(text)
    ? NUMBER.test(text) || namesMoney(text) || LABELLED_PRICE.test(text.toLowerCase())
    : isPriceLabel(text);
  return tells && !parentOf(node)?.closest(NO_TEXT);
}

/** Whether elements and what hangs in their open shadow roots may show a price; and those roots, as far as was looked. */
export function* mentionsPrices(
  scopes: readonly Element[],
): Generator<undefined, { readonly prices: boolean; readonly shadows: readonly ShadowRoot[] }, undefined> {
  const shadows: ShadowRoot[] = [];
  const roots: (Element | ShadowRoot)[] = [...scopes];
  let nodes = 0;
  for (const root of roots) {
    const walker = root.ownerDocument.createTreeWalker(root, 5);
    for (let node: Node | null = root; node && nodes < MOST_NODES; node = walker.nextNode()) {
      if (++nodes % NODES_STRIDE === 0) yield;
      if (node.nodeType === 3 && tellsPrice(node)) return { prices: true, shadows };
      const shadowRoot = node.nodeType === 1 ? (node as Element).shadowRoot : null;
      if (!shadowRoot || roots.length >= MOST_SHADOWS) continue;
      shadows.push(shadowRoot);
      roots.push(shadowRoot);
    }
  }
  return { prices: false, shadows };
}
