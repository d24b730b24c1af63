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
  const timesOf = (picture: Element) => times.get(addressOf(picture)) ?? 0;
  const least = Math.min(...pictures.map(timesOf).filter((shown) => shown > 0));
  return (picture) => timesOf(picture) >= LEAST_MEMBERS && timesOf(picture) > OFTENER * least;
}
