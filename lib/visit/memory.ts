import type { AskWorker, KnownWords } from "../link/messages.ts";
import type { FoundProduct } from "../page/product.ts";
import { slotTexts } from "../page/product-words.ts";
import type { Palette, Swatch } from "../sample/palette.ts";
import type { Slot } from "../words/slot.ts";
import { batched } from "./batched.ts";

/** How long requests are gathered, in milliseconds: one row of a listing becomes one request. */
const GATHER = 20;

/** Longest picture address worth remembering: data: addresses are read again faster than they are found. */
const ADDRESS_LENGTH = 2_000;

/** What is known of a product before its picture is read. */
export interface Recalled {
  /** Where it is worn, by its words. */
  readonly slot: Slot | null;
  /** A person's word first, then what was read earlier; null where neither is known. */
  readonly palette: Palette | null;
}

/** What is remembered of products and their pictures. */
export interface Memory {
  readonly recall: (product: FoundProduct, picture: string) => Promise<Recalled>;
  /** Keeps what was read; nobody waits for it. */
  readonly remember: (picture: string, palette: Palette) => void;
}

/** The worker's memory, asked in batches. */
export function memoryOf(ask: AskWorker): Memory {
  const recallAll = batched<KnownWords & { picture: string }, Recalled>(async (items) => {
    const { slots, corrections, palettes } = await ask("recall", {
      products: items.map(({ key, slotTexts, language }) => ({ key, slotTexts, language })),
      pictures: items.flatMap(({ picture }) => (isKept(picture) ? picture : [])),
    });
    return items.map(({ key, picture }) => {
      const slot = own(slots, key) ?? null;
      const swatches = own(corrections, key);
      return { slot, palette: swatches?.length ? saidPalette(swatches) : (own(palettes, picture) ?? null) };
    });
  }, GATHER);
  const rememberAll = batched<{ picture: string; palette: Palette }, true>(async (entries) => {
    await ask("remember", { entries });
    return entries.map(() => true);
  }, GATHER);
  return {
    // A worker that cannot say what it remembers must not keep a picture from being read.
    recall: (product, picture) =>
      recallAll({
        key: product.key,
        slotTexts: slotTexts(product),
        language: product.language,
        picture,
      }).catch(() => ({ slot: null, palette: null })),
    remember: (picture, palette) => {
      if (isKept(picture) && palette.swatches.length)
        rememberAll({ picture, palette }).catch(() => undefined);
    },
  };
}

/** An entry of a record whose keys come from a page: never what every object inherits. */
function own<T>(record: Readonly<Record<string, T>>, key: string): T | undefined {
  return Object.hasOwn(record, key) ? record[key] : undefined;
}

/** A palette that a person named: certain by definition. */
export function saidPalette(swatches: readonly Swatch[]): Palette {
  return { swatches, confidence: 1, evidence: ["person"] };
}

function isKept(picture: string): boolean {
  return /^https?:/.test(picture) && picture.length <= ADDRESS_LENGTH;
}
