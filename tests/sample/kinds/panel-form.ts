import { blurred } from "../../store/studio/blur.ts";
import { foldingOf } from "../../store/studio/folds.ts";
import { cloudy, noiseFrom } from "../../store/studio/noise.ts";
import type { Panel } from "../../store/studio/paint-panel.ts";
import type { Frame } from "../../store/studio/photo.ts";
import { textureOf } from "../../store/studio/texture.ts";
import { coverPolygon } from "./cover-polygon.ts";
import { finishOf, sparkleOf } from "./finish.ts";
import { shadeOf } from "./shade.ts";
import { frameOf, inPixels, type Lamp, type View } from "./sheet.ts";

/** Cover from which a pixel shows the cloth and nothing else. */
export const WHOLE = 0.97;
/** How steep folds stand, against their drawn height; by eye. */
const RELIEF = 1.25;
/** How round a body is, against the width of its curve; by eye. */
const CURVE = 0.95;

/** The panel's own coordinates of a pixel, as the rows of an affine map. */
function grainMap(panel: Panel, view: View): readonly number[] {
  const { grain } = panel;
  const [cv, sv] = [Math.cos(view.angle), Math.sin(view.angle)];
  const [cg, sg] = [Math.cos(grain.angle), Math.sin(grain.angle)];
  // Scene: x = cv·p + sv·q, y = cv·q − sv·p with p, q the pixel in scene units; then the same turn by the grain.
  const [px, py] = [(0.5 - view.left) / view.sx, (0.5 - view.top) / view.sy];
  const [x0, y0] = [cv * px + sv * py - grain.x, cv * py - sv * px - grain.y];
  const [xa, xb, ya, yb] = [cv / view.sx, sv / view.sy, -sv / view.sx, cv / view.sy];
  return [
    cg * xa + sg * ya,
    cg * xb + sg * yb,
    cg * x0 + sg * y0,
    cg * ya - sg * xa,
    cg * yb - sg * xb,
    cg * y0 - sg * x0,
  ];
}

/** Darkness of a panel's shadow on what is behind it, away from the lamp: 0–1 a pixel of its frame. */
function shadowOf(
  view: View,
  lamp: Lamp,
  cover: Float32Array,
  frame: Frame,
  panel: Panel,
): Float32Array | null {
  if (panel.shadow === 0) return null;
  const [rx, ry] = [panel.throw * view.sx, panel.throw * view.sy];
  const wide = blurred(cover, frame.width, frame.height, Math.max(1.2, rx), Math.max(1.2, ry));
  const dx = Math.round(-Math.sign(lamp.from[0]) * rx * 0.55);
  const dy = Math.round(-Math.sign(lamp.from[1]) * ry * 0.7);
  const dark = new Float32Array(cover.length);
  for (let y = 0, i = 0; y < frame.height; y++) {
    const row = Math.min(frame.height - 1, Math.max(0, y - dy)) * frame.width;
    for (let x = 0; x < frame.width; x++, i++)
      dark[i] = panel.shadow * (wide[row + Math.min(frame.width - 1, Math.max(0, x - dx))] ?? 0);
  }
  return dark;
}

/** Height of the surface in scene units: rounded towards its edge, with its folds. */
function reliefOf(
  view: View,
  cover: Float32Array,
  frame: Frame,
  panel: Panel,
  map: readonly number[],
  seed: number,
): Float32Array {
  const [rx, ry] = [panel.round * view.sx, panel.round * view.sy];
  const upright = panel.shape === "column" ? 0.6 : Math.max(0.8, ry);
  const near = blurred(cover, frame.width, frame.height, Math.max(0.8, rx), upright);
  const folding = foldingOf(panel.fall, panel.grain, panel.deep, noiseFrom(seed));
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = map;
  return near.map((value, i) => {
    if (value < 0.02) return 0;
    const inside = Math.min(1, Math.max(0, 2 * value - 1));
    const x = frame.left + (i % frame.width);
    const y = frame.top + Math.floor(i / frame.width);
    const body = CURVE * panel.round * inside * (2 - inside);
    return body + RELIEF * folding(a * x + b * y + c, d * x + e * y + f);
  });
}

/** Middle value of the shade over the pixels that the panel wholly covers. */
function middleOf(shade: Float32Array, cover: Float32Array): number {
  const inside = shade.filter((_, i) => i % 5 === 0 && (cover[i] ?? 0) > WHOLE).sort();
  return inside[inside.length >> 1] || 1;
}

/** What a panel looks like before it has a dye. */
export interface Form {
  readonly view: View;
  readonly lamp: Lamp;
  readonly seed: number;
  readonly frame: Frame;
  readonly cover: Float32Array;
  readonly map: readonly number[];
  readonly relief: Float32Array;
  /** Light on each pixel, 1 where the middle of the cloth shows its dye, and the lamp's own light in it. */
  readonly lit: Float32Array;
  readonly gloss: Float32Array;
  readonly shadow: Float32Array | null;
}

function form(view: View, lamp: Lamp, panel: Panel, seed: number): Form | null {
  const frame = frameOf(panel.outlines.flat(), view, 2.5 * panel.throw);
  if (!frame) return null;
  const cover = new Float32Array(frame.width * frame.height);
  for (const outline of panel.outlines)
    coverPolygon(
      outline.map((point) => inPixels(point, view)),
      frame,
      cover,
    );
  const map = grainMap(panel, view);
  const relief = reliefOf(view, cover, frame, panel, map, seed);
  const finish = finishOf(panel.cloth);
  const { shade, gloss } = shadeOf(relief, frame, view, lamp, panel.cloth.weave, finish);
  const level = panel.lit / middleOf(shade, cover);
  const texture = textureOf(panel.cloth.weave, cloudy(noiseFrom(7)));
  const sparkle = sparkleOf(finish, noiseFrom(seed + 5));
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = map;
  const lit = shade.map((value, i) => {
    if ((cover[i] ?? 0) === 0) return 0;
    const [x, y] = [frame.left + (i % frame.width), frame.top + Math.floor(i / frame.width)];
    const [u, v] = [a * x + b * y + c, d * x + e * y + f];
    const [tilt, glint] = sparkle?.(u, v) ?? [1, 0];
    gloss[i] = (gloss[i] ?? 0) + glint;
    return value * level * texture(u, v, 1 / view.sy) * tilt;
  });
  const shadow = shadowOf(view, lamp, cover, frame, panel);
  return { view, lamp, seed, frame, cover, map, relief, lit, gloss, shadow };
}

/** Forms by the outlines of their panel: ten people in one scene differ in their dyes alone. */
const known = new WeakMap<Panel["outlines"], Form>();

export function formOf(view: View, lamp: Lamp, panel: Panel, seed: number): Form | null {
  const before = known.get(panel.outlines);
  if (before && before.view === view && before.lamp === lamp && before.seed === seed) return before;
  const made = form(view, lamp, panel, seed);
  if (made) known.set(panel.outlines, made);
  return made;
}
