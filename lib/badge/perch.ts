import { isPlain, nearest, parentOf } from "../page/dom/ancestors.ts";
import { asleepAround, hangersOf } from "./hang.ts";
import { liftHost } from "./host.ts";

/** Positions of what does not scroll with the page. */
const STAYING = /fixed|sticky/;

/** Where a badge's host hangs, and where else it may. */
export interface Perch {
  /** Null: on the whole page. */
  hanger(): HTMLElement | null;
  /** Whether the host hangs outside its product for want of a positioned element, so that nothing moves it along. */
  adrift(): boolean;
  hang(): void;
  /** Takes the host off, to be hung anew, where it had to stay out of markup that has met its code by now. */
  wake(): boolean;
  /** Takes the host off where the page's layout noticed it, to be hung one place further out; false where there is none. */
  retreat(): boolean;
  /** What a person may see of the product beside us: must be the same before and after we hang something. */
  look(): string;
  /** What of the product itself lies over this point of the badge, in CSS pixels of the viewport; null: nothing; undefined: the point is out of view or under something else. */
  cover(x: number, y: number): Element | null | undefined;
  /** Whether something that stays on the screen while the page scrolls lies over the product at this point. */
  buried(x: number, y: number): boolean;
  /** Looks how to hang the host over what covers it; null where that is not the product's own. Only the answer changes the page. */
  rise(cover: Element): (() => void) | null;
  /** Hangs it where it was before it rose. */
  sink(): void;
}

/** Hangs `host` with the drawing `inner` on the product `root` and its `picture`. */
export function makePerch(host: HTMLElement, inner: HTMLElement, picture: HTMLElement, root: Element): Perch {
  let hangers = hangersOf(picture, root);
  let asleep = asleepAround(picture);
  let at = 0;
  let before = 0;
  const hanger = () => hangers[at] ?? null;
  const tree = () => {
    const top = root.getRootNode();
    return top instanceof Document || top instanceof ShadowRoot ? top : document;
  };
  const hangAt = (place: number) => {
    at = place;
    (hanger() ?? document.documentElement).append(host);
  };
  const lookAround = () => {
    hangers = hangersOf(picture, root);
    asleep = asleepAround(picture);
    at = 0;
  };
  return {
    hanger,
    adrift: () => !root.contains(hanger()),
    hang() {
      if (hanger()?.isConnected === false) lookAround();
      hangAt(at);
    },
    wake() {
      if (!asleep || !picture.isConnected || asleepAround(picture)) return false;
      lookAround();
      host.remove();
      return true;
    },
    retreat() {
      host.remove();
      at += 1;
      return at <= hangers.length;
    },
    look: () => [root, picture, ...hangers.map((one) => lastIn(one, host))].map(lookOf).join(),
    cover(x, y) {
      const found = tree().elementFromPoint(x, y);
      if (found === host) return null;
      return found && root.contains(found) ? found : undefined;
    },
    buried(x, y) {
      const found = tree()
        .elementsFromPoint(x, y)
        .find((element) => element !== host);
      return (
        nearest(found ?? null, (up) => STAYING.test(getComputedStyle(up).position) && !holds(up, root)) !==
        null
      );
    },
    rise(cover) {
      const out = hangers.findIndex((one, index) => index >= at && one.contains(cover));
      const outer = hangers[out];
      if (!outer) return null;
      const layer = layerOf(cover, outer);
      return () => {
        before = at;
        hangAt(out);
        liftHost(inner, layer);
      };
    },
    sink() {
      hangAt(before);
      liftHost(inner, null);
    },
  };
}

/** Whether `outer` is around `inner`, over the borders of shadow trees too. */
function holds(outer: Element, inner: Element): boolean {
  return nearest(inner, (up) => up === outer) !== null;
}

/** The last element beside a host: rules for `:last-child` make a difference to it. */
function lastIn({ lastElementChild }: Element, host: Element): Element | null {
  return lastElementChild === host ? host.previousElementSibling : lastElementChild;
}

function lookOf(element: Element | null): string {
  if (!element || !isPlain(element)) return "";
  const { x, y, width, height } = element.getBoundingClientRect();
  const { opacity, visibility } = getComputedStyle(element);
  // What fades in has not changed yet, but is about to.
  return [x, y, width, height, opacity, visibility, element.getAnimations().length].join(" ");
}

/** The highest layer of the page's that has its part in `element` lying where it lies inside `outer`. */
function layerOf(element: Element, outer: Element): number {
  const layers = [getComputedStyle(element, "::before").zIndex, getComputedStyle(element, "::after").zIndex];
  for (let up: Element | null = element; up && up !== outer; up = parentOf(up))
    layers.push(getComputedStyle(up).zIndex);
  return Math.max(0, ...layers.map(Number).filter(Number.isFinite));
}
