import type { Context } from "../context.ts";
import { addTo } from "../dom/ancestors.ts";
import { learned } from "../learned.ts";
import { pictureFile } from "./picture-file.ts";
import { promisedUrl, type StandsIn } from "./picture-urls.ts";

/** Images looked at in one reading. */
const MOST_IMAGES = 4000;

/** Whether images that show one address are to show others, each its own. */
function standsInFor(images: readonly Element[], url: string): boolean {
  if (images.length < 2) return false;
  const files = new Set(images.flatMap((image) => promisedUrl(image) ?? []).map(pictureFile));
  return files.size > 1 && !files.has(pictureFile(url));
}

/** Addresses of stand-ins. */
const knownOf = learned(
  () => new Set<string>(),
  (known, scopes) => {
    const images = new Map<string, Element[]>();
    const all = scopes.flatMap((scope) => [...scope.querySelectorAll("img")]);
    for (const image of all.slice(0, MOST_IMAGES)) {
      const url = image.currentSrc || image.src;
      if (url) addTo(images, url, image);
    }
    for (const [url, showing] of images) if (standsInFor(showing, url)) known.add(url);
  },
);

/** Tells stand-ins by what the images of a document show and promise. */
export const standInsOf =
  (context: Context): StandsIn =>
  (url) =>
    knownOf(context).has(url);
