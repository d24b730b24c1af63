import { SMALLEST_PICTURE } from "../pixels/picture-reader.ts";
import type { Part } from "../pixels/pixels-of-snapshot.ts";
import { liesBare } from "./lies-bare.ts";
import type { Tracked } from "./tracked.ts";

/** Part of a picture that must be on the screen: what little is cut off shows ground, not cloth (our choice). */
const LEAST_IN_VIEW = 0.9;

/** Where a person sees the picture of a product, if it has come and lies bare in plain sight; null elsewhere. */
export function boxInSight({ product: { root }, source: { image } }: Tracked): Part | null {
  // A page enlarged with two fingers lays out another part of itself than it shows.
  if (!image || (visualViewport?.scale ?? 1) !== 1) return null;
  // Else the browser draws a sign for a broken picture, or a page its stand-in.
  if (!image.complete || image.naturalWidth < SMALLEST_PICTURE) return null;
  const whole = image.getBoundingClientRect();
  const left = Math.max(0, whole.left);
  const top = Math.max(0, whole.top);
  const width = Math.min(innerWidth, whole.right) - left;
  const height = Math.min(innerHeight, whole.bottom) - top;
  if (Math.min(width, height) < SMALLEST_PICTURE) return null;
  if (width * height < LEAST_IN_VIEW * whole.width * whole.height) return null;
  if (!liesBare(image, root, new DOMRect(left, top, width, height))) return null;
  return {
    left: left / innerWidth,
    top: top / innerHeight,
    right: (left + width) / innerWidth,
    bottom: (top + height) / innerHeight,
  };
}
