import { type Badge, makeBadge } from "./badge.ts";

/** A badge that hangs on the whole page shows only while at least this share of its picture does. Layout choice. */
const SHARE_IN_VIEW = 0.5;

export type HangBadge = (picture: HTMLElement, root: Element, open: () => void) => Badge;

/**
 * Hangs badges on pictures and keeps them in place without touching the page's own elements. Measures all before it
 * moves any, when the browser says that a size changed. All are gone when `signal` aborts.
 */
export function badgeLayer(signal: AbortSignal): HangBadge {
  const badges = new Map<Element, Badge>();
  const hidden = new Set<Badge>();
  const waiting = new Set<Badge>();

  const hangAll = () => {
    for (const badge of waiting) badge.hang();
    waiting.clear();
  };

  const placeAll = (moved: Iterable<Badge>) => {
    const measured = [...moved].map((badge) => ({ badge, place: badge.measure() }));
    for (const { badge, place } of measured) {
      badge.place(hidden.has(badge) ? { ...place, width: 0 } : place);
    }
  };
  const among = (entries: readonly { target: Element }[]) =>
    entries.flatMap(({ target }) => badges.get(target) ?? []);
  const adrift = () => [...badges.values()].filter((badge) => badge.adrift());

  const sizes = new ResizeObserver((entries) => {
    placeAll(among(entries));
    // What grew may have pushed others down the page.
    placeAll(adrift());
  });
  const views = new IntersectionObserver(
    (entries) => {
      for (const { target, intersectionRatio } of entries) {
        const badge = badges.get(target);
        if (badge) hidden[intersectionRatio < SHARE_IN_VIEW ? "add" : "delete"](badge);
      }
      placeAll(among(entries));
    },
    { threshold: [0, SHARE_IN_VIEW] },
  );

  let frame = false;
  const follow = () => {
    if (frame || !adrift().length) return;
    frame = true;
    requestAnimationFrame(() => {
      frame = false;
      placeAll(adrift());
    });
  };
  addEventListener("scroll", follow, { passive: true, capture: true, signal });
  addEventListener("resize", follow, { passive: true, signal });
  signal.addEventListener("abort", () => {
    sizes.disconnect();
    views.disconnect();
    for (const badge of badges.values()) badge.remove();
  });

  return (picture, root, open) => {
    const badge = makeBadge(picture, root, open, () => {
      badges.delete(picture);
      hidden.delete(badge);
      waiting.delete(badge);
      sizes.unobserve(picture);
      views.unobserve(picture);
    });
    badges.set(picture, badge);
    // Badges that come together are all measured before the first is hung: each would make the browser lay out anew.
    if (!waiting.size) queueMicrotask(hangAll);
    waiting.add(badge);
    sizes.observe(picture);
    if (badge.adrift()) views.observe(picture);
    return badge;
  };
}
