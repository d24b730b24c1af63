import { make } from "./make.ts";

/** Says words that are inert for eyes once more for those who do not see: what style sheets generate is read aloud. */
export const UNSEARCHABLE_CSS = `
.said::after{content:attr(data-words);position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}`;

/**
 * Words that a page cannot search for: `window.find()` and a selection that a script moves go through closed shadow
 * roots as well, but past what is inert and what style sheets generate.
 */
export function unsearchable(words: string): HTMLElement {
  const shown = make("span", "", words);
  shown.inert = true;
  const said = make("span", "said", shown);
  said.dataset.words = words;
  return said;
}

/** A heading or button, which is known by its name, with words that a page cannot search for. */
export function nameUnsearchably<T extends HTMLElement>(element: T, words: string): T {
  element.replaceChildren(unsearchable(words));
  element.ariaLabel = words;
  return element;
}
