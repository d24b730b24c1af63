import { SETTLE } from "./watch-page.ts";

/** What changes of pictures are told to. */
export interface PictureChanges {
  /** Pictures that were given another address just now, before the browser draws. */
  readonly touched: (pictures: readonly Element[]) => void;
  /** Pictures that were given another address; told again once its file has come, where it was not there yet. */
  readonly repictured: (pictures: readonly Element[]) => void;
  /** Pictures whose file came, with the address they had. */
  readonly loaded: (pictures: readonly Element[]) => void;
}

/**
 * Tells what becomes of the pictures that it is given, bursts together, until `signal` aborts. A file that the browser
 * alone chose, because a window grew, shows the same picture and is not told.
 */
export function watchPictures(changes: PictureChanges, signal: AbortSignal): (picture: Element) => void {
  const repictured = new Set<Element>();
  const loaded = new Set<Element>();
  const awaited = new WeakSet<EventTarget>();
  const backgrounds = new WeakMap<Element, string>();
  const watched = new WeakSet<Element>();
  let timer: ReturnType<typeof setTimeout> | undefined;

  const tell = () => {
    timer = undefined;
    if (document.hidden) return document.addEventListener("visibilitychange", soon, { once: true, signal });
    const [changed = [], come = []] = [repictured, loaded].map((some) =>
      [...some].filter((picture) => picture.isConnected),
    );
    repictured.clear();
    loaded.clear();
    for (const picture of changed)
      if (picture instanceof HTMLImageElement && !picture.complete) awaited.add(picture);
    if (changed.length) changes.repictured(changed);
    if (come.length) changes.loaded(come);
  };
  const soon = () => {
    timer ??= setTimeout(tell, SETTLE);
  };
  const observer = new MutationObserver((records) => {
    const touched = records.flatMap(({ target }) => {
      const picture =
        target instanceof HTMLSourceElement ? target.parentElement?.querySelector("img") : target;
      return picture instanceof Element && watched.has(picture) && hasChanged(picture) ? picture : [];
    });
    if (!touched.length) return;
    for (const picture of touched) repictured.add(picture);
    changes.touched(touched);
    soon();
  });
  /** A background picture changes only where its address does: pages move and fade such elements by their style, too. */
  const hasChanged = (picture: Element) => {
    const background = backgroundOf(picture);
    const changed = background === null || background !== backgrounds.get(picture);
    backgrounds.set(picture, background ?? "");
    return changed;
  };
  const load = ({ target }: Event) => {
    if (!(target instanceof Element)) return;
    (awaited.delete(target) ? repictured : loaded).add(target);
    soon();
  };
  signal.addEventListener("abort", () => {
    observer.disconnect();
    clearTimeout(timer);
  });
  return (picture) => {
    if (watched.has(picture)) return;
    watched.add(picture);
    const holder = picture.parentElement instanceof HTMLPictureElement ? picture.parentElement : picture;
    backgrounds.set(picture, backgroundOf(picture) ?? "");
    const attributeFilter = picture instanceof HTMLImageElement ? ["src", "srcset"] : ["style"];
    observer.observe(holder, { subtree: holder !== picture, attributes: true, attributeFilter });
    picture.addEventListener("load", load, { passive: true, signal });
  };
}

/** The address that an element's own style gives it for a background; null for a picture that needs none. */
function backgroundOf(picture: Element): string | null {
  return picture instanceof HTMLElement && !(picture instanceof HTMLImageElement)
    ? picture.style.backgroundImage
    : null;
}
