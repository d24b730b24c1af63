import { isPlain, parentOf } from "../page/dom/ancestors.ts";

/** A picture's place in the element its badge hangs on, in CSS pixels. */
export interface Place {
  readonly left: number;
  readonly bottom: number;
  readonly width: number;
}

/** What the platform itself says of an element: a form answers with its field of that name, where it has one. */
const told = <K extends keyof HTMLElement>(element: HTMLElement, name: K): HTMLElement[K] =>
  Reflect.get(Object.getPrototypeOf(element), name, element);

/** The nearest positioned element around another. */
function offsetParentOf(element: HTMLElement): HTMLElement | null {
  const offsetParent = told(element, "offsetParent");
  return offsetParent instanceof HTMLElement ? offsetParent : null;
}

/**
 * Markup that waits to be taken over by its code, long after the page came to rest: when it is seen, touched or needed.
 * Such code may compare every child with what it expects, and these marks go once it has (habits of open frameworks).
 */
const ASLEEP = "[ssr],[ngh],[ngb],[defer-hydration],[data-hydrate],is-land:not([ready])";

/** The markup around an element that still waits for its code, or null. */
export const asleepAround = (element: Element): Element | null => element.closest(ASLEEP);

/**
 * The elements inside a product that move, clip and hide with its picture and that a host can hang on without the
 * page's layout noticing, the nearest first; last the dialog around it, since what is outside of an open one is not seen.
 * None of them waits for its code.
 */
export function hangersOf(picture: HTMLElement, root: Element): HTMLElement[] {
  const hangers: HTMLElement[] = [];
  let hanger = picture instanceof HTMLImageElement ? offsetParentOf(picture) : picture;
  while (hanger && root.contains(hanger)) {
    // Firefox gives no events to what is inside a button.
    const button: HTMLElement | null = isPlain(hanger) ? hanger.closest("button") : null;
    // A table cell is an offset parent without being positioned.
    const positioned = getComputedStyle(hanger).position !== "static";
    if (!button && positioned && isPlain(hanger)) hangers.push(hanger);
    hanger = offsetParentOf(button ?? hanger);
  }
  const dialog = parentOf(root)?.closest<HTMLElement>("dialog,[popover]");
  if (dialog && getComputedStyle(dialog).position !== "static") hangers.push(dialog);
  return hangers.filter((one) => !asleepAround(one));
}

/**
 * Where the picture is in its hanger, by layout alone, so that hover effects do not count; in one that does not move with
 * it (`adrift`), where it is seen. Null: on the whole page.
 */
export function placeOf(picture: HTMLElement, hanger: HTMLElement | null, adrift: boolean): Place {
  if (!hanger || adrift) {
    const { left, bottom, width } = picture.getBoundingClientRect();
    if (!hanger) return { left: left + scrollX, bottom: bottom + scrollY, width };
    const box = hanger.getBoundingClientRect();
    return {
      left: left - box.left - hanger.clientLeft + hanger.scrollLeft,
      bottom: bottom - box.top - hanger.clientTop + hanger.scrollTop,
      width,
    };
  }
  let left = 0;
  let bottom = picture.offsetHeight;
  for (let at: HTMLElement | null = picture; at && at !== hanger; at = offsetParentOf(at)) {
    left += told(at, "offsetLeft") + (at === picture ? 0 : told(at, "clientLeft"));
    bottom += told(at, "offsetTop") + (at === picture ? 0 : told(at, "clientTop"));
  }
  return { left, bottom, width: picture.offsetWidth };
}
