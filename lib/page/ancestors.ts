/** The nearest of an element and its ancestors that fits, or null. */
export function nearest(element: Element | null, fits: (element: Element) => boolean): Element | null {
  let up = element;
  while (up && !fits(up)) up = up.parentElement;
  return up;
}

/** How many of these elements lie in (or are) each element above them. */
export function countUp(elements: Iterable<Element>): ReadonlyMap<Element, number> {
  const counts = new Map<Element, number>();
  for (const element of elements)
    nearest(element, (up) => {
      counts.set(up, (counts.get(up) ?? 0) + 1);
      return false;
    });
  return counts;
}

/** An element's class and id, for telling names. */
export const nameOf = (element: Element): string => `${element.getAttribute("class") ?? ""} ${element.id}`;
