import type { Spot } from "./closet-tools.ts";

/** Of a picture's shorter side: how far an arrow key moves the ring, alone and with Shift. Layout choice. */
const STEP = 0.01;
const STRIDE = 0.08;

const ARROWS: Readonly<Record<string, readonly [x: number, y: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Where the ring goes from `spot` by a key; null for a key that does not move it. `ratio`: the picture's width to its height. */
export function steppedSpot(spot: Spot, key: string, far: boolean, ratio: number): Spot | null {
  const arrow = ARROWS[key];
  if (!arrow) return null;
  const step = far ? STRIDE : STEP;
  return {
    x: within(spot.x + (arrow[0] * step) / Math.max(1, ratio)),
    y: within(spot.y + arrow[1] * step * Math.min(1, ratio)),
  };
}

const within = (part: number): number => Math.min(1, Math.max(0, part));

/** The place of a picture that lies under a point of the window; null beside the picture. `box`: where the picture is drawn. */
export function spotUnder(
  box: Pick<DOMRect, "left" | "top" | "width" | "height">,
  x: number,
  y: number,
): Spot | null {
  const spot = { x: (x - box.left) / box.width, y: (y - box.top) / box.height };
  return spot.x >= 0 && spot.x <= 1 && spot.y >= 0 && spot.y <= 1 ? spot : null;
}
