const LONGEST_KEY = 512;

/** Parts of a link that say where the visitor came from, not what the product is. */
const TRACE = /^(utm_|ref|src|pos|gclid|fbclid|_)/i;

/** Same product, same key, on every visit: its link, else its picture, else its title. */
export function productKey(link: string | null, images: readonly string[], title: string): string {
  if (link && !/[?#]/.test(link)) return link.slice(0, LONGEST_KEY);
  const url = link && URL.parse(link);
  if (!url) return (images.find((image) => !image.startsWith("data:")) ?? title).slice(0, LONGEST_KEY);
  for (const name of [...url.searchParams.keys()]) if (TRACE.test(name)) url.searchParams.delete(name);
  url.hash = "";
  return url.href.slice(0, LONGEST_KEY);
}
