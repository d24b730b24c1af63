import { limb, type Point, smooth } from "../../store/studio/outline.ts";
import type { Drawing } from "../../store/studio/paint-drawing.ts";
import { type Layer, other } from "../../store/studio/stage.ts";
import { lettering, trace } from "./lettering.ts";

/** What is printed on the breast of a top: a line of letters, or a figure of no meaning. */
export function graphic(hex: string, random: () => number): Drawing {
  const [size, words] = [24 + 16 * random(), random() < 0.55];
  const blob: Point[] = Array.from({ length: 9 }, (_, i) => {
    const r = 26 + 22 * random();
    return [r * Math.cos(i * 0.698), 285 + r * Math.sin(i * 0.698)];
  });
  return {
    how: "over",
    soft: 0.5,
    span: [
      [-80, 200],
      [80, 360],
    ],
    draw: (board) => {
      board.strokeStyle = hex;
      board.fillStyle = hex;
      board.lineWidth = 7;
      if (words) {
        for (const line of lettering(-52, 275, size, 5, random)) {
          trace(board, line);
          board.stroke();
        }
      } else {
        trace(board, smooth(blob.map(([x, y]) => [x, y])));
        board.fill();
      }
    },
  };
}

/** A small bag on a strap across the body. */
export function crossbody(hex: string): Layer[] {
  const hide = { weave: "leather", fall: "none", throw: 7, shadow: 0.35 } as const;
  const strap = limb(
    [
      [-62, 168, 4],
      [20, 300, 4],
      [92, 420, 4],
    ],
    "flat",
  );
  const pouch = smooth([
    [56, 405, 1],
    [136, 412, 1],
    [140, 480],
    [128, 500],
    [62, 496],
    [50, 470],
  ]);
  return [other(strap, hex, { ...hide, round: 3 }), other(pouch, hex, { ...hide, round: 14 })];
}
