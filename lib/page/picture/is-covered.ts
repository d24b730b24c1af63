import { parentOf } from "../dom/ancestors.ts";

/** The part of a picture from which on another hides it. Layout choice. */
const MOST_OF_IT = 0.8;

/** How an element is painted among its siblings: 0 where it flows with them, its rank where it is placed by itself. */
function rankOf(element: Element): { readonly placed: boolean; readonly rank: number } {
  const style = element.ownerDocument.defaultView?.getComputedStyle(element);
  const placed = (style?.position ?? "static") !== "static";
  return { placed, rank: placed ? Number.parseInt(style?.zIndex ?? "", 10) || 0 : 0 };
}

/** The elements from one up to another, without that. */
function upTo(element: Element, end: Element | null): readonly Element[] {
  const chain: Element[] = [];
  for (let up: Element | null = element; up && up !== end; up = parentOf(up)) chain.push(up);
  return chain;
}

/** Whether something between an element and what is around it cannot be seen. */
const isClear = (chain: readonly Element[]): boolean =>
  chain.some((one) => {
    const style = one.ownerDocument.defaultView?.getComputedStyle(one);
    return style?.opacity === "0" || style?.visibility === "hidden";
  });

/** How much of a box another one covers, from 0 to 1. */
function overlap(box: DOMRect, other: DOMRect): number {
  const width = Math.min(box.right, other.right) - Math.max(box.left, other.left);
  const height = Math.min(box.bottom, other.bottom) - Math.max(box.top, other.top);
  return width > 0 && height > 0 ? (width * height) / (box.width * box.height) : 0;
}

/** A picture and its box. */
type Boxed = readonly [picture: Element, box: DOMRect | undefined];

/** Whether another picture of one product is painted over this one: placed by itself, at the same spot, and not see-through. */
export function isCovered([picture, box]: Boxed, [other, otherBox]: Boxed): boolean {
  if (!box || !otherBox || overlap(box, otherBox) < MOST_OF_IT) return false;
  if (picture.contains(other) || other.contains(picture)) return false;
  let around = parentOf(picture);
  while (around && !around.contains(other)) around = parentOf(around);
  const [own, over] = [upTo(picture, around), upTo(other, around)];
  const [below, above] = [own.at(-1), over.at(-1)];
  if (!below || !above || isClear(over)) return false;
  const [a, b] = [rankOf(below), rankOf(above)];
  if (!b.placed || b.rank < a.rank) return false;
  return b.rank > a.rank || !a.placed || (below.compareDocumentPosition(above) & 4) > 0;
}
