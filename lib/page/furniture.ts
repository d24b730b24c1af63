import { nameOf } from "./ancestors.ts";

const FURNITURE =
  "nav,footer,body>header,header:has(nav),dialog,[role=dialog],[role=navigation],[role=menu],[role=banner],[aria-modal=true]";
const WINDOW =
  /(mini|side|fly|ajax|off)[-_]?cart|cart[-_]?(drawer|item|content|dropdown|side|popup|widget|panel|flyout)|modal|pop-?up|mega-?menu|drawer|toast|off-?canvas|lightbox|quick-?view-(content|inner)/i;
const TAB = '[role=tabpanel],[class*="tab"]';

/** What can be seen of elements, asked for once each; for one reading, in which nothing on the page is changed. */
export interface Furniture {
  /** Why nothing in this element is on offer here, in plain words; null where nothing speaks against it. */
  whyNot(element: Element): string | null;
  /** Whether the element is displayed. Opacity does not count: content is often revealed on scroll. */
  isHidden(element: Element): boolean;
}

/** Tells the furniture of a page (menus, drawers, pop-ups, what is not displayed) from what it offers. */
export function findFurniture(): Furniture {
  const known = new Map<Element, string | null>();
  const isHidden = (element: Element) => !element.checkVisibility({ visibilityProperty: true });
  function judge(element: Element): string | null {
    if (element.matches(FURNITURE)) return "in the page's navigation, footer or a dialog";
    if (element.tagName === "BODY") return null;
    const position = element.ownerDocument.defaultView?.getComputedStyle(element).position;
    if (position === "fixed" && !element.querySelector("main,h1")) return "floats above the page";
    if (WINDOW.test(nameOf(element)) && (position === "absolute" || isHidden(element)))
      return "in a drawer, menu or window of the page";
    return null;
  }
  function whyNot(element: Element): string | null {
    let why = known.get(element);
    if (why === undefined) {
      why = (element.parentElement && whyNot(element.parentElement)) ?? judge(element);
      known.set(element, why);
    }
    return why;
  }
  return { whyNot, isHidden };
}

/** True where a list of several is not displayed as a whole; the panels of tabs are, sooner or later. */
export function isPutAway(root: Element, { isHidden }: Furniture): boolean {
  const list = root.parentElement;
  return list !== null && isHidden(root) && isHidden(list) && list.children.length > 1 && !root.closest(TAB);
}
