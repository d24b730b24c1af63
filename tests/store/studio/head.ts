import { flipped, type Knot, mirrored, smooth } from "./outline.ts";
import type { Board } from "./paint-drawing.ts";
import { knots, points } from "./points.ts";
import { type Layer, other, stroke } from "./stage.ts";

/** Hair colours, invented names for nobody: near-black to fair and grey. */
export const HAIR = [
  "#1c1715",
  "#2b1d17",
  "#3f2a1e",
  "#5e3b25",
  "#8a5a34",
  "#b98f58",
  "#d8bb86",
  "#7c7a78",
] as const;

/** How hair is worn. */
export type HairStyle = "long" | "bob" | "bun" | "short";

/** Where face and hair drawings lie. */
const HEAD = [
  [-70, -10],
  [70, 250],
] as const;

const lock = (knots: readonly Knot[], hair: string): Layer =>
  other(smooth(knots), hair, { weave: "satin", fall: "tube", deep: 0.5, round: 10, shadow: 0.25, throw: 5 });

/** Strands: many thin lines, lighter and darker, that follow the fall of the hair. */
function strands(side: 1 | -1, length: number): Layer {
  return {
    how: "over",
    soft: 0.3,
    span: HEAD,
    draw: (board) => {
      for (let i = 0; i < 22; i++) {
        board.strokeStyle = i % 3 ? "rgb(0 0 0 / 0.22)" : "rgb(255 255 255 / 0.13)";
        board.lineWidth = 0.9;
        board.beginPath();
        board.moveTo(side * (i * 0.5), 3 + i * 0.25);
        board.bezierCurveTo(
          side * (24 + i),
          6,
          side * (43 + i * 0.4),
          30,
          side * (45 + i * 0.55),
          Math.min(length, 72),
        );
        if (length > 72)
          board.quadraticCurveTo(
            side * (48 + i * 0.6),
            (length + 72) / 2,
            side * (42 + i * 0.7),
            length - (i % 5) * 6,
          );
        board.stroke();
      }
    },
  };
}

/** Hair that hangs behind neck and shoulders. */
export function hairBehind(style: HairStyle, hair: string): Layer[] {
  const tail = { long: 268, bob: 158, bun: 96, short: 92 }[style];
  const behind = mirrored([
    [0, 0],
    [36, 10],
    [54, 52],
    [style === "long" ? 66 : 55, tail * 0.72],
    [style === "long" ? 58 : 46, tail],
    [0, tail - 6],
  ]);
  const knot = mirrored(points("0,-30 20,-22 22,-4 0,12"));
  const made = { weave: "satin", fall: "tube", deep: 0.6, round: 16, shadow: 0.3, throw: 8 } as const;
  return [...(style === "bun" ? [other(knot, hair, made)] : []), other(behind, hair, made)];
}

/** Hair in front: crown, parting and the locks beside the face. */
export function hairInFront(style: HairStyle, hair: string): Layer[] {
  const low = { long: 236, bob: 148, bun: 60, short: 70 }[style];
  const crown: readonly Knot[] = knots(
    "-4,0 30,4 50,36 52,70 45,66 38,42 14,28 -6,24! -22,32 -39,46 -45,68 -52,70 -50,34 -30,4",
  );
  const side: readonly Knot[] = [
    [40, 34],
    [51, 44],
    [57, 96],
    [62, low * 0.8],
    [50, low],
    [38, low - 8],
    [46, 118],
    [44, 76],
  ];
  const loose = style === "long" || style === "bob";
  return [
    ...(loose ? [lock(side, hair), lock(flipped(side), hair)] : []),
    lock(crown, hair),
    strands(1, loose ? low - 10 : 66),
    strands(-1, loose ? low - 10 : 66),
  ];
}

/** A face that is nobody's: brows, eyes, nose and mouth as soft stains and small strokes. `deep` skin takes stronger lips. */
export function face(hair: string, lips: string): Layer[] {
  const stain = (draw: (board: Board) => void, soft: number): Layer => ({
    how: "stain",
    soft,
    span: HEAD,
    draw,
  });
  const oval = (board: Board, x: number, y: number, rx: number, ry: number, turn = 0): void => {
    board.beginPath();
    board.ellipse(x, y, rx, ry, turn, 0, 7);
    board.fill();
  };
  return [
    stain((board) => {
      board.fillStyle = "rgb(150 110 95 / 0.55)";
      for (const side of [-1, 1]) oval(board, side * 19, 66, 11, 7);
      oval(board, 5, 88, 4, 9);
      oval(board, 0, 121, 11, 3);
      board.fillStyle = "rgb(215 140 125 / 0.5)";
      for (const side of [-1, 1]) oval(board, side * 25, 93, 11, 9);
    }, 4),
    {
      how: "over",
      soft: 0.25,
      span: HEAD,
      draw: (board) => {
        for (const side of [-1, 1]) {
          board.fillStyle = "#e9e4df";
          oval(board, side * 18.5, 70, 7.6, 3.6, side * 0.06);
          board.fillStyle = "#35261d";
          oval(board, side * 18.5, 69.6, 3.5, 3.6);
          board.fillStyle = "#0d0a09";
          oval(board, side * 18.5, 69.6, 1.7, 1.7);
          board.fillStyle = "rgb(255 255 255 / 0.8)";
          oval(board, side * 18.5 - 1.2, 68.4, 0.9, 0.9);
          board.strokeStyle = "#1a1310";
          board.lineWidth = 1.9;
          board.beginPath();
          board.moveTo(side * 10.6, 71);
          board.quadraticCurveTo(side * 19, 63.2, side * 27, 69.4);
          board.stroke();
        }
      },
    },
    stroke(points("-29,57 -21,53.6 -11,56"), `color-mix(in srgb, ${hair} 80%, transparent)`, 2.6, 0.8),
    stroke(points("29,57 21,53.6 11,56"), `color-mix(in srgb, ${hair} 80%, transparent)`, 2.6, 0.8),
    stain((board) => {
      board.fillStyle = "rgb(120 75 65 / 0.75)";
      for (const side of [-1, 1]) oval(board, side * 4.6, 94.5, 2.3, 1.4);
    }, 0.8),
    {
      how: "over",
      soft: 0.6,
      span: HEAD,
      draw: (board) => {
        board.fillStyle = lips;
        board.beginPath();
        board.moveTo(-14, 109);
        board.quadraticCurveTo(-5, 103.5, 0, 106);
        board.quadraticCurveTo(5, 103.5, 14, 109);
        board.quadraticCurveTo(0, 119.5, -14, 109);
        board.fill();
        board.strokeStyle = "rgb(70 25 25 / 0.6)";
        board.lineWidth = 1.1;
        board.beginPath();
        board.moveTo(-13, 109);
        board.quadraticCurveTo(0, 111.5, 13, 109);
        board.stroke();
      },
    },
  ];
}
