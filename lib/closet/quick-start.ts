import type { Slot } from "../words/slot.ts";
import { CLOTH_COLORS, type ClothColor } from "./cloth-colors.ts";
import { makePiece } from "./new-piece.ts";
import type { Piece } from "./piece.ts";

/** A common piece to tick, in the colour it most often has; the colour may be changed. */
export interface QuickPiece {
  /** The name without its colour. */
  readonly noun: string;
  readonly slot: Slot;
  readonly color: ClothColor;
  /** A second colour of a print and its share. */
  readonly print?: { readonly color: ClothColor; readonly share: number };
}

/** Pieces that hang in many closets, from the body outwards (common practice, no source). */
export const QUICK_PIECES: readonly QuickPiece[] = [
  { noun: "shirt", slot: "top", color: "white" },
  { noun: "T-shirt", slot: "top", color: "white" },
  { noun: "T-shirt", slot: "top", color: "black" },
  { noun: "striped top", slot: "top", color: "white", print: { color: "navy", share: 0.35 } },
  { noun: "blouse", slot: "top", color: "light blue" },
  { noun: "jumper", slot: "top", color: "grey" },
  { noun: "roll-neck", slot: "top", color: "camel" },
  { noun: "jeans", slot: "bottom", color: "denim" },
  { noun: "trousers", slot: "bottom", color: "black" },
  { noun: "chinos", slot: "bottom", color: "beige" },
  { noun: "skirt", slot: "bottom", color: "navy" },
  { noun: "leggings", slot: "bottom", color: "black" },
  { noun: "dress", slot: "one-piece", color: "red" },
  { noun: "dress", slot: "one-piece", color: "black" },
  { noun: "blazer", slot: "layer", color: "navy" },
  { noun: "trench coat", slot: "layer", color: "beige" },
  { noun: "denim jacket", slot: "layer", color: "denim" },
  { noun: "wool coat", slot: "layer", color: "charcoal" },
  { noun: "cardigan", slot: "layer", color: "green" },
  { noun: "tights", slot: "legwear", color: "black" },
  { noun: "trainers", slot: "shoes", color: "white" },
  { noun: "boots", slot: "shoes", color: "brown" },
  { noun: "shoes", slot: "shoes", color: "black" },
  { noun: "bag", slot: "bag", color: "tan" },
  { noun: "scarf", slot: "accessory", color: "burgundy" },
];

/** "Navy blazer": how the piece is called in this colour. */
export function quickName(piece: QuickPiece, color: ClothColor = piece.color): string {
  const name = piece.noun.startsWith(color) ? piece.noun : `${color} ${piece.noun}`;
  return name.charAt(0).toUpperCase() + name.slice(1);
}

/**
 * The piece to store, in its own or another colour. The id follows from the name, so that ticking
 * twice makes no copy; `now` in ms since 1970.
 */
export function quickPiece(piece: QuickPiece, now: number, color: ClothColor = piece.color): Piece {
  const name = quickName(piece, color);
  const printed = piece.print?.share ?? 0;
  const swatches = [
    { oklab: CLOTH_COLORS[color], share: 1 - printed },
    ...(piece.print ? [{ oklab: CLOTH_COLORS[piece.print.color], share: printed }] : []),
  ];
  const id = `quick-${name.toLowerCase().replace(/[^a-z]+/g, "-")}`;
  return makePiece({ name, slot: piece.slot, swatches }, now, id);
}
