import base from "./base.css?inline";
import { onPerson } from "./make.ts";
import { ourHosts } from "./our-hosts.ts";

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
 * page says reaches it. It is as visible and as pressable as what it hangs on: a slide that a page hides must not catch
 * a press.
 */
const HOST_RULES = `
:host{all:initial!important;position:absolute!important;inset:0 auto auto 0!important;
display:block!important;direction:ltr!important;visibility:inherit!important;pointer-events:inherit!important}
:host::before,:host::after{content:none!important}
:host([popover]){position:fixed!important;visibility:visible!important;pointer-events:none!important}
:host([popover]:not(:popover-open)){display:none!important}
@media print{:host{display:none!important}}`;

/**
 * An element like any other: a name of our own, even a random one, would tell the page who is here. Of the tags that may
 * bear a shadow root, `span` alone may stand in a paragraph, should a page write its markup down and read it again, and
 * no rule for `span` reaches it. Rules that count children are the same for every tag; `perch.ts` looks after those. A copy
 * the page makes of it lacks the shadow root that dresses it, and stays out of sight by being `hidden`.
 */
const HOST_TAG = "span";

const sheets = new Map<string, CSSStyleSheet>();

/** One sheet for all hosts of a kind, whatever their number. */
export function sheetOf(css: string): CSSStyleSheet {
  const sheet = sheets.get(css) ?? new CSSStyleSheet();
  if (!sheets.has(css)) sheet.replaceSync(css);
  sheets.set(css, sheet);
  return sheet;
}

/** Puts the host around `inner` into a layer (`z-index`) of the page; null: where the page's own order puts it. */
export function liftHost(inner: Element, layer: number | null): void {
  const tree = inner.getRootNode();
  if (!(tree instanceof ShadowRoot)) return;
  const [dress, ...lifted] = tree.adoptedStyleSheets;
  const lift = layer === null ? [] : [sheetOf(`:host{z-index:${layer}!important}`)];
  if (dress && lifted.length + lift.length) tree.adoptedStyleSheets = [dress, ...lift];
}

/**
 * Makes all badges invisible until the function that it returns is called: by what is inside of them alone, which no page
 * can ask about.
 */
export function hideAllInHosts(): () => void {
  const hidden = [...sheets.values()];
  for (const sheet of hidden) sheet.insertRule("*{opacity:0!important}");
  return () => {
    for (const sheet of hidden.splice(0)) sheet.deleteRule(0);
  };
}

/** An element that a page can neither look into nor restyle, dressed by `css` alone. */
export function makeHost(inner: HTMLElement, css: string): HTMLElement {
  const host = document.createElement(HOST_TAG);
  host.hidden = true;
  ourHosts.add(host);
  const shadow = host.attachShadow({ mode: "closed" });
  shadow.adoptedStyleSheets = [sheetOf(HOST_RULES + base + css)];
  shadow.append(inner);
  for (const type of KEPT)
    inner.addEventListener(type, (event) => event.stopPropagation(), { passive: true });
  // A badge inside a link must not follow it.
  onPerson(inner, "click", (event) => event.preventDefault());
  return host;
}
