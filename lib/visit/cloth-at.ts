import type { Rgb8 } from "../color/oklab.ts";

/** Pixels on each side of the pointed one that count too, so that a thread or a grain of noise does not decide. */
const AROUND = 2;

/** The median colour, channel by channel, of the cloth around a place of a readable canvas, in its pixels. */
export function clothAt(canvas: HTMLCanvasElement, x: number, y: number): Rgb8 {
  const side = 2 * AROUND + 1;
  const within = (at: number, size: number) => Math.max(0, Math.min(size - side, at - AROUND));
  const context = canvas.getContext("2d", { willReadFrequently: true });
  const data =
    context?.getImageData(within(x, canvas.width), within(y, canvas.height), side, side).data ?? [];
  return [medianOf(data, 0), medianOf(data, 1), medianOf(data, 2)];
}

function medianOf(rgba: ArrayLike<number>, channel: number): number {
  const values = Array.from({ length: rgba.length / 4 }, (_, pixel) => rgba[4 * pixel + channel] ?? 0);
  values.sort((a, b) => a - b);
  return values[values.length >> 1] ?? 0;
}
