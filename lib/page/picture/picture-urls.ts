import { parentOf } from "../dom/ancestors.ts";
import { PICTURE_FILE } from "./picture-file.ts";
import { promisesPicture } from "./promises-picture.ts";

/** Widest rendition worth having, and the narrowest that is enough, in pixels: a sample is 96 pixels a side. */
const ENOUGH = 300;

/** Renditions of one picture that are kept. */
const MOST_RENDITIONS = 2;

/** Data pictures shorter than this are stand-ins: a blur, a single pixel, an empty drawing. */
const SHORTEST_DATA = 3000;

const STAND_IN =
  /[/_.-](?:placeholder|blank|spacer|transparent|loader|loading|pixel|1x1|no-?image|lazy)(?:[-_]?(?:\d+(?:x\d+)?|image|img|picture|photo|product|small|medium|large|default|thumb|gr[ae]y|white|square|icon|load|loading|placeholder))*\.(?:gif|png|svg|jpe?g|webp)/i;

const isStandIn = (url: string): boolean =>
  url.startsWith("data:")
    ? url.length < SHORTEST_DATA || url.startsWith("data:image/svg")
    : STAND_IN.test(url);

/** Absolute http(s) or data:image address of what is written in `place`, or null. */
export function pictureUrl(written: string, place: Element): string | null {
  const text = written.trim();
  if (!text || text.includes("{") || text.length > 100_000) return null;
  if (/^https?:\/\/\w/.test(text)) return text;
  const url = URL.parse(text, place.baseURI);
  return url && /^(https?:|data:image\/)/i.test(url.href) ? url.href : null;
}

/** Addresses of a `srcset`, the smallest sufficient first; a mangled one gives what can be read. */
function fromSrcset(srcset: string): readonly string[] {
  const wide: { url: string; width: number }[] = [];
  for (const [, url = "", size = "", unit] of srcset
    .slice(0, 8000)
    .matchAll(/([^\s,]\S*[^\s,])(?:\s+([\d.]+)([wx]))?/g)) {
    const width = Number(size || 1) * (unit === "w" ? 1 : ENOUGH);
    wide.push({ url, width: width < ENOUGH ? 1e5 - width : width });
  }
  return wide
    .sort((a, b) => a.width - b.width)
    .slice(0, MOST_RENDITIONS)
    .map(({ url }) => url);
}

const backgroundOf = (style: string): readonly string[] =>
  [...style.matchAll(/url\(\s*(["']?)(.*?)\1\s*\)/g)].map((match) => match[2] ?? "");

/** What the attributes of one element say, in the order of trust. */
function written(element: Element): readonly string[] {
  const later: string[] = [];
  const last: string[] = [];
  const value = (name: string) => element.getAttribute(name) ?? "";
  for (const name of element.getAttributeNames()) {
    if (!promisesPicture(name)) {
      // Any name will do for what comes in place of a stand-in.
      if (name.startsWith("data-") && value(name).length < 2000 && PICTURE_FILE.test(value(name)))
        last.push(value(name));
      continue;
    }
    const text = value(name).replaceAll("{width}", String(ENOUGH));
    if (text.length > 8000) continue;
    if (/srcset/.test(name)) later.push(...fromSrcset(text));
    else if (PICTURE_FILE.test(text) || /src|original/.test(name)) later.push(text);
  }
  return [
    ...later,
    ...fromSrcset(value("srcset")),
    value("poster"),
    ...backgroundOf(value("style")),
    ...last,
  ];
}

/** The addresses that an image resolved by itself, far faster than a URL does; a video's are no pictures. */
const ownUrls = (element: Element): readonly string[] =>
  "naturalWidth" in element && "currentSrc" in element && "src" in element
    ? [element.currentSrc, element.src].map(String)
    : [];

/** Whether what an image shows stands in for a picture that is still to come, though its name does not tell. */
export type StandsIn = (url: string) => boolean;

/** The address of the picture that an image shows now, or null where it shows none or a stand-in. */
export function shownUrl(element: Element): string | null {
  const url = ownUrls(element).find(Boolean) ?? "";
  return /^https?:/.test(url) && !isStandIn(url) ? url : null;
}

/** Addresses of other renditions of what an element shows, or will show; as they are written. */
function renditionsOf(element: Element): readonly string[] {
  const sources = element.closest("picture")?.querySelectorAll("source") ?? [];
  return [element, ...sources].flatMap(written);
}

/** Addresses of the picture that shows where no script runs. */
function spareUrls(element: Element): readonly string[] {
  const spare = parentOf(element.closest("picture") ?? element)
    ?.querySelector(":scope>noscript")
    ?.textContent.slice(0, 8000);
  return [...(spare?.matchAll(/\bsrc=["']?([^"'\s>]+)/g) ?? [])].map(([, url = ""]) =>
    url.replaceAll("&amp;", "&"),
  );
}

/** Where an image takes what it is to show later, or null; as it is written. */
export const promisedUrl = (element: Element): string | null =>
  [...renditionsOf(element), ...spareUrls(element)].find(Boolean) ?? null;

/**
 * Addresses of the picture that an element shows, best first: what is shown now, then what it will show, then other
 * renditions. Stand-ins are left out; a small data picture stays where there is nothing else.
 */
export function pictureUrls(element: Element, standsIn: StandsIn): readonly string[] {
  const address = shownUrl(element);
  // Other renditions of what shows are no better; what an attribute promises may be.
  if (address && !element.getAttributeNames().some(promisesPicture)) return [address];
  const shown = address && !standsIn(address);
  const found = [...ownUrls(element), ...renditionsOf(element), ...(shown ? [] : spareUrls(element))];
  if (found.every((address) => !address)) {
    const style = element.ownerDocument.defaultView?.getComputedStyle(element).backgroundImage ?? "";
    found.push(...backgroundOf(style));
  }
  const urls = [...new Set(found)].flatMap((url) => pictureUrl(url, element) ?? []);
  const real = urls.filter((url) => !isStandIn(url) && !standsIn(url));
  return real.length > 0 ? real : urls.filter((url) => /^data:image\/(?!svg|gif)/.test(url));
}
