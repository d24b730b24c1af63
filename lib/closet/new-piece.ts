import * as v from "valibot";
import type { Swatch } from "../sample/palette.ts";
import type { Slot } from "../words/slot.ts";
import type { Piece } from "./piece.ts";
import { pieceSchema } from "./schemas.ts";

/** What a person fills in; the rest of a piece follows. */
export interface PieceDraft {
  readonly name: string;
  readonly slot: Slot;
  readonly swatches: readonly Swatch[];
  readonly picture?: string;
  readonly productKey?: string;
}

/** A piece to store; `now` in ms since 1970. Throws `v.ValiError` with a plain sentence where the draft is not complete. */
export function makePiece(draft: PieceDraft, now: number, id: string): Piece {
  return v.parse(pieceSchema, { ...draft, id, addedAt: now });
}
