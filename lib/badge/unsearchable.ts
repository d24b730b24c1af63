import { make } from "./make.ts";
import { seal } from "./seal.ts";

/** Says words that are inert for eyes once more for those who do not see: what style sheets generate is read aloud. */
const CSS = `
.said::after{content:attr(data-words);position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}`;

/**
 * Words that a page can neither read nor search for: `window.find()` and a selection that a script moves go through closed
 * shadow roots as well, but past what is inert and what style sheets generate.
 */
export function unsearchable(words: string): HTMLElement {
  const shown = make("span", "", words);
  shown.inert = true;
  const said = make("span", "said", shown);
  said.dataset.words = words;
  return seal(CSS, said);
}

/**
 * The same for what a heading or button is known by, `name` to those who do not see: names are made of labels, not of what
 * style sheets generate.
 */
export function unsearchableName(words: string, name = words): HTMLElement {
  const shown = make("span", "", words);
  shown.inert = true;
  const named = make("span", "", shown);
  named.role = "img";
  named.ariaLabel = name;
  return seal("", named);
}
