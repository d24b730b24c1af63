import type { Point } from "../../store/studio/outline.ts";
import type { Frame } from "../../store/studio/photo.ts";

/** Pixels a side of the sheet that a picture is painted on: twice what the sampler is given. */
export const FINE = 192;

/** Where the camera stands. A point (x, y) of the scene, turned by `angle`, falls on (x · sx + left, y · sy + top). */
export interface View {
  /** Pixels a scene unit; they differ because a store's picture is squeezed to a square before it is sampled. */
  readonly sx: number;
  readonly sy: number;
  readonly left: number;
  readonly top: number;
  /** Radians, clockwise. */
  readonly angle: number;
}

/** The light of one picture. */
export interface Lamp {
  /** Direction to the lamp, unit length: to the right, down, towards the camera. */
  readonly from: readonly [number, number, number];
  /** Part of the light that comes from all sides, 0–1. */
  readonly ambient: number;
  /** How much more light falls on the right edge than on the left, and on the lower than on the upper; 0.4 is ±20 %. */
  readonly slope: readonly [across: number, down: number];
  /** How much bluer shadows are than lit cloth: exponent by which red falls faster than green, and blue slower. */
  readonly cool: number;
  /** White balance on things: gains of red, green, blue. */
  readonly tint: readonly [number, number, number];
  /** The same on the backdrop: none where the piece was cut out. */
  readonly wall: readonly [number, number, number];
}

/** A picture in the making. */
export interface Sheet {
  /** Red, green, blue of each pixel, linear. */
  readonly light: Float32Array;
  /** What a pixel shows: 0 not the piece; else its dye + 1, plus `SHEER` where something else shines through. */
  readonly mark: Uint8Array;
  /** How much of each pixel is something in front of the backdrop, 0–1. */
  readonly solid: Float32Array;
  /** Darkness of the shadows on the backdrop: 1 as on things, 0 where the backdrop is far away. */
  readonly near: number;
  readonly lamp: Lamp;
}

/** Mark of a sheer cloth over something that is not the piece. */
export const SHEER = 32;

export const emptySheet = (near: number, lamp: Lamp): Sheet => ({
  light: new Float32Array(FINE * FINE * 3),
  mark: new Uint8Array(FINE * FINE),
  solid: new Float32Array(FINE * FINE),
  near,
  lamp,
});

/** A scene point in pixels. */
export function inPixels([x, y]: Point, view: View): Point {
  const [cos, sin] = [Math.cos(view.angle), Math.sin(view.angle)];
  return [(x * cos - y * sin) * view.sx + view.left, (x * sin + y * cos) * view.sy + view.top];
}

/** The pixels that points of the scene span, with a margin of so many scene units; null where none are on the sheet. */
export function frameOf(points: readonly Point[], view: View, margin: number): Frame | null {
  let [left, top, right, low] = [FINE, FINE, 0, 0];
  for (const point of points) {
    const [x, y] = inPixels(point, view);
    [left, right] = [Math.min(left, x), Math.max(right, x)];
    [top, low] = [Math.min(top, y), Math.max(low, y)];
  }
  const [wide, high] = [2 + margin * view.sx, 2 + margin * view.sy];
  left = Math.max(0, Math.floor(left - wide));
  top = Math.max(0, Math.floor(top - high));
  const width = Math.min(FINE, Math.ceil(right + wide)) - left;
  const height = Math.min(FINE, Math.ceil(low + high)) - top;
  return width > 1 && height > 1 ? { left, top, width, height } : null;
}

/** A view of scene rows `top`…`bottom` over the whole height of a picture that is `aspect` times as wide as high. */
export function viewOf(
  [top, bottom]: readonly [number, number],
  aspect: number,
  at: { readonly x?: number; readonly y?: number; readonly angle?: number } = {},
): View {
  const { x = 0, y = 0, angle = 0 } = at;
  const sy = FINE / (bottom - top);
  const sx = sy / aspect;
  const middle = (top + bottom) / 2;
  return {
    sx,
    sy,
    angle,
    left: FINE * (0.5 + x) + Math.sin(angle) * middle * sx,
    top: FINE * (0.5 + y) - Math.cos(angle) * middle * sy,
  };
}
