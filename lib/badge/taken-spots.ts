import { isPlain } from "../page/dom/ancestors.ts";
import type { Spot } from "./free-place.ts";
import { ourHosts } from "./our-hosts.ts";

/** Controls and drawings stand for themselves, whatever they are made of. */
const WHOLE = "button,[role=button],svg,input,select";

/** What covers a larger share of a picture is a second picture, a link or a shade over it, not something beside the badge. */
const SHARE = 0.5;

/** Text below a picture may reach into it by its line's own leading, in CSS pixels, without a letter lying there. */
const TOUCH = 4;

/** Elements of a product that are looked at; bounds a hostile page. */
const MOST_LOOKED_AT = 200;

/** Prices, hearts, labels and the like that a product shows on its picture, or shows there under the pointer. */
export function takenSpots(picture: HTMLElement, root: Element): Spot[] {
  const box = picture.getBoundingClientRect();
  // What a page enlarges for the moment is measured as it lies.
  const scale = picture.offsetWidth / box.width || 1;
  const spots: Spot[] = [];
  for (const element of contentOf(root)) {
    if (element.contains(picture)) continue;
    const { left, top, right, bottom, width, height } = element.getBoundingClientRect();
    const across = Math.min(right, box.right) - Math.max(left, box.left);
    const down = Math.min(bottom, box.bottom) - Math.max(top, box.top);
    if (!width || !height || Math.min(across, down) <= TOUCH) continue;
    if (across * down > SHARE * box.width * box.height) continue;
    spots.push({
      left: (left - box.left) * scale,
      top: (top - box.top) * scale,
      right: (right - box.left) * scale,
      bottom: (bottom - box.top) * scale,
    });
  }
  return spots;
}

/** What a person sees of a product: its controls, and what holds text or nothing further. */
function* contentOf(root: Element): Generator<Element> {
  const walker = document.createTreeWalker(root, NodeFilter.SHOW_ELEMENT);
  let node = walker.nextNode();
  for (let looked = 0; node instanceof Element && looked < MOST_LOOKED_AT; looked++) {
    const whole = isPlain(node) && (node.matches(WHOLE) || !node.firstElementChild || hasText(node));
    if (whole && !ourHosts.has(node)) yield node;
    node = whole ? nextAfter(walker) : walker.nextNode();
  }
}

function hasText({ childNodes }: Element): boolean {
  return [...childNodes].some((child) => child.nodeType === Node.TEXT_NODE && child.nodeValue?.trim());
}

/** The next node that is not inside the current one. */
function nextAfter(walker: TreeWalker): Node | null {
  let next = walker.nextSibling();
  while (!next && walker.parentNode()) next = walker.nextSibling();
  return next;
}
