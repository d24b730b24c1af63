import type { Point } from "../../store/studio/outline.ts";
import type { Board } from "../../store/studio/paint-drawing.ts";

/** Strokes that look like a line of letters from (x, y) on. */
export function lettering(
  x: number,
  y: number,
  size: number,
  letters: number,
  random: () => number,
): Point[][] {
  return Array.from({ length: letters }, (_, i) => {
    const left = x + i * size * 0.75;
    return Array.from(
      { length: 4 },
      (): Point => [left + random() * size * 0.5, y + (random() - 0.5) * size],
    );
  });
}

/** Starts a line through points. */
export function trace(board: Board, line: readonly Point[]): void {
  board.beginPath();
  line.forEach(([x, y], i) => {
    if (i === 0) board.moveTo(x, y);
    else board.lineTo(x, y);
  });
}
