/** How near the screen a picture comes before it is read, in CSS pixels. */
const NEAR = "300px";

/** Tells once of each picture that is near the screen, or comes there. */
export interface NearScreen {
  /** Begins to wait for it, or does so anew. */
  readonly await: (picture: Element) => void;
  readonly forget: (picture: Element) => void;
}

export function nearScreen(came: (picture: Element) => void, signal: AbortSignal): NearScreen {
  const observer = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) {
        if (!isIntersecting) continue;
        observer.unobserve(target);
        came(target);
      }
    },
    { rootMargin: NEAR },
  );
  signal.addEventListener("abort", () => observer.disconnect());
  return {
    await(picture) {
      // Observing anew makes the observer tell where it is now.
      observer.unobserve(picture);
      observer.observe(picture);
    },
    forget: (picture) => observer.unobserve(picture),
  };
}
