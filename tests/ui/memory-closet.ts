import type { Closet } from "../../lib/closet/closet.ts";
import type { Correction, Piece, Wish } from "../../lib/closet/piece.ts";
import type { Vision } from "../../lib/color/color-vision.ts";

export interface ClosetStart {
  readonly pieces?: readonly Piece[];
  readonly wishes?: readonly Wish[];
}

/** A closet in memory that keeps the contract's order and tells its listeners, for tests of the screens. */
export function memoryCloset({ pieces = [], wishes = [] }: ClosetStart = {}): Closet {
  const hung = new Map(pieces.map((piece) => [piece.id, piece]));
  const wished = new Map(wishes.map((wish) => [wish.id, wish]));
  const corrected = new Map<string, Correction>();
  let said: Vision | null = null;
  const listeners = new Set<() => void>();
  const ring = () => {
    for (const listener of listeners) listener();
  };
  const write = async <T>(
    map: Map<string, T>,
    keyOf: (record: T) => string,
    put: readonly T[],
    drop: readonly string[],
  ) => {
    for (const record of put) map.set(keyOf(record), record);
    for (const key of drop) map.delete(key);
    ring();
  };
  const idOf = ({ id }: { readonly id: string }) => id;
  return {
    pieces: async () => [...hung.values()].toSorted((one, other) => other.addedAt - one.addedAt),
    putPieces: (records) => write(hung, idOf, records, []),
    removePieces: (ids) => write(hung, idOf, [], ids),
    wishes: async () => [...wished.values()].toSorted((one, other) => other.savedAt - one.savedAt),
    putWishes: (records) => write(wished, idOf, records, []),
    removeWishes: (ids) => write(wished, idOf, [], ids),
    corrections: async () => [...corrected.values()],
    correctionsOf: async (keys) =>
      Object.fromEntries(keys.flatMap((key) => [[key, corrected.get(key)?.swatches ?? []]])),
    putCorrections: (records) => write(corrected, ({ productKey }) => productKey, records, []),
    removeCorrections: (keys) => write(corrected, ({ productKey }) => productKey, [], keys),
    palettesOf: async () => ({}),
    rememberPalettes: async () => {},
    vision: async () => said,
    putVision: async (vision) => {
      said = vision;
      ring();
    },
    onChange: (listener, signal) => {
      listeners.add(listener);
      signal.addEventListener("abort", () => listeners.delete(listener), { once: true });
    },
  };
}
