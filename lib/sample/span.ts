import { byteAt } from "./plane.ts";
import { type Raster, SKETCH_SIDE } from "./raster.ts";

/** First and last pixel of a set in each row and each column. */
export interface Span {
  readonly left: Int16Array;
  readonly right: Int16Array;
  readonly top: Int16Array;
  readonly bottom: Int16Array;
}

const side = () => new Int16Array(SKETCH_SIDE);
const span: Span = { left: side(), right: side(), top: side(), bottom: side() };

/** Span of the pixels that are set in `has`; one at a time: the next call writes over it. */
export function spanOf({ width, height }: Pick<Raster, "width" | "height">, has: Uint8Array): Span {
  const { left, right, top, bottom } = span;
  left.fill(SKETCH_SIDE);
  top.fill(SKETCH_SIDE);
  right.fill(-1);
  bottom.fill(-1);
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i++) {
      if (!byteAt(has, i)) continue;
      if (right[y] === -1) left[y] = x;
      right[y] = x;
      if (bottom[x] === -1) top[x] = y;
      bottom[x] = y;
    }
  }
  bridge(left, right, height);
  bridge(top, bottom, width);
  return span;
}

/** Lines without the set between lines with it take the span before them: the other stripe lies there. */
function bridge(first: Int16Array, last: Int16Array, lines: number): void {
  let end = lines - 1;
  while (end > 0 && last[end] === -1) end--;
  for (let line = 1; line < end; line++) {
    if (last[line] !== -1) continue;
    first[line] = first[line - 1] as number;
    last[line] = last[line - 1] as number;
  }
}

/** Whether the set has pixels on all four sides of a pixel, or there. */
export function isAmong({ left, right, top, bottom }: Span, x: number, y: number): boolean {
  return (
    x >= (left[y] as number) &&
    x <= (right[y] as number) &&
    y >= (top[x] as number) &&
    y <= (bottom[x] as number)
  );
}
