/** Where a piece is worn, from the first thing one dresses in to the last. */
export const SLOTS = [
  "top",
  "bottom",
  "one-piece",
  "layer",
  "legwear",
  "shoes",
  "bag",
  "headwear",
  "jewellery",
  "accessory",
] as const;

export type Slot = (typeof SLOTS)[number];
