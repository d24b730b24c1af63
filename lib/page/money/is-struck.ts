/** Whether a price is crossed out. */
export const isStruck = (element: Element): boolean =>
  element.closest("s,del,strike") !== null ||
  element.ownerDocument.defaultView?.getComputedStyle(element).textDecorationLine.includes("line-through") ===
    true;
