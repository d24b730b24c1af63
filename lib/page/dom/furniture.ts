import { nameOf, parentOf } from "./ancestors.ts";
import { buttonsIn, buys } from "./buttons.ts";

const FURNITURE =
  "nav:not(main nav,[role=main] nav),body>header,header:has(nav),dialog,[role=dialog],[role=navigation],[role=menu],[role=banner],[aria-modal=true]";
const WINDOW =
  /(mini|side|fly|ajax|off)[-_]?cart|cart[-_]?(drawer|item|content|dropdown|side|popup|widget|panel|flyout)|modal|pop-?up|mega-?menu|drawer|toast|off-?canvas|menu|[-_]nav\b|\bnav[-_]|lightbox|quick-?view-(content|inner)/i;
/** Footers from which on each is that of a tile, but the last. */
const MANY_FOOTERS = 4;

/** Whether an element is the foot of the page and not of one of many parts. */
function isFoot(element: Element): boolean {
  if (element.tagName !== "FOOTER") return false;
  const all = element.ownerDocument.getElementsByTagName("footer");
  return all.length < MANY_FOOTERS || element === all[all.length - 1];
}

/** Buttons from which on what lies in the head of a page is for sale; a preview of a basket has one. */
const MANY_BUTTONS = 3;

/** Whether the head of a page holds what it sells: beginners put all of it there. */
const isShop = (element: Element): boolean =>
  element.tagName === "HEADER" && buttonsIn(element).filter(buys).length >= MANY_BUTTONS;

/** What is, or lies in, panels of tabs. */
export const TAB = '[role=tabpanel],[class*="tab"]';

/** Whether an element waits beside the window, as a drawer does before it slides in. */
function isBeside(element: Element): boolean {
  const { left, right, width } = element.getBoundingClientRect();
  return width > 0 && (right <= 0 || left >= element.ownerDocument.documentElement.clientWidth);
}

/** What can be seen of elements, asked for once each; for one reading, in which nothing on the page is changed. */
export interface Furniture {
  /** Whether the element lies apart from what the page offers: in its navigation, its footer, a dialog, a drawer. */
  isApart(element: Element): boolean;
  /** Whether the element is displayed. Opacity does not count: content is often revealed on scroll. */
  isHidden(element: Element): boolean;
}

/** Tells the furniture of a page (menus, drawers, pop-ups, what is not displayed) from what it offers. */
export function findFurniture(): Furniture {
  const known = new Map<Element, boolean>();
  const isHidden = (element: Element) =>
    element.matches("details:not([open])") || !element.checkVisibility({ visibilityProperty: true });
  function judge(element: Element): boolean {
    if ((element.matches(FURNITURE) && !isShop(element)) || isFoot(element)) return true;
    if (element.tagName === "BODY") return false;
    const position = element.ownerDocument.defaultView?.getComputedStyle(element).position;
    if (position === "fixed" && (isBeside(element) || !element.querySelector("main,h1"))) return true;
    return (
      WINDOW.test(`${nameOf(element)} ${element.localName}`) && (position === "absolute" || isHidden(element))
    );
  }
  function isApart(element: Element): boolean {
    let apart = known.get(element);
    if (apart === undefined) {
      const parent = parentOf(element);
      apart = (parent !== null && isApart(parent)) || judge(element);
      known.set(element, apart);
    }
    return apart;
  }
  return { isApart, isHidden };
}

/** Whether nothing of what a tile is made of is displayed, though the element around it is; panels of tabs will be. */
export const arePutAway = (parts: readonly Element[], root: Element, { isHidden }: Furniture): boolean =>
  !isHidden(root) && parts.every((part) => isHidden(part) && !part.closest(TAB));

/** True where a list, what is around one of a single member, or a layer of the page's own is not displayed as a whole; the panels of tabs are, sooner or later. */
export function isPutAway(root: Element, { isHidden }: Furniture): boolean {
  const list = parentOf(root);
  const around = list && parentOf(list);
  if (!list || !isHidden(root) || root.closest(TAB)) return false;
  if (list.tagName === "BODY") return true;
  if (!around || !isHidden(list)) return false;
  return list.children.length > 1 || isHidden(around);
}
