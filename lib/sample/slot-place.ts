import type { Slot } from "../words/slot.ts";
import { GRID_PIXELS, GRID_SIDE, type Picture } from "./picture.ts";
import { at } from "./plane.ts";
import { spanOf } from "./span.ts";

/** Half widths of the area in which the statement colour is weighed most, shares of the picture. */
const MIDDLE_X = 0.22;
const MIDDLE_Y = 0.28;
/** 0–1. Weight that even the corners keep. */
const CORNER = 0.1;

/** Height (0 top, 1 bottom) where each slot is worn in a picture of a model, and how far around. Our estimate. */
const WORN: Readonly<Record<Slot, readonly [height: number, around: number]>> = {
  top: [0.47, 0.3],
  bottom: [0.52, 0.34],
  "one-piece": [0.5, 0.4],
  layer: [0.5, 0.34],
  legwear: [0.6, 0.35],
  shoes: [0.72, 0.32],
  bag: [0.5, 0.4],
  headwear: [0.35, 0.34],
  jewellery: [0.5, 0.5],
  accessory: [0.5, 0.5],
};

const across = new Float32Array(GRID_SIDE);
const weights = new Float32Array(GRID_PIXELS);

/** Share of the height. What reaches over so much may be a person: only then do skin and a slot's height matter. */
const FIGURE = 0.75;

/** Whether the cloth reaches over the picture as a person does. */
export function isFigure(picture: Picture, cloth: Float32Array): boolean {
  const { left } = spanOf(picture, (i) => at(cloth, i) > 0.5);
  let rows = 0;
  for (let y = 0; y < picture.height; y++) rows += (left[y] as number) < GRID_SIDE ? 1 : 0;
  return rows > FIGURE * picture.height;
}

/** Weight of each pixel, 0–1, when colours compete to be the piece: the middle, and the height of the slot. */
export function placeOfSlot({ width, height }: Picture, slot: Slot | null): Float32Array {
  const worn = slot && WORN[slot];
  for (let x = 0; x < width; x++) across[x] = Math.exp(-((((x + 0.5) / width - 0.5) / MIDDLE_X) ** 2) / 2);
  for (let y = 0, i = 0; y < height; y++) {
    const down = (y + 0.5) / height;
    const level = worn ? CORNER + (1 - CORNER) * Math.exp(-(((down - worn[0]) / worn[1]) ** 2)) : 1;
    const v = (down - 0.5) / MIDDLE_Y;
    const middle = (1 - CORNER) * Math.exp((-v * v) / 2);
    for (let x = 0; x < width; x++, i++) weights[i] = level * (CORNER + middle * at(across, x));
  }
  return weights;
}
