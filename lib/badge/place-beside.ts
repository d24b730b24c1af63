/** A box in the viewport, in CSS pixels. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Free space between a card and its badge or the viewport's edge, in CSS pixels. Layout choice. */
export const CARD_GAP = 8;

/**
 * Where a card of a size goes: to the right of its badge, else to the left, else below or above it, wherever there is
 * more room; always inside the viewport.
 */
export function placeBeside(
  badge: Box,
  card: Pick<Box, "width" | "height">,
  view: Pick<Box, "width" | "height">,
): Pick<Box, "left" | "top"> {
  const inside = (wish: number, size: number, room: number) =>
    Math.max(CARD_GAP, Math.min(wish, room - size - CARD_GAP));
  const right = badge.left + badge.width + CARD_GAP;
  const left = badge.left - card.width - CARD_GAP;
  const fitsRight = right + card.width + CARD_GAP <= view.width;
  if (fitsRight || left >= CARD_GAP) {
    const top = badge.top + badge.height - card.height;
    return {
      left: inside(fitsRight ? right : left, card.width, view.width),
      top: inside(top, card.height, view.height),
    };
  }
  const below = badge.top + badge.height + CARD_GAP;
  const above = badge.top - card.height - CARD_GAP;
  const goesBelow = view.height - below >= badge.top;
  return {
    left: inside(badge.left, card.width, view.width),
    top: inside(goesBelow ? below : above, card.height, view.height),
  };
}
