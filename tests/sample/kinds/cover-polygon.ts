import type { Point } from "../../store/studio/outline.ts";
import type { Frame } from "../../store/studio/photo.ts";

/** Scan lines a pixel row: steps of a quarter in height, exact in width. */
const LINES = 4;

/** Adds the pixels of one row that lie between two crossings. */
function addSpan(row: Float32Array, from: number, to: number): void {
  const [a, b] = [Math.max(0, from), Math.min(row.length, to)];
  if (b <= a) return;
  const [first, last] = [Math.floor(a), Math.min(row.length - 1, Math.floor(b))];
  if (first === last) {
    row[first] = (row[first] ?? 0) + (b - a) / LINES;
    return;
  }
  row[first] = (row[first] ?? 0) + (first + 1 - a) / LINES;
  for (let x = first + 1; x < last; x++) row[x] = (row[x] ?? 0) + 1 / LINES;
  row[last] = (row[last] ?? 0) + (b - last) / LINES;
}

/** Where a polygon crosses each scan line, with its direction in the sign of the pair's second number. */
function crossingsOf(polygon: readonly Point[], frame: Frame): (readonly [x: number, turn: number])[][] {
  const lines: (readonly [number, number])[][] = Array.from({ length: frame.height * LINES }, () => []);
  polygon.forEach(([x0, y0], i) => {
    const [x1, y1] = polygon[(i + 1) % polygon.length] ?? [x0, y0];
    if (y0 === y1) return;
    const [top, low] = y0 < y1 ? [y0, y1] : [y1, y0];
    const first = Math.max(0, Math.ceil((top - frame.top) * LINES - 0.5));
    const past = Math.min(lines.length, Math.ceil((low - frame.top) * LINES - 0.5));
    const slope = (x1 - x0) / (y1 - y0);
    for (let line = first; line < past; line++) {
      const y = frame.top + (line + 0.5) / LINES;
      lines[line]?.push([x0 + (y - y0) * slope - frame.left, y1 > y0 ? 1 : -1]);
    }
  });
  return lines;
}

/** Lays a polygon, in pixels, over what `cover` holds: 0–1 a pixel of the frame, non-zero winding. */
export function coverPolygon(polygon: readonly Point[], frame: Frame, cover: Float32Array): void {
  const row = new Float32Array(frame.width);
  crossingsOf(polygon, frame).forEach((line, at, lines) => {
    if (at % LINES === 0) row.fill(0);
    line.sort((a, b) => a[0] - b[0]);
    let winding = 0;
    line.forEach(([x, turn], i) => {
      winding += turn;
      if (winding !== 0) addSpan(row, x, line[i + 1]?.[0] ?? x);
    });
    if (at % LINES < LINES - 1 && at < lines.length - 1) return;
    const start = Math.floor(at / LINES) * frame.width;
    for (let x = 0; x < frame.width; x++) {
      const more = Math.min(1, row[x] ?? 0);
      const was = cover[start + x] ?? 0;
      cover[start + x] = was + more - was * more;
    }
  });
}
