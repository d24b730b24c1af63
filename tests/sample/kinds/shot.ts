import type { Slot } from "../../../lib/words/slot.ts";
import { randomFrom, seedOf } from "../../store/studio/random.ts";
import { isDrawing, type Layer } from "../../store/studio/stage.ts";
import { type Backdrop, paintBackdrop } from "./backdrops.ts";
import { develop, type TruePatch } from "./develop.ts";
import { paintCloth } from "./paint-cloth.ts";
import { paintSketch } from "./paint-sketch.ts";
import { emptySheet, type Lamp, type View } from "./sheet.ts";

/** One person or thing in a picture. */
export interface Figure {
  readonly view: View;
  readonly layers: readonly Layer[];
}

/** All that decides a picture. The same seed and shot give the same picture. */
export interface Shot {
  readonly seed: string;
  readonly backdrop: Backdrop;
  readonly lamp: Lamp;
  /** Darkness of the shadows on the backdrop, 0–1. */
  readonly near: number;
  readonly figures: readonly Figure[];
  /** What the page says beside it. */
  readonly slot: Slot;
  readonly text: string;
  /** Monk tone 1–10 and hair of the person, where there is one. */
  readonly tone: number | null;
  readonly hair: string | null;
}

/** A labelled picture as the sampler gets it. */
export interface KindPicture {
  readonly id: string;
  readonly slot: Slot;
  readonly text: string;
  readonly tone: number | null;
  readonly hair: string | null;
  /** RGBA, `SIDE` pixels a side. */
  readonly data: Uint8ClampedArray;
  /** The piece's colours, largest share first; shares sum to 1 or a little less. */
  readonly truth: readonly TruePatch[];
}

/** Takes a picture. */
export function shoot(id: string, shot: Shot): KindPicture {
  const { slot, text, tone, hair } = shot;
  const sheet = emptySheet(shot.near, shot.lamp);
  const seed = seedOf(shot.seed);
  paintBackdrop(sheet, shot.backdrop);
  shot.figures.forEach(({ view, layers }, f) => {
    layers.forEach((layer, i) => {
      if (isDrawing(layer)) paintSketch(sheet, view, layer);
      else paintCloth(sheet, view, layer, seed + 1009 * f + 101 * i);
    });
  });
  return { id, slot, text, tone, hair, ...develop(sheet, randomFrom(seed)) };
}
