import type { Point } from "../../store/studio/outline.ts";

/** One filled shape of a drawing, scene units: colour 0–255, alpha 0–1. */
export interface Stroke {
  readonly outline: readonly Point[];
  readonly color: readonly [r: number, g: number, b: number, alpha: number];
}

/** Points along one curve. */
const STEPS = 8;
/** Points along a whole turn. */
const TURN = 20;

const hex = (text: string): [number, number, number] => {
  const code = Number.parseInt(text.slice(1), 16);
  return [code >> 16, (code >> 8) & 255, code & 255];
};

/** The three ways in which the studio's drawings write a colour: `#rrggbb`, `rgb(r g b / a)`, a mix with transparency. */
function readColor(text: string): Stroke["color"] {
  if (text === "#000") return [0, 0, 0, 1];
  if (/^#[0-9a-f]{6}$/i.test(text)) return [...hex(text), 1];
  const mix = /^color-mix\(in srgb, (#[0-9a-f]{6}) (\d+)%, transparent\)$/i.exec(text);
  if (mix) return [...hex(mix[1] ?? ""), Number(mix[2]) / 100];
  const [r, g, b, alpha] = /^rgb\(([\d. /]+)\)$/.exec(text)?.[1]?.split(/[ /]+/).map(Number) ?? [];
  if (r === undefined || g === undefined || b === undefined)
    throw new Error(`"${text}" is not a colour here.`);
  return [r, g, b, alpha ?? 1];
}

/** A line with a width as an outline, its ends longer by half the width. */
function widened(line: readonly Point[], width: number): Point[] {
  const half = width / 2;
  const last = line.length - 1;
  const side = (sign: 1 | -1): Point[] =>
    line.map(([x, y], i) => {
      const [ax, ay] = line[Math.max(0, i - 1)] ?? [x, y];
      const [bx, by] = line[Math.min(last, i + 1)] ?? [x, y];
      const length = Math.hypot(bx - ax, by - ay) || 1;
      const [dx, dy] = [((bx - ax) / length) * half, ((by - ay) / length) * half];
      const out = i === 0 ? -1 : i === last ? 1 : 0;
      return [x - sign * dy + out * dx, y + sign * dx + out * dy];
    });
  return [...side(1), ...side(-1).reverse()];
}

/** What the studio's drawings need of a canvas, as a list of filled outlines. */
export class Sketch {
  fillStyle = "#000";
  strokeStyle = "#000";
  lineWidth = 1;
  readonly strokes: Stroke[] = [];
  #lines: Point[][] = [];

  beginPath(): void {
    this.#lines = [];
  }

  moveTo(x: number, y: number): void {
    this.#lines.push([[x, y]]);
  }

  lineTo(x: number, y: number): void {
    const line = this.#lines.at(-1);
    if (line) line.push([x, y]);
    else this.moveTo(x, y);
  }

  quadraticCurveTo(cx: number, cy: number, x: number, y: number): void {
    const [x0, y0] = this.#lines.at(-1)?.at(-1) ?? [cx, cy];
    this.bezierCurveTo((x0 + 2 * cx) / 3, (y0 + 2 * cy) / 3, (x + 2 * cx) / 3, (y + 2 * cy) / 3, x, y);
  }

  bezierCurveTo(ax: number, ay: number, bx: number, by: number, x: number, y: number): void {
    const [x0, y0] = this.#lines.at(-1)?.at(-1) ?? [ax, ay];
    for (let step = 1; step <= STEPS; step++) {
      const [t, s] = [step / STEPS, 1 - step / STEPS];
      const [p, q, r, w] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
      this.lineTo(p * x0 + q * ax + r * bx + w * x, p * y0 + q * ay + r * by + w * y);
    }
  }

  ellipse(x: number, y: number, rx: number, ry: number, turn: number): void {
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    for (let i = 0; i < TURN; i++) {
      const [u, v] = [rx * Math.cos((6.2832 * i) / TURN), ry * Math.sin((6.2832 * i) / TURN)];
      this.lineTo(x + u * cos - v * sin, y + u * sin + v * cos);
    }
  }

  arc(x: number, y: number, radius: number): void {
    this.ellipse(x, y, radius, radius, 0);
  }

  fill(): void {
    const color = readColor(this.fillStyle);
    for (const outline of this.#lines) this.strokes.push({ outline, color });
  }

  stroke(): void {
    const color = readColor(this.strokeStyle);
    for (const line of this.#lines) this.strokes.push({ outline: widened(line, this.lineWidth), color });
  }
}
