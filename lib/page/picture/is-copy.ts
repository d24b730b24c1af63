/** What carousels call their copies of slides, and those that wait for their turn. */
const COPY = '[aria-hidden="true"],[class*="clone"],[class*="duplicate"]';

/** Whether an element is, or lies in, a copy of a slide or one that waits; inside `scope`, where one is given. */
export function isCopy(element: Element, scope?: Element): boolean {
  const copy = element.closest(COPY);
  return copy !== null && (!scope || scope.contains(copy));
}
