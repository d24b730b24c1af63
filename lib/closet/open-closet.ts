import { createStore, delMany, get, getMany, set, setMany, type UseStore, values } from "idb-keyval";
import * as v from "valibot";
import { checkVersion } from "./check-version.ts";
import type { ChangeBell, Closet } from "./closet.ts";
import { palettesOf, rememberPalettes } from "./palette-cache.ts";
import type { Correction, Piece, Wish } from "./piece.ts";
import { readRecord } from "./read-record.ts";
import { correctionSchema, pieceSchema, visionSchema, wishSchema } from "./schemas.ts";

/** One kind of record: where it is kept, what it must look like, what it is called and ordered by. */
interface Shelf<T> {
  readonly store: UseStore;
  readonly schema: v.GenericSchema<unknown, T>;
  readonly keyOf: (record: T) => string;
  readonly timeOf: (record: T) => number;
}

const VISION_KEY = "vision";

/**
 * The closet in this profile's IndexedDB; any number of contexts may open it at once.
 * A write rejects when a record does not fit its schema (`v.ValiError`, a plain sentence) or cannot be stored;
 * every call rejects when the closet was written by a newer version.
 */
export function openCloset(bell: ChangeBell, now: () => number = Date.now): Closet {
  const pieces: Shelf<Piece> = {
    store: createStore("hueward-pieces", "pieces"),
    schema: pieceSchema,
    keyOf: (piece) => piece.id,
    timeOf: (piece) => piece.addedAt,
  };
  const wishes: Shelf<Wish> = {
    store: createStore("hueward-wishes", "wishes"),
    schema: wishSchema,
    keyOf: (wish) => wish.id,
    timeOf: (wish) => wish.savedAt,
  };
  const corrections: Shelf<Correction> = {
    store: createStore("hueward-corrections", "corrections"),
    schema: correctionSchema,
    keyOf: (correction) => correction.productKey,
    timeOf: (correction) => correction.correctedAt,
  };
  const palettes = createStore("hueward-palettes", "palettes");
  const settings = createStore("hueward-settings", "settings");
  const about = createStore("hueward-about", "about");

  let checked: Promise<void> | null = null;
  const ready = () => {
    checked ??= checkVersion(about).catch((error) => {
      checked = null;
      throw error;
    });
    return checked;
  };

  async function read<T>(shelf: Shelf<T>): Promise<readonly T[]> {
    await ready();
    const records = await values<unknown>(shelf.store);
    return records
      .map((record) => readRecord(shelf.schema, record))
      .filter((record) => record !== null)
      .toSorted((one, other) => shelf.timeOf(other) - shelf.timeOf(one));
  }

  async function put<T>(shelf: Shelf<T>, records: readonly T[]): Promise<void> {
    if (records.length === 0) return;
    await ready();
    const valid = records.map((record) => v.parse(shelf.schema, record));
    await setMany(
      valid.map((record) => [shelf.keyOf(record), record]),
      shelf.store,
    );
    await bell.ring();
  }

  async function remove<T>(shelf: Shelf<T>, keys: readonly string[]): Promise<void> {
    if (keys.length === 0) return;
    await ready();
    await delMany([...keys], shelf.store);
    await bell.ring();
  }

  return {
    pieces: () => read(pieces),
    putPieces: (records) => put(pieces, records),
    removePieces: (ids) => remove(pieces, ids),
    wishes: () => read(wishes),
    putWishes: (records) => put(wishes, records),
    removeWishes: (ids) => remove(wishes, ids),
    corrections: () => read(corrections),
    async correctionsOf(productKeys) {
      await ready();
      const records = await getMany<unknown>([...productKeys], corrections.store);
      const known = records
        .map((record) => readRecord(correctionSchema, record))
        .filter((one) => one !== null);
      return Object.fromEntries(known.map((one) => [one.productKey, one.swatches]));
    },
    putCorrections: (records) => put(corrections, records),
    removeCorrections: (productKeys) => remove(corrections, productKeys),
    async palettesOf(pictures) {
      await ready();
      return palettesOf(palettes, pictures);
    },
    async rememberPalettes(entries) {
      await ready();
      await rememberPalettes(palettes, entries, now());
    },
    async vision() {
      await ready();
      const said = v.safeParse(visionSchema, await get<unknown>(VISION_KEY, settings));
      return said.success ? said.output : null;
    },
    async putVision(vision) {
      await ready();
      await set(VISION_KEY, v.parse(visionSchema, vision), settings);
      await bell.ring();
    },
    onChange: (listener, signal) => bell.onRing(listener, signal),
  };
}
