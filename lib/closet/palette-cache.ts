import { delMany, entries, getMany, promisifyRequest, setMany, type UseStore } from "idb-keyval";
import * as v from "valibot";
import type { Palette } from "../sample/palette.ts";
import { ADDRESS_LENGTH, paletteSchema } from "./schemas.ts";

/** Palettes kept at most; about 1 kB each, a few days of browsing (our choice). */
export const PALETTES_MOST = 2000;

/** Palettes kept after a clearing: a tenth is freed at once, so that not every write has to clear. */
const PALETTES_AFTER_CLEARING = 1800;

const entrySchema = v.object({ palette: paletteSchema, time: v.pipe(v.number(), v.finite()) });

/** What was read earlier from these pictures; unknown or broken entries are left out. */
export async function palettesOf(
  store: UseStore,
  pictures: readonly string[],
): Promise<Readonly<Record<string, Palette>>> {
  const records = await getMany<unknown>([...pictures], store);
  return Object.fromEntries(
    pictures.flatMap((picture, index) => {
      const entry = v.safeParse(entrySchema, records[index]);
      return entry.success ? [[picture, entry.output.palette]] : [];
    }),
  );
}

/**
 * Keeps palettes by picture address, then forgets the oldest ones above `PALETTES_MOST`. A picture that
 * is its own address (a long data: URL) is not worth its space and is not kept.
 */
export async function rememberPalettes(
  store: UseStore,
  palettes: readonly { readonly picture: string; readonly palette: Palette }[],
  time: number,
): Promise<void> {
  const kept = palettes.filter(({ picture }) => picture.length > 0 && picture.length <= ADDRESS_LENGTH);
  if (kept.length === 0) return;
  await setMany(
    kept.map(({ picture, palette }) => [picture, { palette: v.parse(paletteSchema, palette), time }]),
    store,
  );
  const count = await store("readonly", (opened) => promisifyRequest(opened.count()));
  if (count > PALETTES_MOST) await forgetOldest(store);
}

async function forgetOldest(store: UseStore): Promise<void> {
  const known = await entries<string, unknown>(store);
  const timeOf = (record: unknown) => {
    const entry = v.safeParse(v.object({ time: v.number() }), record);
    return entry.success ? entry.output.time : Number.NEGATIVE_INFINITY;
  };
  const newestFirst = known
    .map(([picture, record]) => ({ picture, time: timeOf(record) }))
    .toSorted((one, other) => other.time - one.time);
  await delMany(
    newestFirst.slice(PALETTES_AFTER_CLEARING).map(({ picture }) => picture),
    store,
  );
}
