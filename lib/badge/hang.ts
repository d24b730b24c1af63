import { parentOf } from "../page/ancestors.ts";

/** A picture's place in the element its badge hangs on, in CSS pixels. */
export interface Place {
  readonly left: number;
  readonly bottom: number;
  readonly width: number;
}

/** The nearest positioned element around another; null too where a form answers with its field of that name, and no climb would end. */
function offsetParentOf(element: HTMLElement): HTMLElement | null {
  const { offsetParent } = element;
  return offsetParent instanceof HTMLElement && offsetParent.contains(element) ? offsetParent : null;
}

/**
 * The elements inside a product that move, clip and hide with its picture and that a host can hang on without the
 * page's layout noticing, the nearest first; last the dialog around it, since what is outside of an open one is not seen.
 */
export function hangersOf(picture: HTMLElement, root: Element): HTMLElement[] {
  const hangers: HTMLElement[] = [];
  let hanger = picture instanceof HTMLImageElement ? offsetParentOf(picture) : picture;
  while (hanger && root.contains(hanger)) {
    // Firefox gives no events to what is inside a button.
    const button: HTMLElement | null = hanger.closest("button");
    // A table cell is an offset parent without being positioned.
    if (!button && getComputedStyle(hanger).position !== "static") hangers.push(hanger);
    hanger = offsetParentOf(button ?? hanger);
  }
  const dialog = parentOf(root)?.closest<HTMLElement>("dialog,[popover]");
  if (dialog && getComputedStyle(dialog).position !== "static") hangers.push(dialog);
  return hangers;
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
    left += at.offsetLeft + (at === picture ? 0 : at.clientLeft);
    bottom += at.offsetTop + (at === picture ? 0 : at.clientTop);
  }
  return { left, bottom, width: picture.offsetWidth };
}
