import type { Slot } from "../words/slot.ts";
import { at } from "./plane.ts";
import { type Raster, SKETCH_SIDE, sketchPlane } from "./raster.ts";

/** Half widths of the area in which the statement colour is weighed most, shares of the picture. */
const MIDDLE_X = 0.22;
const MIDDLE_Y = 0.28;
/** 0–1. Weight that even the corners keep. */
const CORNER = 0.1;

/** Height (0 top, 1 bottom) where each slot is worn in a picture of a model, and how far around. Our estimate. */
const WORN: Readonly<Record<Slot, readonly [height: number, around: number]>> = {
  top: [0.47, 0.3],
  bottom: [0.58, 0.34],
  "one-piece": [0.5, 0.4],
  layer: [0.5, 0.34],
  legwear: [0.6, 0.35],
  shoes: [0.72, 0.32],
  bag: [0.5, 0.4],
  headwear: [0.35, 0.34],
  jewellery: [0.5, 0.5],
  accessory: [0.5, 0.5],
};

const across = new Float32Array(SKETCH_SIDE);
const weights = sketchPlane();

/** Share of the height. What reaches over so much may be a person: only then do skin and a slot's height matter. */
const FIGURE = 0.75;

/** Whether the cloth reaches over the picture as a person does. */
export function isFigure({ width, height, count }: Raster, cloth: Float32Array): boolean {
  let first = 0;
  while (first < count && at(cloth, first) <= 0.5) first++;
  let last = count - 1;
  while (last > first && at(cloth, last) <= 0.5) last--;
  return Math.floor(last / width) - Math.floor(first / width) >= FIGURE * height;
}

/** Slots whose wearer goes on above them in a picture: head, torso or legs leave it at the top. */
const WORN_BELOW: readonly Slot[] = ["top", "layer", "one-piece", "bottom", "legwear", "shoes"];

/** Rows in which what touches the border is the slot's wearer rather than the piece: from the first up to the second. */
export function leavingRows(slot: Slot | null, height: number): readonly [top: number, bottom: number] {
  if (slot && WORN_BELOW.includes(slot)) return [0, 1];
  return [slot === "headwear" ? 1 : 0, height];
}

/** Weight of each pixel of the sketch, 0–1, when colours compete to be the piece: the middle, and the height of the slot. */
export function placeOfSlot({ width, height }: Raster, slot: Slot | null): Float32Array {
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
