import type { Context } from "../context.ts";
import { forgetOldest, learned } from "../learned.ts";
import { LEAST_MEMBERS } from "../members.ts";

/** Images looked at in one reading. */
const MOST_IMAGES = 4000;
/** A frame or a stamp is shown more than so many times as often as the picture it lies on. */
const OFTENER = 2;

const addressOf = (image: Element): string =>
  "currentSrc" in image && "src" in image ? String(image.currentSrc || image.src) : "";

/** How many images of a document show each address. */
const timesShown = learned(
  () => new Map<string, number>(),
  (known, scopes) => {
    const images = scopes.flatMap((scope) => [...scope.querySelectorAll("img")]);
    for (const image of images.slice(0, MOST_IMAGES)) {
      const address = addressOf(image);
      if (address) known.set(address, (known.get(address) ?? 0) + 1);
    }
    forgetOldest(known);
  },
);

/** Tells whether one of several pictures of a product is shown with other products, too, as a frame or a stamp is. */
export function framesAmong(pictures: readonly Element[], context: Context): (picture: Element) => boolean {
  if (pictures.length < 2) return () => false;
  const times = timesShown(context);
  const own = new Map<string, number>();
  for (const address of pictures.map(addressOf)) own.set(address, (own.get(address) ?? 0) + 1);
  // Once for this product, and each time with others.
  const timesOf = (address: string) => (times.get(address) ?? 0) - (own.get(address) ?? 0) + 1;
  const least = Math.min(...[...own.keys()].filter((address) => times.has(address)).map(timesOf));
  return (picture) => {
    const shown = timesOf(addressOf(picture));
    return shown >= LEAST_MEMBERS && shown > OFTENER * least;
  };
}
