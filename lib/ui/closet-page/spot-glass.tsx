import { SPOT_RADIUS } from "../../sample/white-card.ts";
import type { Spot } from "./closet-tools.ts";

/** Of the picture's shorter side: how much of it the glass shows. Layout choice: the spot takes a quarter of it. */
const VIEW = 8 * SPOT_RADIUS;

/** The spot and what lies around it, enlarged. `ratio`: the picture's width to its height. */
export function SpotGlass({ address, spot, ratio }: { address: string; spot: Spot; ratio: number }) {
  const across = Math.max(1, ratio) / VIEW;
  const down = Math.max(1, 1 / ratio) / VIEW;
  return (
    <span class="light-glass" aria-hidden="true">
      <span
        class="light-view"
        style={{
          ...(address && { backgroundImage: `url("${address}")` }),
          backgroundSize: `${100 * across}% ${100 * down}%`,
          backgroundPosition: `${centred(spot.x, across)} ${centred(spot.y, down)}`,
        }}
      />
      <span class="light-ring" style={{ inlineSize: `${(200 * SPOT_RADIUS) / VIEW}%` }} />
    </span>
  );
}

/** The background position that brings the part `at` of a picture `times` as large as its box to the middle of the box. */
function centred(at: number, times: number): string {
  return `${(100 * (0.5 - at * times)) / (1 - times)}%`;
}
