import type { Point } from "../../store/studio/outline.ts";
import type { Board, Drawing } from "../../store/studio/paint-drawing.ts";
import { round } from "./dyes.ts";
import { lettering, trace } from "./lettering.ts";
import { viewOf } from "./sheet.ts";
import type { Figure } from "./shot.ts";

const INKS = ["#d0021b", "#111111", "#f7d038", "#1f7a4d", "#ffffff"] as const;

/** What a shop prints over its pictures: a round badge, a ribbon across a corner, a bar of text, or a watermark. */
export function sticker(number: number, random: () => number): Figure {
  const ink = round(INKS, number);
  const words = ink === "#ffffff" || ink === "#f7d038" ? "#111111" : "#ffffff";
  const side = random() < 0.5 ? -1 : 1;
  const write = (board: Board, lines: readonly Point[][], color: string, width: number): void => {
    board.strokeStyle = color;
    board.lineWidth = width;
    for (const line of lines) {
      trace(board, line);
      board.stroke();
    }
  };
  const shapes: readonly ((board: Board) => void)[] = [
    (board) => {
      const [x, y, r] = [side * 320, 160 + 90 * random(), 110 + 50 * random()];
      board.fillStyle = ink;
      board.beginPath();
      board.ellipse(x, y, r, r, 0, 0, 7);
      board.fill();
      write(board, lettering(x - r * 0.7, y, r * 0.5, 4, random), words, 14);
    },
    (board) => {
      board.fillStyle = ink;
      trace(board, [
        [-side * 500, 330],
        [-side * 500, 160],
        [-side * 330, 0],
        [-side * 150, 0],
      ]);
      board.fill();
      write(board, lettering(-side * 430 - 30, 130, 70, 3, random), words, 11);
    },
    (board) => {
      board.fillStyle = ink;
      trace(board, [
        [-500, 800],
        [500, 800],
        [500, 930],
        [-500, 930],
      ]);
      board.fill();
      write(board, lettering(-420, 865, 80, 13, random), words, 14);
    },
    (board) => write(board, lettering(-380, 480, 150, 7, random), "rgb(255 255 255 / 0.5)", 20),
  ];
  const drawing: Drawing = {
    how: "over",
    soft: 1,
    span: [
      [-500, 0],
      [500, 1000],
    ],
    draw: round(shapes, number),
  };
  return { view: viewOf([0, 1000], 1), layers: [drawing] };
}
