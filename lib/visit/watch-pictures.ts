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
  const watched = new WeakSet<Element>();
  let timer: ReturnType<typeof setTimeout> | undefined;

  const tell = () => {
    timer = undefined;
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
      return picture instanceof Element && watched.has(picture) ? picture : [];
    });
    for (const picture of touched) repictured.add(picture);
    changes.touched(touched);
    soon();
  });
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
    observer.observe(holder, { subtree: true, attributes: true, attributeFilter: ["src", "srcset"] });
    picture.addEventListener("load", load, { passive: true, signal });
  };
}
