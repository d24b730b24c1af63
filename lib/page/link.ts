/** Links of a tile that lead elsewhere: to a basket, a list, a picture file, a script. */
const ELSEWHERE =
  /\.(jpe?g|png|webp|gif|avif)(\?|$)|[/?&](cart|basket|wishlist|login|account|compare|add-to-cart|quick-?view)\b/i;

/** Links looked at in one product. */
const MOST_ANCHORS = 40;

/** The address a link leads to, or null where it leads nowhere a product could be. */
export function linkUrl(anchor: Element): string | null {
  const written = anchor.getAttribute("href")?.trim() ?? "";
  if (!written || written.startsWith("#") || written.length > 2000) return null;
  const url = URL.parse(written, anchor.baseURI);
  return url && /^https?:$/.test(url.protocol) && !ELSEWHERE.test(url.href) ? url.href : null;
}

/** The link to the product: the one around the picture, else the first with a text, else the first. */
export function linkIn(root: Element, image: Element | null): Element | null {
  const leads = (anchor: Element | null | undefined) => (anchor && linkUrl(anchor) ? anchor : null);
  const anchors = [...root.querySelectorAll("a[href]")].slice(0, MOST_ANCHORS);
  const lettered = anchors.find((anchor) => /\p{L}{3}/u.test(anchor.textContent ?? "") && linkUrl(anchor));
  return (
    leads(image?.closest("a[href]")) ??
    leads(root.closest("a[href]")) ??
    lettered ??
    anchors.find(leads) ??
    null
  );
}
