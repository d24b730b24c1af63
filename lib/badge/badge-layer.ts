import { type Badge, makeBadge } from "./badge.ts";

/** A badge that hangs on the whole page shows only while at least this share of its picture does. Layout choice. */
const SHARE_IN_VIEW = 0.5;

export interface BadgeLayer {
  /** Makes a badge and hangs it soon. `open` is called when a person presses it. */
  readonly hang: (picture: HTMLElement, root: Element, open: () => void) => Badge;
  /** Hangs badges again that the page dropped. */
  readonly rehang: (badges: Iterable<Badge>) => void;
  /** Puts badges clear of what came on to their pictures. */
  readonly refit: (badges: readonly Badge[]) => void;
}

/**
 * Hangs badges on pictures and keeps them in place without touching the page's own elements. Measures all before it
 * moves any, when the browser says that a size changed. All are gone when `signal` aborts.
 */
export function badgeLayer(signal: AbortSignal): BadgeLayer {
  const badges = new Map<Element, Badge>();
  const hidden = new Set<Badge>();
  const waiting = new Set<Badge>();
  /** Nobody has seen yet whether their own product covers them. */
  const unseen = new Set<Badge>();

  const placeAll = (moved: readonly Badge[]) => {
    const measured = moved.map((badge) => ({ badge, place: badge.measure() }));
    for (const { badge, place } of measured) {
      badge.place(hidden.has(badge) ? { ...place, width: 0 } : place);
    }
  };
  const refit = (some: readonly Badge[]) => {
    for (const badge of some) badge.survey();
    placeAll(some);
  };
  const hangAll = () => {
    let loose = [...waiting].filter((badge) => badge.loose());
    waiting.clear();
    let before = loose.map(({ perch }) => perch.look());
    for (const badge of loose) badge.hang();
    for (;;) {
      loose = loose.filter(({ perch }, index) => perch.look() !== before[index]);
      if (!loose.length) return;
      for (const { perch } of loose) perch.retreat();
      before = loose.map(({ perch }) => perch.look());
      for (const { perch } of loose) perch.hang();
    }
  };
  const hangSoon = (badge: Badge) => {
    // Badges that come together are all measured before the first is hung: each would make the browser lay out anew.
    if (!waiting.size) queueMicrotask(hangAll);
    waiting.add(badge);
  };
  const among = (entries: readonly { target: Element }[]) =>
    entries.flatMap(({ target }) => badges.get(target) ?? []);
  const adrift = () => [...badges.values()].filter(({ perch }) => perch.adrift());

  /** Puts badges over their own product where it covers them, now that they can be seen. */
  const riseAll = (seen: readonly Badge[]) => {
    const covered = seen.filter((badge) => {
      const isCovered = badge.covered();
      if (isCovered !== null) unseen.delete(badge);
      return isCovered;
    });
    const before = covered.map(({ perch }) => perch.look());
    for (const badge of covered) badge.rise();
    const misfits = covered.filter(({ perch }, index) => perch.look() !== before[index]);
    for (const { perch } of misfits) perch.sink();
    placeAll(covered);
  };

  const sizes = new ResizeObserver((entries) => {
    refit(among(entries));
    // What grew may have pushed others down the page.
    placeAll(adrift());
  });
  const views = new IntersectionObserver(
    (entries) => {
      for (const { target, intersectionRatio } of entries) {
        const badge = badges.get(target);
        if (badge?.perch.adrift()) hidden[intersectionRatio < SHARE_IN_VIEW ? "add" : "delete"](badge);
      }
      const seen = among(entries);
      placeAll(seen.filter(({ perch }) => perch.adrift()));
      riseAll(seen.filter((badge) => unseen.has(badge)));
    },
    { threshold: [0, SHARE_IN_VIEW, 1] },
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

  return {
    refit,
    rehang(some) {
      for (const badge of some) if (badge.loose()) hangSoon(badge);
    },
    hang(picture, root, open) {
      const badge = makeBadge(picture, root, open, () => {
        badges.delete(picture);
        for (const some of [hidden, waiting, unseen]) some.delete(badge);
        sizes.unobserve(picture);
        views.unobserve(picture);
      });
      badges.set(picture, badge);
      unseen.add(badge);
      hangSoon(badge);
      sizes.observe(picture);
      views.observe(picture);
      return badge;
    },
  };
}
