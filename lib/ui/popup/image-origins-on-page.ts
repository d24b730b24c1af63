/**
 * Runs inside a store page, on its own: the browser sends its source there, so that it may use nothing from outside.
 * Reads where the page's pictures come from and changes nothing.
 * @returns pairs of an origin and how many pictures of the page it serves
 */
export function imageOriginsOnPage(): [origin: string, count: number][] {
  /** Pictures looked at, at most: enough for any listing, quick on a page that floods its document. */
  const MOST = 5000;
  /** Side in px below which a loaded picture is an icon or a counting pixel, and its host nothing to ask for. */
  const LEAST_SIDE = 48;
  const counts = new Map<string, number>();
  // By way of the prototype: `<img name="images">` on a page puts itself in place of a document's own properties.
  const elements = Document.prototype.querySelectorAll.call(document, "img");
  for (const image of Array.from(elements).slice(0, MOST)) {
    if (!(image instanceof HTMLImageElement)) continue;
    const address = image.currentSrc || image.src;
    const small = image.complete && image.naturalWidth > 0 && image.naturalWidth < LEAST_SIDE;
    if (small || !URL.canParse(address)) continue;
    const { origin } = new URL(address);
    counts.set(origin, (counts.get(origin) ?? 0) + 1);
  }
  return [...counts];
}
