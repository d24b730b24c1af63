import { readTag } from "./price.ts";
import { LONGEST_TAG } from "./tag-size.ts";
import type { WrittenPrice } from "./written-price.ts";

/** Fields that nobody can write in. */
export const FIELDS = "input[readonly],input[disabled]";

/** The price in such a field, with the words around it; or null. */
export function priceInField(element: Element): WrittenPrice | null {
  const said = [
    element.previousSibling?.nodeValue,
    element.getAttribute("value"),
    element.nextSibling?.nodeValue,
  ];
  const text = said.join(" ").replace(/\s+/g, " ").trim();
  const { amounts, words, denied } = readTag(text.length > LONGEST_TAG ? "" : text);
  return denied || amounts.length === 0 ? null : { element, text, tag: text, words, amounts };
}
