import type { Slot } from "../../../lib/words/slot.ts";

/** How a cloth is made; decides its fine texture and how it falls. */
export const WEAVES = ["smooth", "knit", "denim", "satin", "wool", "leather"] as const;
export type Weave = (typeof WEAVES)[number];

/** What is printed or woven into it. */
export const PRINTS = ["plain", "stripes", "dots", "floral", "check", "gingham"] as const;
export type Print = (typeof PRINTS)[number];

/** A cloth: its dyes as `#rrggbb`, the ground first. A plain cloth has one, a print two to four. */
export interface Cloth {
  readonly weave: Weave;
  readonly print: Print;
  readonly dyes: readonly string[];
}

/** Each cut and the slot it is worn in. */
export const CUTS = {
  "wrap-dress": "one-piece",
  "flare-dress": "one-piece",
  "shirt-dress": "one-piece",
  "slip-dress": "one-piece",
  "maxi-dress": "one-piece",
  "tee-dress": "one-piece",
  "knit-dress": "one-piece",
  jumpsuit: "one-piece",
  tee: "top",
  longsleeve: "top",
  blouse: "top",
  shirt: "top",
  jumper: "top",
  rollneck: "top",
  vest: "top",
  camisole: "top",
  "pleated-skirt": "bottom",
  "a-line-skirt": "bottom",
  "pencil-skirt": "bottom",
  "wide-trousers": "bottom",
  "straight-trousers": "bottom",
  jeans: "bottom",
  shorts: "bottom",
  coat: "layer",
  blazer: "layer",
  jacket: "layer",
  cardigan: "layer",
  tights: "legwear",
  socks: "legwear",
  "court-shoe": "shoes",
  "ankle-boot": "shoes",
  trainer: "shoes",
  ballerina: "shoes",
  "saddle-bag": "bag",
  tote: "bag",
  beret: "headwear",
  beanie: "headwear",
  beads: "jewellery",
  scarf: "accessory",
  belt: "accessory",
} as const satisfies Record<string, Slot>;
export type Cut = keyof typeof CUTS;

/** How the piece is shown: worn, on a hanger, laid on a floor, filled out without a body, or standing by itself. */
export const POSES = ["model", "hanger", "flat", "ghost", "still"] as const;
export type Pose = (typeof POSES)[number];

/** What is behind it. The last four are seen from above (floors) or have a wall and a floor. */
export const BACKDROPS = [
  "white",
  "grey",
  "fade",
  "dusk",
  "rose",
  "sage",
  "ochre",
  "azure",
  "terracotta",
  "plaster",
  "room",
  "oak",
  "walnut",
  "ash",
] as const;
export type Backdrop = (typeof BACKDROPS)[number];

/** A scene. `skin`: Monk tone 1–10, null where nobody is in the picture. */
export interface Scene {
  readonly pose: Pose;
  readonly backdrop: Backdrop;
  readonly skin: number | null;
}

/** All that decides a picture; the same recipe gives the same picture. */
export interface Recipe {
  /** File name without ending; also the seed. */
  readonly id: string;
  readonly cut: Cut;
  readonly cloth: Cloth;
  readonly scene: Scene;
}
