import { codeOfLight } from "./light.ts";

/** Size of every picture, pixels. */
export const WIDTH = 480;
export const HEIGHT = 640;

/** Where the camera stands: a point (x, y) of the scene falls on `scale · (x, y) turned by angle + (left, top)`. */
export interface View {
  readonly scale: number;
  readonly left: number;
  readonly top: number;
  /** Radians, clockwise. */
  readonly angle: number;
}

/** A picture in the making: light per pixel, and which dye of the product shows there. */
export interface Photo {
  /** Red, green, blue of each pixel, linear. */
  readonly light: Float32Array;
  /** Index of the dye + 1 where a pixel shows that dye and nothing else; 0 elsewhere. */
  readonly dye: Uint8Array;
  /** How much of each pixel is something in front of the backdrop, 0–1. */
  readonly solid: Float32Array;
  /** Whether the backdrop is so near that things throw shadows on it. */
  readonly near: boolean;
  /** The drawing board that outlines are filled on. */
  readonly board: OffscreenCanvasRenderingContext2D;
  readonly view: View;
}

export function emptyPhoto(view: View, near: boolean): Photo {
  const board = new OffscreenCanvas(WIDTH, HEIGHT).getContext("2d", { willReadFrequently: true });
  if (!board) throw new Error("This browser has no 2D canvas.");
  return {
    light: new Float32Array(WIDTH * HEIGHT * 3),
    dye: new Uint8Array(WIDTH * HEIGHT),
    solid: new Float32Array(WIDTH * HEIGHT),
    near,
    board,
    view,
  };
}

/** Clears the board and sets it to the scene's coordinates. */
export function readyBoard({ board, view }: Photo): OffscreenCanvasRenderingContext2D {
  board.setTransform(1, 0, 0, 1, 0, 0);
  board.clearRect(0, 0, WIDTH, HEIGHT);
  board.fillStyle = "#000";
  const [cos, sin] = [view.scale * Math.cos(view.angle), view.scale * Math.sin(view.angle)];
  board.setTransform(cos, sin, -sin, cos, view.left, view.top);
  return board;
}

/** A part of the frame, pixels. */
export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** The pixels that points of the scene span, with a margin of so many pixels; null where none are in the picture. */
export function frameAround(
  points: readonly (readonly [number, number, ...unknown[]])[],
  view: View,
  margin: number,
): Frame | null {
  const [cos, sin] = [view.scale * Math.cos(view.angle), view.scale * Math.sin(view.angle)];
  const xs = points.map(([x, y]) => x * cos - y * sin + view.left);
  const ys = points.map(([x, y]) => x * sin + y * cos + view.top);
  const left = Math.max(0, Math.floor(Math.min(...xs) - margin));
  const top = Math.max(0, Math.floor(Math.min(...ys) - margin));
  const width = Math.min(WIDTH, Math.ceil(Math.max(...xs) + margin)) - left;
  const height = Math.min(HEIGHT, Math.ceil(Math.max(...ys) + margin)) - top;
  return width > 1 && height > 1 ? { left, top, width, height } : null;
}

/** Sensor noise, standard deviation in sRGB codes: a good camera at a low ISO (common practice, no source). */
const GRAIN = 1.6;

/** Part of a pixel's light that a lens spreads to each neighbour (a little softer than pixel-sharp). */
const SPREAD = 0.07;

/** The frame as the lens throws it on the sensor: a touch softer. */
function throughLens(light: Float32Array): Float32Array {
  const soft = Float32Array.from(light);
  const row = 3 * WIDTH;
  for (let i = row + 3; i < light.length - row - 3; i++) {
    const around = (light[i - 3] ?? 0) + (light[i + 3] ?? 0) + (light[i - row] ?? 0) + (light[i + row] ?? 0);
    soft[i] = (light[i] ?? 0) * (1 - 4 * SPREAD) + around * SPREAD;
  }
  return soft;
}

/** The finished frame: gamma-encoded, with the grain of a sensor. */
export function develop(photo: Photo, random: () => number): ImageData {
  const image = new ImageData(WIDTH, HEIGHT);
  const light = throughLens(photo.light);
  for (let i = 0; i < WIDTH * HEIGHT; i++) {
    const grain = (random() + random() + random() - 1.5) * 2 * GRAIN;
    for (let c = 0; c < 3; c++)
      image.data[4 * i + c] = codeOfLight(light[3 * i + c] ?? 0) + grain + (random() - 0.5) * GRAIN;
    image.data[4 * i + 3] = 255;
  }
  return image;
}

/** Fills the whole frame: `paint` gives the light at a pixel into `out`. */
export function fillFrame(
  photo: Photo,
  paint: (x: number, y: number, out: [number, number, number]) => void,
): void {
  const out: [number, number, number] = [0, 0, 0];
  for (let y = 0; y < HEIGHT; y++)
    for (let x = 0; x < WIDTH; x++) {
      paint(x, y, out);
      const at = 3 * (y * WIDTH + x);
      photo.light[at] = out[0];
      photo.light[at + 1] = out[1];
      photo.light[at + 2] = out[2];
    }
}
