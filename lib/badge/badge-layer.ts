import { type Badge, makeBadge } from "./badge.ts";
import type { Place } from "./hang.ts";
import { hangUnnoticed, riseUnnoticed } from "./hang-unnoticed.ts";
import { inTurns } from "./in-turns.ts";

/** A badge that hangs on the whole page shows only while at least this share of its picture, or of a screenful of it, does. Layout choice. */
const SHARE_IN_VIEW = 0.5;

/** The place of a badge that is not to be seen. */
const NOWHERE: Place = { left: 0, bottom: 0, width: 0 };

export interface BadgeLayer {
  /** Makes a badge and hangs it soon. `open` is called when a person presses it. */
  readonly hang: (picture: HTMLElement, root: Element, open: () => void) => Badge;
  /** Hangs badges again that the page dropped. */
  readonly rehang: (badges: Iterable<Badge>) => void;
  /** Puts badges clear of what came on to their pictures. */
  readonly refit: (badges: readonly Badge[]) => void;
}

/**
 * Hangs badges on pictures and keeps them in place without touching the page's own elements. Measures before it
 * moves, when the browser says that a size changed. All are gone when `signal` aborts.
 */
export function badgeLayer(signal: AbortSignal): BadgeLayer {
  const badges = new Map<Element, Badge>();
  /** Badges whose pictures show too little, or of which nobody has told yet. */
  const outOfView = new Set<Badge>();
  const waiting = new Set<Badge>();
  /** Nobody has seen yet whether their own product covers them. */
  const unseen = new Set<Badge>();

  /** It may be gone by its turn. */
  const isHere = (badge: Badge) => badges.get(badge.picture) === badge;
  const placed = (badge: Badge) => {
    const isOut = outOfView.has(badge) && badge.perch.adrift();
    return { badge, place: isOut ? NOWHERE : badge.measure() };
  };
  const placeThem = (some: readonly ReturnType<typeof placed>[]) => {
    for (const { badge, place } of some) badge.place(place);
  };
  const hangAll = () => {
    const loose = [...waiting];
    waiting.clear();
    void inTurns(loose, (badge) => (isHere(badge) && badge.loose() ? badge.ready() : null), hangUnnoticed);
  };
  const hangSoon = (badge: Badge) => {
    // Badges that come together are all measured before the first is hung: each would make the browser lay out anew.
    if (!waiting.size) queueMicrotask(hangAll);
    waiting.add(badge);
  };
  const among = (entries: readonly { target: Element }[]) =>
    entries.flatMap(({ target }) => badges.get(target) ?? []);
  /** Badges to be seen that nothing moves along with their picture. */
  const afloat = () => [...badges.values()].filter((badge) => !outOfView.has(badge) && badge.perch.adrift());

  /** Puts badges over their own product where it covers them, now that they can be seen. */
  const riseAll = (seen: readonly Badge[]) => {
    const measure = (badge: Badge) => {
      const cover = unseen.has(badge) && !outOfView.has(badge) ? badge.cover() : undefined;
      if (cover === undefined) return null;
      unseen.delete(badge);
      const rise = cover && badge.perch.rise(cover);
      return rise && { badge, perch: badge.perch, look: badge.perch.look(), rise };
    };
    void inTurns(seen, measure, (covered) => {
      riseUnnoticed(covered);
      placeThem(covered.map(({ badge }) => placed(badge)));
    });
  };

  /** Hangs badges nearer to their pictures whose surroundings have met their code. */
  const wake = (some: readonly Badge[]) => {
    for (const badge of some) if (badge.perch.wake()) hangSoon(badge);
  };

  /** Puts badges where they belong now, a few at a time. */
  const settle = (some: readonly Badge[]) => {
    wake(some);
    void inTurns(some, (badge) => (isHere(badge) ? placed(badge) : null), placeThem).then(() =>
      riseAll(some),
    );
  };
  const refit = (some: readonly Badge[]) => {
    for (const badge of some) badge.resurvey();
    settle(some);
  };

  const sizes = new ResizeObserver((entries) => {
    refit(among(entries));
    // What grew may have pushed others down the page.
    placeThem(afloat().map(placed));
  });
  const views = new IntersectionObserver(
    (entries) => {
      for (const { target, intersectionRatio, boundingClientRect } of entries) {
        const badge = badges.get(target);
        const share = intersectionRatio * Math.max(1, boundingClientRect.height / innerHeight);
        if (badge) outOfView[share < SHARE_IN_VIEW ? "add" : "delete"](badge);
      }
      settle(among(entries));
    },
    { threshold: [0, SHARE_IN_VIEW, 1] },
  );

  let frame = false;
  const follow = () => {
    if (frame || !afloat().length) return;
    frame = true;
    requestAnimationFrame(() => {
      frame = false;
      wake(afloat());
      placeThem(afloat().map(placed));
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
        for (const some of [outOfView, waiting, unseen]) some.delete(badge);
        sizes.unobserve(picture);
        views.unobserve(picture);
      });
      badges.set(picture, badge);
      unseen.add(badge);
      outOfView.add(badge);
      hangSoon(badge);
      sizes.observe(picture);
      views.observe(picture);
      return badge;
    },
  };
}
