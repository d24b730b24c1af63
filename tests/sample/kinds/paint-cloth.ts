import { type Light, lightOf } from "../../store/studio/light.ts";
import { noiseFrom } from "../../store/studio/noise.ts";
import type { Panel } from "../../store/studio/paint-panel.ts";
import { type Inked, printingOf } from "../../store/studio/print.ts";
import { finishOf, partOf, veilOf } from "./finish.ts";
import { type Form, formOf, WHOLE } from "./panel-form.ts";
import { FINE, SHEER, type Sheet, type View } from "./sheet.ts";

/** Print from which a pixel shows one dye. */
const PURE = 0.96;
/** Cover from which a veil counts as the cloth itself. */
const OPAQUE = 0.9;
function throwShadow(sheet: Sheet, { shadow, frame }: Form): void {
  if (!shadow) return;
  const { light, solid, near } = sheet;
  for (let i = 0; i < shadow.length; i++) {
    const at = (Math.floor(i / frame.width) + frame.top) * FINE + (i % frame.width) + frame.left;
    const dark = (shadow[i] ?? 0) * Math.max(near, solid[at] ?? 0);
    if (dark < 0.003) continue;
    for (let c = 3 * at; c < 3 * at + 3; c++) light[c] = (light[c] ?? 0) * (1 - dark);
  }
}

/** The light that one dye gives back under a shade: `flush` darkens its shadows more; a metal thread mirrors the room. */
function litDye(dye: number, lit: number, gloss: number, metal: boolean, flush: number): number {
  if (metal) return dye * (0.3 + 0.7 * lit ** 2.4) + gloss * (0.15 + 1.6 * dye);
  return dye * (flush !== 0 && lit < 1 ? lit ** (1 + flush) : lit) + gloss * (0.25 + 0.75 * dye);
}

/** Paints a panel of the studio without a canvas: cloth, skin, hair, leather. */
export function paintCloth(sheet: Sheet, view: View, panel: Panel, seed: number): void {
  const made = formOf(view, sheet.lamp, panel, seed);
  if (!made) return;
  throwShadow(sheet, made);
  dye(sheet, panel, made);
}

/** Lays the lit dyes of a panel over the sheet and marks what is the piece. */
function dye(sheet: Sheet, panel: Panel, form: Form): void {
  const { view, seed, frame, cover, map, relief, lit, gloss } = form;
  const px = 1 / view.sy;
  const finish = finishOf(panel.cloth);
  const part = partOf(panel.cloth);
  const { slope, tint, cool } = sheet.lamp;
  const dyes: Light[] = panel.cloth.dyes.map(lightOf);
  const ground: Light = dyes[0] ?? [0, 0, 0];
  const printing = printingOf(panel.cloth.print, dyes.length, panel.repeat, seed % 4096);
  const veil = veilOf(finish, seed, noiseFrom(seed + 3));
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = map;
  const ink: Inked = { under: 0, over: 0, t: 0 };
  for (let i = 0; i < cover.length; i++) {
    const inside = cover[i] ?? 0;
    if (inside === 0) continue;
    const x = frame.left + (i % frame.width);
    const y = frame.top + Math.floor(i / frame.width);
    const bend = 0.16 * (relief[i] ?? 0);
    const u = a * x + b * y + c + bend;
    const v = d * x + e * y + f - bend;
    printing(u - bend * 0.6, v, px, ink);
    const under = dyes[ink.under] ?? ground;
    const over = dyes[ink.over] ?? ground;
    const sloped = 1 + slope[0] * (x / FINE - 0.5) + slope[1] * (y / FINE - 0.5);
    const cloak = veil?.(u, v, px) ?? 1;
    const alpha = inside * cloak;
    const at = y * FINE + x;
    for (let k = 0; k < 3; k++) {
      const own = (under[k] ?? 0) + ((over[k] ?? 0) - (under[k] ?? 0)) * ink.t;
      const flush = panel.flush * k + cool * (1 - k);
      const value =
        litDye(own, lit[i] ?? 0, gloss[i] ?? 0, finish === "metal", flush) * sloped * (tint[k] ?? 1);
      sheet.light[3 * at + k] = (sheet.light[3 * at + k] ?? 0) * (1 - alpha) + value * alpha;
    }
    sheet.solid[at] = Math.max(sheet.solid[at] ?? 0, inside);
    const pure = ink.t < 1 - PURE ? ink.under + 1 : ink.t > PURE ? ink.over + 1 : 0;
    const own = inside > WHOLE ? (panel.product ? pure : part) : 0;
    if (inside > 0.03) sheet.mark[at] = marked(sheet.mark[at] ?? 0, own, cloak);
  }
}

/** The mark of a pixel after cloth that hides `cloak` of what was there. */
function marked(was: number, own: number, cloak: number): number {
  if (own === 0 || cloak > OPAQUE) return own;
  return was > 0 && was < SHEER ? was : own + SHEER;
}
