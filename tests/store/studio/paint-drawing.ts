import { lightOfCode } from "./light.ts";
import type { Point } from "./outline.ts";
import { frameAround, type Photo, readyBoard, WIDTH } from "./photo.ts";

/** As much of a canvas as drawings use. */
export type Board = Pick<
  OffscreenCanvasRenderingContext2D,
  | "arc"
  | "beginPath"
  | "bezierCurveTo"
  | "ellipse"
  | "fill"
  | "fillStyle"
  | "lineTo"
  | "lineWidth"
  | "moveTo"
  | "quadraticCurveTo"
  | "stroke"
  | "strokeStyle"
>;

/** A flat drawing in the scene's coordinates: seams, buttons, a face, a hook. */
export interface Drawing {
  readonly draw: (board: Board) => void;
  /** Points that it lies between. */
  readonly span: readonly Point[];
  /** Softness of its edges, scene units. */
  readonly soft: number;
  /** `over` covers what is there; `stain` darkens or tints it, as a shadow or make-up does. */
  readonly how: "over" | "stain";
}

/** Paints a drawing over the photo; the product's cloth no longer counts where it shows. */
export function paintDrawing(photo: Photo, drawing: Drawing): void {
  const frame = frameAround(drawing.span, photo.view, 4 + (12 + 3 * drawing.soft) * photo.view.scale);
  if (!frame) return;
  const board = readyBoard(photo);
  const soft = drawing.soft * photo.view.scale;
  board.filter = soft > 0.5 ? `blur(${soft.toFixed(2)}px)` : "none";
  board.lineCap = "round";
  board.lineJoin = "round";
  drawing.draw(board);
  board.filter = "none";
  const { data } = board.getImageData(frame.left, frame.top, frame.width, frame.height);
  for (let i = 0; i < frame.width * frame.height; i++) {
    const alpha = (data[4 * i + 3] ?? 0) / 255;
    if (alpha === 0) continue;
    const at = (frame.top + Math.floor(i / frame.width)) * WIDTH + frame.left + (i % frame.width);
    for (let c = 0; c < 3; c++) {
      const own = lightOfCode(data[4 * i + c] ?? 0);
      const was = photo.light[3 * at + c] ?? 0;
      photo.light[3 * at + c] = was * (1 - alpha) + (drawing.how === "over" ? own : own * was) * alpha;
    }
    if (alpha > 0.04) photo.dye[at] = 0;
  }
}
