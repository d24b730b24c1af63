import { blurred } from "./blur.ts";
import { type Fall, foldingOf, type Grain } from "./folds.ts";
import { type Light, lightOf } from "./light.ts";
import { cloudy, noiseFrom } from "./noise.ts";
import type { Point } from "./outline.ts";
import { type Frame, frameAround, type Photo, readyBoard, WIDTH } from "./photo.ts";
import { type Inked, printingOf } from "./print.ts";
import type { Cloth } from "./recipe.ts";
import { textureOf } from "./texture.ts";

/** One piece of surface with an outline: cloth, leather, skin, hair. */
export interface Panel {
  /** One outline or more, filled together. */
  readonly outlines: readonly (readonly Point[])[];
  readonly cloth: Cloth;
  /** Whether this is the product's own main cloth, whose dyes are the truth. */
  readonly product: boolean;
  readonly fall: Fall;
  readonly grain: Grain;
  /** Depth of its folds, 1 for ordinary cloth. */
  readonly deep: number;
  /** How far its sides curve away, scene units. */
  readonly round: number;
  /** Curved like a column, so that hems stay flat, or like a cushion. */
  readonly shape: "column" | "cushion";
  /** How dark a shadow it throws on what is behind it, 0–1, and how far, scene units. */
  readonly shadow: number;
  readonly throw: number;
  /** Brightness against the rest of the picture: 1, less for what lies in the shade. */
  readonly lit: number;
  /** How much redder its shadows are, 0 for cloth: light comes back through skin. */
  readonly flush: number;
  /** Size of the print's repeat, 1 for a garment, less for small things. */
  readonly repeat: number;
}

/** Where the light comes from: above, left, in front; unit length. */
const LAMP = [-0.37, -0.44, 0.818] as const;
/** Part of the light that comes from all sides (a soft box and white walls; common practice, no source). */
const AMBIENT = 0.56;
/** Shine of the weaves: strength of the highlight. */
const SHINE: Record<Cloth["weave"], number> = {
  smooth: 0.02,
  knit: 0,
  denim: 0.02,
  satin: 0.3,
  wool: 0,
  leather: 0.22,
};
/** How steep folds stand, against their drawn height; by eye. */
const RELIEF = 1.25;
/** How round a body is, against the width of its curve; by eye. */
const CURVE = 0.95;

/** How much of each pixel the outlines cover, 0–1. */
function coverOf(photo: Photo, outlines: Panel["outlines"], frame: Frame): Float32Array {
  const board = readyBoard(photo);
  for (const outline of outlines) {
    board.beginPath();
    for (const [x, y] of outline) board.lineTo(x, y);
    board.closePath();
    board.fill();
  }
  const { data } = board.getImageData(frame.left, frame.top, frame.width, frame.height);
  return new Float32Array(frame.width * frame.height).map((_, i) => (data[4 * i + 3] ?? 0) / 255);
}

/** Darkens what is behind, away from the lamp. */
function throwShadow(photo: Photo, cover: Float32Array, frame: Frame, panel: Panel): void {
  if (panel.shadow === 0) return;
  const reach = panel.throw * photo.view.scale;
  const wide = blurred(cover, frame.width, frame.height, Math.max(1.5, reach));
  const [dx, dy] = [Math.round(reach * 0.55), Math.round(reach * 0.7)];
  for (let y = 0; y < frame.height; y++)
    for (let x = 0; x < frame.width; x++) {
      const sx = Math.max(0, x - dx);
      const sy = Math.max(0, y - dy);
      const at = (y + frame.top) * WIDTH + x + frame.left;
      const dark =
        panel.shadow * (wide[sy * frame.width + sx] ?? 0) * (photo.near ? 1 : (photo.solid[at] ?? 0));
      if (dark < 0.002) continue;
      for (let c = 3 * at; c < 3 * at + 3; c++) photo.light[c] = (photo.light[c] ?? 0) * (1 - dark);
    }
}

/** Turns a pixel of the frame into the panel's own (u, v): u = a·x + b·y + c, v = a·y − b·x + d. */
function grainMap({ grain }: Panel, { view }: Photo): readonly [a: number, b: number, c: number, d: number] {
  const turn = view.angle + grain.angle;
  const [a, b] = [Math.cos(turn) / view.scale, Math.sin(turn) / view.scale];
  const [cos, sin] = [Math.cos(grain.angle), Math.sin(grain.angle)];
  const [x, y] = [0.5 - view.left, 0.5 - view.top];
  return [a, b, a * x + b * y - grain.x * cos - grain.y * sin, a * y - b * x - grain.y * cos + grain.x * sin];
}

/** Height of the surface in pixels: rounded towards its edge, with its folds. */
function reliefOf(photo: Photo, cover: Float32Array, frame: Frame, panel: Panel, seed: number): Float32Array {
  const round = panel.round * photo.view.scale;
  const near = blurred(
    cover,
    frame.width,
    frame.height,
    Math.max(1.2, round),
    panel.shape === "column" ? 1 : undefined,
  );
  const folding = foldingOf(panel.fall, panel.grain, panel.deep, noiseFrom(seed));
  const [a, b, c, d] = grainMap(panel, photo);
  return near.map((value, i) => {
    if (value < 0.02) return 0;
    const inside = Math.min(1, Math.max(0, 2 * value - 1));
    const body = CURVE * round * inside * (2 - inside);
    const x = frame.left + (i % frame.width);
    const y = frame.top + Math.floor(i / frame.width);
    return body + RELIEF * photo.view.scale * folding(a * x + b * y + c, a * y - b * x + d);
  });
}

/** Light on each pixel of the relief, and the shine; folded valleys get less of the light from all sides. */
function shadeOf(
  relief: Float32Array,
  frame: Frame,
  shine: number,
): { shade: Float32Array; gloss: Float32Array } {
  const soft = blurred(relief, frame.width, frame.height, 9);
  const shade = new Float32Array(relief.length);
  const gloss = new Float32Array(relief.length);
  const [wide, high] = [frame.width, frame.height];
  for (let y = 0; y < high; y++)
    for (let x = 0; x < wide; x++) {
      const i = y * wide + x;
      const left = x > 0 ? 1 : 0;
      const right = x < wide - 1 ? 1 : 0;
      const up = y > 0 ? wide : 0;
      const down = y < high - 1 ? wide : 0;
      const gx = ((relief[i + right] ?? 0) - (relief[i - left] ?? 0)) / (left + right);
      const gy = (((relief[i + down] ?? 0) - (relief[i - up] ?? 0)) * wide) / (up + down);
      const facing = 1 / Math.sqrt(gx * gx + gy * gy + 1);
      const lambert = Math.max(0, (LAMP[2] - gx * LAMP[0] - gy * LAMP[1]) * facing) / LAMP[2];
      const valley = Math.max(-0.22, Math.min(0.12, ((relief[i] ?? 0) - (soft[i] ?? 0)) * 0.035));
      shade[i] = (AMBIENT + (1 - AMBIENT) * lambert) * (1 + valley);
      if (shine > 0)
        gloss[i] = shine * Math.max(0, (0.953 - gx * LAMP[0] * 0.52 - gy * LAMP[1] * 0.52) * facing) ** 26;
    }
  return { shade, gloss };
}

/** The middle value of the shade over the pixels that the panel wholly covers. */
function middleOf(shade: Float32Array, cover: Float32Array): number {
  const inside = shade.filter((_, i) => i % 5 === 0 && (cover[i] ?? 0) > 0.99).sort();
  return inside[inside.length >> 1] || 1;
}

/** Paints a panel over the photo so that the median of its lit cloth is its dye times `exposure`. */
export function paintPanel(photo: Photo, panel: Panel, exposure: number, seed: number): void {
  const frame = frameAround(panel.outlines.flat(), photo.view, 4 + 2.5 * panel.throw * photo.view.scale);
  if (!frame) return;
  const cover = coverOf(photo, panel.outlines, frame);
  throwShadow(photo, cover, frame, panel);
  const relief = reliefOf(photo, cover, frame, panel, seed);
  const { shade, gloss } = shadeOf(relief, frame, SHINE[panel.cloth.weave]);
  const level = (exposure * panel.lit) / middleOf(shade, cover);

  const dyes: Light[] = panel.cloth.dyes.map(lightOf);
  const ground: Light = dyes[0] ?? [0, 0, 0];
  const px = 1 / photo.view.scale;
  const printing = printingOf(panel.cloth.print, dyes.length, panel.repeat, seed % 4096);
  const texture = textureOf(panel.cloth.weave, cloudy(noiseFrom(7)));
  const [a, b, c, d] = grainMap(panel, photo);
  const ink: Inked = { under: 0, over: 0, t: 0 };
  for (let i = 0; i < cover.length; i++) {
    const alpha = cover[i] ?? 0;
    if (alpha === 0) continue;
    const x = frame.left + (i % frame.width);
    const y = frame.top + Math.floor(i / frame.width);
    const u = a * x + b * y + c;
    const v = a * y - b * x + d;
    const bend = 0.16 * px * (relief[i] ?? 0);
    printing(u + bend * 0.4, v - bend, px, ink);
    const under = dyes[ink.under] ?? ground;
    const over = dyes[ink.over] ?? ground;
    const lit = (shade[i] ?? 0) * level * texture(u, v, px);
    const at = y * WIDTH + x;
    for (let channel = 0; channel < 3; channel++) {
      const dye = (under[channel] ?? 0) + ((over[channel] ?? 0) - (under[channel] ?? 0)) * ink.t;
      const value =
        dye * (panel.flush > 0 && lit < 1 ? lit ** (1 + panel.flush * channel) : lit) +
        (gloss[i] ?? 0) * (0.25 + 0.75 * dye);
      photo.light[3 * at + channel] = (photo.light[3 * at + channel] ?? 0) * (1 - alpha) + value * alpha;
    }
    const pure = ink.t < 0.02 ? ink.under + 1 : ink.t > 0.98 ? ink.over + 1 : 0;
    photo.solid[at] = Math.max(photo.solid[at] ?? 0, alpha);
    if (alpha > 0.02) photo.dye[at] = panel.product && alpha > 0.98 ? pure : 0;
  }
}
