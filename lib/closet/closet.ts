import type { Vision } from "../color/color-vision.ts";
import type { Palette, Swatch } from "../sample/palette.ts";
import type { Correction, Piece, Wish } from "./piece.ts";

/**
 * What is kept, and how to change it. Every write is one transaction, may be repeated without harm, and
 * resolves only when it is stored. Reads validate: a broken record is left out, never thrown at the caller.
 */
export interface Closet {
  /** Newest first. */
  pieces(): Promise<readonly Piece[]>;
  putPieces(pieces: readonly Piece[]): Promise<void>;
  removePieces(ids: readonly string[]): Promise<void>;
  /** Newest first. */
  wishes(): Promise<readonly Wish[]>;
  putWishes(wishes: readonly Wish[]): Promise<void>;
  removeWishes(ids: readonly string[]): Promise<void>;
  corrections(): Promise<readonly Correction[]>;
  correctionsOf(productKeys: readonly string[]): Promise<Readonly<Record<string, readonly Swatch[]>>>;
  putCorrections(corrections: readonly Correction[]): Promise<void>;
  removeCorrections(productKeys: readonly string[]): Promise<void>;
  /** Palettes read earlier, by picture address; a bounded cache, oldest forgotten first. */
  palettesOf(pictures: readonly string[]): Promise<Readonly<Record<string, Palette>>>;
  rememberPalettes(
    entries: readonly { readonly picture: string; readonly palette: Palette }[],
  ): Promise<void>;
  /** How the person says they see colours; null for as most people do, and while nothing is said. */
  vision(): Promise<Vision | null>;
  putVision(vision: Vision | null): Promise<void>;
  /** Calls `listener` after pieces, wishes, corrections or the vision changed, in whichever context, until `signal` aborts. */
  onChange(listener: () => void, signal: AbortSignal): void;
}

/** Tells every context that the closet changed; the browser's storage events in product, a plain emitter in tests. */
export interface ChangeBell {
  ring(): Promise<void>;
  onRing(listener: () => void, signal: AbortSignal): void;
}
