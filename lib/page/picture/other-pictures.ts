import { nearest, parentOf } from "../dom/ancestors.ts";
import type { FoundProduct } from "../product.ts";
import { pictureFile } from "./picture-file.ts";
import { shownUrl } from "./picture-urls.ts";

/** Other pictures of one product that are worth having: each further one says less. */
const MOST = 3;
/** Pictures of a product looked at; bounds a hostile page. */
const MOST_LOOKED_AT = 60;
/** A tile's second picture is at least this wide against its first, and of the same shape within this factor; icons are not. */
const WIDTH = 0.6;
const SHAPE = 1.25;

/** What a product is called by, which stands beside its gallery and not in it. */
const NAMES = "h1,h2,h3,h4,[itemprop=name]";
/** What holds pictures of the colours that there are besides. */
const CHOICES = '[class*="swatch" i],[class*="colo" i],[class*="variant" i],[class*="option" i],label,select';

const shapeOf = ({ naturalWidth, naturalHeight }: HTMLImageElement): number =>
  naturalWidth / (naturalHeight || 1);

/** Whether a picture of a tile takes the first one's place, as the one does that shows under the pointer. */
function takesPlace(picture: HTMLImageElement, front: HTMLImageElement): boolean {
  const shape = shapeOf(picture) / shapeOf(front);
  const { width } = picture.getBoundingClientRect();
  const wide = width === 0 || width >= WIDTH * front.getBoundingClientRect().width;
  return wide && shape < SHAPE && shape > 1 / SHAPE;
}

/**
 * The pictures beside the one a product shows that show it too and have come already, at most three, in the page's order:
 * what a tile shows under the pointer, the slides and thumbnails of a product page's gallery. Not another rendition of
 * the first, nor what stands for other colours.
 */
export function otherPictures({ role, root, image }: FoundProduct): HTMLImageElement[] {
  const pictures = [...root.querySelectorAll("img")].slice(0, MOST_LOOKED_AT);
  const front = pictures.find((picture) => picture === image);
  if (!front) return [];
  const isBeside = (up: Element) => up === root || parentOf(up)?.querySelector(NAMES) != null;
  const gallery = role === "main" ? nearest(front, isBeside) : root;
  const files = new Set([pictureFile(shownUrl(front) ?? "")]);
  const others: HTMLImageElement[] = [];
  for (const picture of pictures) {
    const url = shownUrl(picture);
    if (others.length === MOST || !url || !picture.complete || !picture.naturalWidth) continue;
    if (files.has(pictureFile(url)) || !gallery?.contains(picture)) continue;
    const choices = picture.closest(CHOICES);
    if (choices && root.contains(choices) && !choices.contains(front)) continue;
    if (role === "tile" && !takesPlace(picture, front)) continue;
    files.add(pictureFile(url));
    others.push(picture);
  }
  return others;
}
