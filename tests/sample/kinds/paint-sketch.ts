import { blurred } from "../../store/studio/blur.ts";
import { lightOfCode } from "../../store/studio/light.ts";
import type { Drawing } from "../../store/studio/paint-drawing.ts";
import type { Frame } from "../../store/studio/photo.ts";
import { coverPolygon } from "./cover-polygon.ts";
import { FINE, frameOf, inPixels, type Sheet, type View } from "./sheet.ts";
import { Sketch } from "./sketch.ts";

/** Alpha from which a drawing hides the cloth under it. */
const HIDES = 0.06;

/** A drawing on glass: its colour in sRGB codes and its alpha, a pixel of the frame. */
interface Glass {
  readonly view: View;
  readonly frame: Frame;
  readonly codes: readonly Float32Array[];
  readonly alpha: Float32Array;
}

function glassOf(view: View, drawing: Drawing): Glass | null {
  const sketch = new Sketch();
  drawing.draw(sketch);
  const frame = frameOf(
    sketch.strokes.flatMap(({ outline }) => outline),
    view,
    3 * drawing.soft,
  );
  if (!frame) return null;
  const planes = [0, 1, 2, 3].map(() => new Float32Array(frame.width * frame.height));
  const cover = new Float32Array(frame.width * frame.height);
  for (const { outline, color } of sketch.strokes) {
    cover.fill(0);
    coverPolygon(
      outline.map((point) => inPixels(point, view)),
      frame,
      cover,
    );
    planes.forEach((plane, c) => {
      const own = c < 3 ? (color[c] ?? 0) : 1;
      for (let i = 0; i < cover.length; i++) {
        const alpha = (cover[i] ?? 0) * color[3];
        if (alpha > 0) plane[i] = (plane[i] ?? 0) * (1 - alpha) + own * alpha;
      }
    });
  }
  const [wide, high] = [drawing.soft * view.sx, drawing.soft * view.sy];
  const soft =
    high > 0.6 ? planes.map((plane) => blurred(plane, frame.width, frame.height, wide, high)) : planes;
  return { view, frame, codes: soft.slice(0, 3), alpha: soft[3] ?? cover };
}

/** Drawings that were made before: ten people in one scene share them. */
const known = new WeakMap<Drawing, Glass>();

/** Paints one of the studio's drawings without a canvas; the cloth under it no longer counts. */
export function paintSketch(sheet: Sheet, view: View, drawing: Drawing): void {
  const before = known.get(drawing);
  const glass = before?.view === view ? before : glassOf(view, drawing);
  if (!glass) return;
  known.set(drawing, glass);
  const { frame, codes, alpha: alphas } = glass;
  for (let i = 0; i < alphas.length; i++) {
    const alpha = Math.min(1, alphas[i] ?? 0);
    if (alpha < 0.004) continue;
    const at = (frame.top + Math.floor(i / frame.width)) * FINE + frame.left + (i % frame.width);
    for (let c = 0; c < 3; c++) {
      const own = lightOfCode(Math.round(Math.min(255, (codes[c]?.[i] ?? 0) / alpha)));
      const was = sheet.light[3 * at + c] ?? 0;
      sheet.light[3 * at + c] = was * (1 - alpha) + (drawing.how === "over" ? own : own * was) * alpha;
    }
    if (alpha > HIDES) sheet.mark[at] = 0;
  }
}
