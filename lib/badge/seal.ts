import base from "./base.css?inline";
import { sheetOf } from "./host.ts";
import { make } from "./make.ts";

const SEAL_RULES = ":host{min-width:0;pointer-events:none}";

/**
 * A place inside our trees for what no page may read. Firefox hands every listener the innermost element that the pointer
 * is on or that has the focus (`originalTarget`), and with it the tree around that, be it closed; nothing in here ever
 * has a pointer or the focus.
 */
export function seal(css: string, ...content: readonly Node[]): HTMLElement {
  const place = make("span", "");
  const shadow = place.attachShadow({ mode: "closed" });
  shadow.adoptedStyleSheets = [sheetOf(SEAL_RULES + base + css)];
  shadow.append(...content);
  return place;
}
