import base from "./base.css?inline";
import { onPerson } from "./make.ts";

/** What a page must not hear of what happens inside a badge or card. */
const KEPT = [
  "click",
  "auxclick",
  "dblclick",
  "contextmenu",
  "pointerdown",
  "pointerup",
  "mousedown",
  "mouseup",
  "touchstart",
  "touchend",
  "keydown",
  "keyup",
  "keypress",
  "wheel",
] as const;

/**
 * What makes a host take no room and no style of the page's: of two important rules the inner tree's wins, so nothing a
 * page says reaches it.
 */
const HOST_RULES = `
:host{all:initial!important;position:absolute!important;inset:0 auto auto 0!important;z-index:2!important;
display:block!important;direction:ltr!important;pointer-events:none!important}
:host([popover]){position:fixed!important}
:host([popover]:not(:popover-open)){display:none!important}
@media print{:host{display:none!important}}`;

/** Name of our elements, so that our own observers can tell them. */
export const HOST_TAG = "hueward-view";

const sheets = new Map<string, CSSStyleSheet>();

/** One sheet for all hosts of a kind, whatever their number. */
function sheetOf(css: string): CSSStyleSheet {
  const sheet = sheets.get(css) ?? new CSSStyleSheet();
  if (!sheets.has(css)) sheet.replaceSync(HOST_RULES + base + css);
  sheets.set(css, sheet);
  return sheet;
}

/** An element that a page can neither look into nor restyle, dressed by `css` alone. */
export function makeHost(inner: HTMLElement, css: string): HTMLElement {
  const host = document.createElement(HOST_TAG);
  const shadow = host.attachShadow({ mode: "closed" });
  shadow.adoptedStyleSheets = [sheetOf(css)];
  shadow.append(inner);
  for (const type of KEPT)
    inner.addEventListener(type, (event) => event.stopPropagation(), { passive: true });
  // A badge inside a link must not follow it.
  onPerson(inner, "click", (event) => event.preventDefault());
  return host;
}
