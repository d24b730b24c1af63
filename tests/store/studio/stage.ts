import type { Fall, Grain } from "./folds.ts";
import type { Point } from "./outline.ts";
import type { Drawing } from "./paint-drawing.ts";
import type { Panel } from "./paint-panel.ts";
import type { Cloth } from "./recipe.ts";

/** What is painted, back to front. */
export type Layer = Panel | Drawing;

/** A garment, back to front: behind the body, below the waist, on the arms, on the trunk, at the waist. */
export interface Garment {
  readonly behind?: readonly Layer[];
  readonly below?: readonly Layer[];
  readonly arms?: readonly Layer[];
  readonly trunk?: readonly Layer[];
  readonly over?: readonly Layer[];
}

/** What a panel may leave unsaid. */
interface Making {
  readonly fall?: Fall;
  readonly grain?: Partial<Grain>;
  readonly deep?: number;
  readonly round?: number;
  readonly shadow?: number;
  readonly throw?: number;
  readonly lit?: number;
  readonly repeat?: number;
  readonly flush?: number;
  readonly product?: boolean;
  readonly shape?: Panel["shape"];
  /** More outlines of the same panel. */
  readonly and?: readonly (readonly Point[])[];
}

/** How deep each weave folds, 1 for plain cotton (by eye). */
const DEPTH: Record<Cloth["weave"], number> = {
  smooth: 1.25,
  knit: 0.85,
  denim: 0.8,
  satin: 1.4,
  wool: 0.9,
  leather: 0.5,
};

/** A panel whose grain runs straight down from the middle of its upper edge, unless told otherwise. */
export function panel(outline: readonly Point[], cloth: Cloth, making: Making = {}): Panel {
  const outlines = [outline, ...(making.and ?? [])];
  const [xs, ys] = [outlines.flat().map(([x]) => x), outlines.flat().map(([, y]) => y)];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const fall = making.fall ?? "drape";
  return {
    outlines,
    cloth,
    product: making.product ?? true,
    fall,
    grain: {
      x: (left + right) / 2,
      y: top,
      angle: 0,
      width: right - left,
      length: bottom - top,
      ...making.grain,
    },
    deep: (making.deep ?? 1) * DEPTH[cloth.weave],
    round: making.round ?? 40,
    shape: making.shape ?? (fall === "stiff" || fall === "none" ? "cushion" : "column"),
    shadow: making.shadow ?? 0.3,
    throw: making.throw ?? 7,
    lit: making.lit ?? 1,
    flush: making.flush ?? 0,
    repeat: making.repeat ?? 1,
  };
}

/** A panel of something that is not the product's own cloth: skin, a lining, a sole. */
export const other = (
  outline: readonly Point[],
  hex: string,
  making: Making & { weave?: Cloth["weave"] } = {},
): Panel =>
  panel(
    outline,
    { weave: making.weave ?? "smooth", print: "plain", dyes: [hex] },
    { ...making, product: false },
  );

/** A line through points, such as a seam. */
export function stroke(points: readonly Point[], color: string, width: number, soft = 0.4): Drawing {
  return {
    how: "over",
    soft,
    span: points,
    draw: (board) => {
      board.strokeStyle = color;
      board.lineWidth = width;
      board.beginPath();
      for (const [x, y] of points) board.lineTo(x, y);
      board.stroke();
    },
  };
}

/** A seam: a thin shadow in the cloth, whatever its dye. */
export const seam = (points: readonly Point[], width = 1.6): Drawing => ({
  ...stroke(points, "rgb(0 0 0 / 0.5)", width, 0.5),
  how: "over",
});

/** Round spots such as buttons, with a small highlight. */
export function buttons(at: readonly Point[], color: string, radius: number): Drawing {
  return {
    how: "over",
    soft: 0.3,
    span: at,
    draw: (board) => {
      for (const [x, y] of at) {
        for (const [dx, dy, r, fill] of [
          [0.8, 1.2, radius * 1.1, "rgb(0 0 0 / 0.4)"],
          [0, 0, radius, color],
          [-radius * 0.3, -radius * 0.35, radius * 0.35, "rgb(255 255 255 / 0.45)"],
        ] as const) {
          board.fillStyle = fill;
          board.beginPath();
          board.arc(x + dx, y + dy, r, 0, 7);
          board.fill();
        }
      }
    },
  };
}

export const isDrawing = (layer: Layer): layer is Drawing => "draw" in layer;
