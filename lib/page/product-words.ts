import { allIn, nameOf, parentOf } from "./dom/ancestors.ts";
import { plainText } from "./dom/plain-text.ts";
import type { FoundProduct } from "./product.ts";

/** Choices looked at. */
const MOST_CHOICES = 60;

const CHOSEN =
  ':checked,[aria-checked="true"],[aria-selected="true"],[aria-pressed="true"],[aria-current="true"],[class*="selected"],[class*="active"],[class*="chosen"]';

/** What colour choosers are called in markup. */
const COLOR_NAME = /colou?r|swatch|farb|couleur|kleur|färg|kolor/i;

/** Words of the chosen variant: what stands where colours are chosen, else all that is chosen. */
function chosenWords(root: Element): string {
  const words: string[] = [];
  for (const choice of allIn(root, CHOSEN).slice(0, MOST_CHOICES)) {
    const said = ["aria-label", "title", "value"]
      .map((name) => choice.getAttribute(name))
      .concat(choice.textContent)
      .map(plainText);
    const text = said.find((words) => words.length > 1 && words.length < 40) ?? "";
    const around = parentOf(choice);
    const place = [choice, around, around && parentOf(around)];
    const among = place.some(
      (near) => near && COLOR_NAME.test(`${nameOf(near)} ${near.getAttribute("name")}`),
    );
    if (text && among) return text;
    words.push(text);
  }
  return words.filter(Boolean).join("\n");
}

/** What may say where a product is worn, strongest first: its title, category, address, the page's heading. Raw text. */
export function slotTexts({ title, told, link, subject }: FoundProduct): readonly string[] {
  const path = link
    ?.replace(/[?#].*/, "")
    .split("/")
    .at(-1)
    ?.replaceAll("-", " ");
  return [title, told.category, path, subject].filter((text) => !!text).map(String);
}

/** The words that may name a product's colour: the data's, the variant chosen now, the title. Raw text. */
export function colorText({ title, told, role, root }: FoundProduct): string {
  return [told.color, role === "main" && chosenWords(root), title].filter(Boolean).join("\n");
}
