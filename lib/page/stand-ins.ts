import { addTo, allIn } from "./ancestors.ts";
import type { Context } from "./context.ts";
import { pictureFile } from "./picture-file.ts";
import { promisedUrl, type StandsIn, shownUrl } from "./picture-urls.ts";

/** Images of a document looked at. */
const MOST_IMAGES = 4000;

/** Whether images that show one address are to show others, each its own. */
function standsInFor(images: readonly Element[], url: string): boolean {
  if (images.length < 2) return false;
  const files = new Set(images.flatMap((image) => promisedUrl(image) ?? []).map(pictureFile));
  return files.size > 1 && !files.has(pictureFile(url));
}

function findStandIns(doc: Document): ReadonlySet<string> {
  const images = new Map<string, Element[]>();
  for (const image of allIn(doc, "img").slice(0, MOST_IMAGES)) {
    const url = shownUrl(image);
    if (url) addTo(images, url, image);
  }
  return new Set([...images].flatMap(([url, showing]) => (standsInFor(showing, url) ? url : [])));
}

/** Stand-ins by reading: a context lives as long. */
const known = new WeakMap<Context, ReadonlySet<string>>();

/** Tells stand-ins by what the images of a document show and promise. */
export const standInsOf =
  (context: Context): StandsIn =>
  (url) => {
    const found = known.get(context) ?? findStandIns(context.doc);
    known.set(context, found);
    return found.has(url);
  };
