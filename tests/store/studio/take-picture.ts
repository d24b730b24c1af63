import { compose } from "./compose.ts";
import { paintBackdrop } from "./paint-backdrop.ts";
import { paintDrawing } from "./paint-drawing.ts";
import { paintPanel } from "./paint-panel.ts";
import { develop, emptyPhoto, HEIGHT, WIDTH } from "./photo.ts";
import { randomFrom, seedOf } from "./random.ts";
import type { Recipe } from "./recipe.ts";
import { isDrawing } from "./stage.ts";

/** JPEG quality of a store (common practice, no source). */
const QUALITY = 0.82;
/** How far the exposure of a good product photo strays from the truth: ±5 % (common practice, no source). */
const EXPOSURE_SPREAD = 0.05;
/** Grey step between two dyes in the mask. */
export const MASK_STEP = 40;

/** A finished picture: base64 files, and how many pixels show each dye and nothing else. */
export interface Taken {
  readonly jpeg: string;
  /** A PNG as large as the picture: grey `MASK_STEP × (dye + 1)` where one dye of the product shows, else black. */
  readonly mask: string;
  readonly pixels: readonly number[];
}

async function fileOf(image: ImageData, type: string, quality?: number): Promise<string> {
  const canvas = new OffscreenCanvas(WIDTH, HEIGHT);
  canvas.getContext("2d")?.putImageData(image, 0, 0);
  const blob = await canvas.convertToBlob(quality === undefined ? { type } : { type, quality });
  const bytes = new Uint8Array(await blob.arrayBuffer());
  return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
}

/** Takes the picture of a recipe. The same recipe gives the same picture. */
export async function takePicture(recipe: Recipe): Promise<Taken> {
  const seed = seedOf(recipe.id);
  const random = randomFrom(seed);
  const { view, near, layers } = compose(recipe, random);
  const photo = emptyPhoto(view, near);
  paintBackdrop(photo, recipe.scene.backdrop, seed);
  const exposure = 1 + (2 * random() - 1) * EXPOSURE_SPREAD;
  layers.forEach((layer, i) => {
    if (isDrawing(layer)) paintDrawing(photo, layer);
    else paintPanel(photo, layer, layer.product ? exposure : 1, seed + 101 * i);
  });
  const mask = new ImageData(WIDTH, HEIGHT);
  const pixels = recipe.cloth.dyes.map(() => 0);
  photo.dye.forEach((dye, i) => {
    if (dye > 0) pixels[dye - 1] = (pixels[dye - 1] ?? 0) + 1;
    mask.data.set([dye * MASK_STEP, dye * MASK_STEP, dye * MASK_STEP, 255], 4 * i);
  });
  return {
    jpeg: await fileOf(develop(photo, random), "image/jpeg", QUALITY),
    mask: await fileOf(mask, "image/png"),
    pixels,
  };
}
