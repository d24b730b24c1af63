/**
 * How long an element must have been uncovered and in its place before a press on it counts, in milliseconds: the time
 * that browsers keep their own questions shut after a change, too short to read in (common practice, no source).
 */
const SETTLE = 500;

/** How often the browser looks at most, in milliseconds: the least that Intersection Observer v2 allows. */
const LOOK_EVERY = 100;

/** Sizes at which it can be read, as multiples of its own: a page may enlarge one button to the whole screen (our choice). */
const ZOOM = { least: 0.5, most: 2 } as const;

/** A look at whether a person sees what they press. */
export interface PlainSight {
  /** It was moved, and not by the person. */
  readonly moved: () => void;
  /** Whether nothing covers it, it is of a size to be read, and for a while it was neither covered nor moved. */
  readonly settled: () => boolean;
}

/**
 * Watches whether anything is drawn over an element, be it transparent to presses, or dims or bends it. Only Chromium
 * can tell (Intersection Observer v2, `isVisible`); elsewhere being moved alone counts.
 */
export function plainSight(element: Element): PlainSight {
  let covered = false;
  let since = Number.NEGATIVE_INFINITY;
  const note = () => {
    since = performance.now();
  };
  const options = { threshold: [0, 1], trackVisibility: true, delay: LOOK_EVERY };
  const observer = new IntersectionObserver((entries) => {
    for (const entry of entries) {
      const now = entry.isIntersecting && "isVisible" in entry && entry.isVisible === false;
      if (now || covered) note();
      covered = now;
    }
  }, options);
  observer.observe(element);
  const readable = () => {
    const { currentCSSZoom: zoom = 1 } = element;
    return zoom >= ZOOM.least && zoom <= ZOOM.most;
  };
  return { moved: note, settled: () => !covered && readable() && performance.now() - since >= SETTLE };
}
