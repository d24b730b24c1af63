/** The element around another; around what hangs in an open shadow root, the element that root belongs to. */
export function parentOf({ parentElement, parentNode }: Element): Element | null {
  return parentElement ?? (parentNode && "host" in parentNode ? (parentNode.host as Element) : null);
}

/** The nearest of an element and its ancestors that fits, or null. */
export function nearest(element: Element | null, fits: (element: Element) => boolean): Element | null {
  let up = element;
  while (up && !fits(up)) up = parentOf(up);
  return up;
}

/** Counts an element for itself and each element above it. */
export function countUp(counts: Map<Element, number>, element: Element): void {
  nearest(element, (up) => {
    counts.set(up, (counts.get(up) ?? 0) + 1);
    return false;
  });
}

/** Puts a value to the others of its group. */
export function addTo<K, V>(groups: Map<K, V[]>, key: K, value: V): void {
  const group = groups.get(key);
  if (group) group.push(value);
  else groups.set(key, [value]);
}

/** An element's class and id, for telling names. */
export const nameOf = (element: Element): string => `${element.getAttribute("class") ?? ""} ${element.id}`;

/** What matches in (or is) an element; only what is inside a document or a shadow root. */
export function within(scope: ParentNode, selector: string): Element[] {
  const inside = [...scope.querySelectorAll(selector)];
  return "matches" in scope && (scope as Element).matches(selector) ? [scope as Element, ...inside] : inside;
}
