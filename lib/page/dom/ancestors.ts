type Getter<T> = (this: Node) => T | null;

/** How the platform itself reads a property of nodes: a form answers with its field of that name, where it has one. */
function getterOf<T>(node: Node, name: "parentElement" | "parentNode"): Getter<T> {
  let prototype: object | null = Object.getPrototypeOf(node);
  while (prototype && !Object.hasOwn(prototype, name)) prototype = Object.getPrototypeOf(prototype);
  const getter = prototype && Object.getOwnPropertyDescriptor(prototype, name)?.get;
  if (!getter) throw new TypeError("Only a node has a parent.");
  return getter;
}

let readElement: Getter<Element> | undefined;
let readNode: Getter<ParentNode> | undefined;

/** What is read of elements, apart from what any answer will do for. */
const READ = (
  "localName textContent ownerDocument children classList matches closest contains querySelector querySelectorAll " +
  "getAttribute getAttributeNames getBoundingClientRect compareDocumentPosition checkVisibility append getRootNode " +
  "getAnimations addEventListener childNodes firstElementChild lastElementChild isConnected offsetWidth offsetHeight " +
  "clientLeft clientTop scrollLeft scrollTop baseURI"
).split(" ");

/** Whether an element answers for itself: a form with a field called `matches` has no such method. */
export const isPlain = (element: Element): boolean => {
  const name: unknown = element.localName;
  return (typeof name === "string" && name !== "form") || !READ.some((one) => Object.hasOwn(element, one));
};

/**
 * The element around a node that answers for itself; around what hangs in an open shadow root, the element that root
 * belongs to. Whoever climbs up by this comes to an end, whatever a page names its fields.
 */
export function parentOf(node: Node): Element | null {
  readElement ??= getterOf<Element>(node, "parentElement");
  const parent = readElement.call(node);
  if (parent) return isPlain(parent) ? parent : parentOf(parent);
  readNode ??= getterOf<ParentNode>(node, "parentNode");
  const root = readNode.call(node);
  return root && "host" in root ? (root.host as Element) : null;
}

/** Elements that hold everything, so that meeting in them means nothing. */
export const WHOLE = /^(HTML|BODY|MAIN)$/;

/** The nearest of an element and its ancestors that fits, or null. */
export function nearest(element: Element | null, fits: (element: Element) => boolean): Element | null {
  let up = element;
  while (up && !fits(up)) up = parentOf(up);
  return up;
}

/** Whether the second of two elements stands behind the first or in it. */
export const follows = (one: Element, other: Element): boolean =>
  (one.compareDocumentPosition(other) & 4) > 0;

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

/** What matches inside, of what answers for itself. */
export const allIn = (scope: ParentNode, selector: string): Element[] =>
  [...scope.querySelectorAll(selector)].filter(isPlain);

/** What matches in (or is) an element; only what is inside a document or a shadow root. */
export function within(scope: ParentNode, selector: string): Element[] {
  const inside = allIn(scope, selector);
  return "matches" in scope && (scope as Element).matches(selector) ? [scope as Element, ...inside] : inside;
}
