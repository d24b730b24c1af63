import { ourHosts } from "../badge/our-hosts.ts";
import { nearest } from "../page/dom/ancestors.ts";

/** The middle of a picture, in parts of its sides: what lies beside it alone, hearts and labels, covers no cloth (our choice). */
const MIDDLE = { from: 0.25, to: 0.75 } as const;

/** The edges, half-way, where what covers more than a corner lies too; in the same parts. */
const EDGES = [0.03, 0.97] as const;

/** Elements of a product that are looked at; bounds a hostile page. */
const MOST_LOOKED_AT = 200;

/** Elements that show something whatever their style says. */
const SHOWING = "img,video,canvas,iframe,embed,object,svg,svg *";

/** No colour, as a computed style writes it (CSSOM, "Serializing CSS values"; CSS Color 4, section 15). */
const CLEAR = /^transparent$|^rgba\(.*, 0\)$|\/ 0\)$/;

/**
 * Whether a person sees the picture of a product `root` as it is inside `box` (CSS pixels of the viewport): nothing that draws lies
 * over its middle or the middle of an edge, and nothing fades, tints or blends it.
 */
export function liesBare(picture: HTMLElement, root: Element, box: DOMRectReadOnly): boolean {
  if (nearest(picture, isAltered)) return false;
  if (nearest(picture, (up) => up !== picture && root.contains(up) && hasDrawnContent(up))) return false;
  const own = ownOver(picture, root, box);
  if (own.some(({ element, x, y }) => isUntouchable(element) && draws(element, x, y))) return false;
  return [...lookouts(box), ...own].every(({ x, y }) => isOnTop(picture, x, y));
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Where it is looked from above whatever the product is made of. */
function lookouts({ left, top, width, height }: DOMRectReadOnly): Point[] {
  const inner = [MIDDLE.from, 0.5, MIDDLE.to];
  const parts = [
    ...inner.flatMap((x) => inner.map((y) => [x, y] as const)),
    ...EDGES.flatMap((at) => [[at, 0.5] as const, [0.5, at] as const]),
  ];
  return parts.map(([x, y]) => ({ x: left + x * width, y: top + y * height }));
}

/** Elements of the product that have part in the middle of its picture, each with the centre of that part. */
function ownOver(picture: Element, root: Element, box: DOMRectReadOnly): (Point & { element: Element })[] {
  const { left, top, width, height } = box;
  return [...root.querySelectorAll("*")].slice(0, MOST_LOOKED_AT).flatMap((element) => {
    if (element.contains(picture) || ourHosts.has(element)) return [];
    const its = element.getBoundingClientRect();
    const from = Math.max(its.left, left + MIDDLE.from * width);
    const to = Math.min(its.right, left + MIDDLE.to * width);
    const above = Math.max(its.top, top + MIDDLE.from * height);
    const below = Math.min(its.bottom, top + MIDDLE.to * height);
    return from < to && above < below ? { element, x: (from + to) / 2, y: (above + below) / 2 } : [];
  });
}

/** Shown in other colours than its own. */
function isAltered(element: Element): boolean {
  const { opacity, filter, mixBlendMode } = getComputedStyle(element);
  return opacity !== "1" || filter !== "none" || mixBlendMode !== "normal";
}

/** Whether it lets presses through, so that no look from above finds it. */
function isUntouchable(element: Element): boolean {
  return getComputedStyle(element).pointerEvents === "none";
}

/** Whether nothing that draws lies over the picture at a point, in any of the trees that it is in. */
function isOnTop(picture: Element, x: number, y: number): boolean {
  let shown: Element = picture;
  for (;;) {
    const tree = shown.getRootNode();
    if (!(tree instanceof Document || tree instanceof ShadowRoot)) return false;
    const found = tree.elementsFromPoint(x, y);
    const at = found.indexOf(shown);
    if (at < 0 || found.slice(0, at).some((over) => covers(over, shown, x, y))) return false;
    if (tree instanceof Document) return true;
    shown = tree.host;
  }
}

/** Whether an element that lies over another draws something there; around it, only generated content can. */
function covers(over: Element, shown: Element, x: number, y: number): boolean {
  // Of ours, badges are out of sight by now; a card lies open.
  if (ourHosts.has(over)) return over.matches(":popover-open");
  return over.contains(shown) ? hasDrawnContent(over) : draws(over, x, y);
}

function draws(element: Element, x: number, y: number): boolean {
  if (!element.checkVisibility({ checkOpacity: true, checkVisibilityCSS: true })) return false;
  return (
    element.matches(SHOWING) ||
    isPainted(getComputedStyle(element)) ||
    hasDrawnContent(element) ||
    hasTextAt(element, x, y)
  );
}

/** Whether what a style sheet generates before or after an element's own content is to be seen. */
function hasDrawnContent(element: Element): boolean {
  return ["::before", "::after"].some((part) => {
    const style = getComputedStyle(element, part);
    const { content, opacity } = style;
    if (/^(none|normal)$/.test(content) || opacity === "0") return false;
    return content !== '""' || isPainted(style);
  });
}

function isPainted({ backgroundColor, backgroundImage, backdropFilter }: CSSStyleDeclaration): boolean {
  return !CLEAR.test(backgroundColor) || backgroundImage !== "none" || (backdropFilter || "none") !== "none";
}

/** Whether a text of its own lies there; between its lines, too. */
function hasTextAt({ childNodes }: Element, x: number, y: number): boolean {
  return [...childNodes].some((child) => {
    if (child.nodeType !== Node.TEXT_NODE) return false;
    const range = new Range();
    range.selectNode(child);
    const { left, top, right, bottom } = range.getBoundingClientRect();
    return left <= x && x <= right && top <= y && y <= bottom;
  });
}
