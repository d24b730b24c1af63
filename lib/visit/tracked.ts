import type { Badge } from "../badge/badge.ts";
import type { Candidate } from "../fit/verdict.ts";
import type { VerdictBrief } from "../link/messages.ts";
import type { FoundProduct } from "../page/product.ts";
import type { PictureSource } from "../pixels/picture-reader.ts";
import type { Palette } from "../sample/palette.ts";
import type { Slot } from "../words/slot.ts";

/** A product on the page and how far we have come with it. */
export interface Tracked {
  product: FoundProduct;
  /** The picture it is known by now; a page that shows another one makes it unknown again. */
  source: PictureSource;
  /** Where it is worn; null until its words were read, and where they do not say. */
  slot: Slot | null;
  palette: Palette | null;
  brief: VerdictBrief | null;
  /** Null until its picture comes near the screen. */
  badge: Badge | null;
  /** Whether the page linked to the product when it was found: a tile that no longer does shows another one. */
  linked: boolean;
}

const NOTHING_YET: Palette = { swatches: [], confidence: 0, evidence: [] };

/** Whether a link of the product's own, or the one around it, leads where the product is. */
export function isLinked({ root, parts, link }: FoundProduct): boolean {
  if (!link) return false;
  const inside = parts.flatMap((part) => [...part.querySelectorAll("a")]);
  const anchors = [root.closest("a"), ...inside];
  return anchors.some((anchor) => anchor?.href === link);
}

/** The product as the comparison needs it. */
export function candidateOf({ product: { key, title }, slot, palette }: Tracked): Candidate {
  return { key, title, slot, palette: palette ?? NOTHING_YET };
}

/** The picture that a product shows now, else the best one the page names. */
export function sourceOf({ image, images }: FoundProduct): PictureSource {
  const shown = image instanceof HTMLImageElement ? image : null;
  return { url: shown?.currentSrc || shown?.src || images[0] || "", image: shown };
}

/** The element that a badge sits on. */
export function pictureOf({ image, root }: FoundProduct): HTMLElement | null {
  if (image instanceof HTMLElement) return image;
  return root instanceof HTMLElement ? root : null;
}
