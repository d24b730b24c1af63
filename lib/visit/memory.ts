import type { AskWorker } from "../link/messages.ts";
import type { FoundProduct } from "../page/product.ts";
import type { Palette, Swatch } from "../sample/palette.ts";
import { batched } from "./batched.ts";

/** How long requests are gathered, in milliseconds: one row of a listing becomes one request. */
const GATHER = 20;

/** Longest picture address worth remembering: data: addresses are read again faster than they are found. */
const ADDRESS_LENGTH = 2_000;

/** What is remembered of products and their pictures. */
export interface Memory {
  /** A person's word first, then what was read earlier; null where neither is known. */
  readonly recall: (product: FoundProduct, picture: string) => Promise<Palette | null>;
  /** Keeps what was read; nobody waits for it. */
  readonly remember: (picture: string, palette: Palette) => void;
}

/** The worker's memory, asked in batches. */
export function memoryOf(ask: AskWorker): Memory {
  const recallAll = batched<{ key: string; picture: string }, Palette | null>(async (items) => {
    const { corrections, palettes } = await ask("recall", {
      products: items.map(({ key }) => key),
      pictures: items.flatMap(({ picture }) => (isKept(picture) ? picture : [])),
    });
    return items.map(({ key, picture }) => {
      const swatches = Object.hasOwn(corrections, key) ? corrections[key] : undefined;
      if (swatches?.length) return saidPalette(swatches);
      return (Object.hasOwn(palettes, picture) && palettes[picture]) || null;
    });
  }, GATHER);
  const rememberAll = batched<{ picture: string; palette: Palette }, true>(async (entries) => {
    await ask("remember", { entries });
    return entries.map(() => true);
  }, GATHER);
  return {
    // A worker that cannot say what it remembers must not keep a picture from being read.
    recall: ({ key }, picture) => recallAll({ key, picture }).catch(() => null),
    remember: (picture, palette) => {
      if (isKept(picture) && palette.swatches.length)
        rememberAll({ picture, palette }).catch(() => undefined);
    },
  };
}

/** A palette that a person named: certain by definition. */
export function saidPalette(swatches: readonly Swatch[]): Palette {
  return { swatches, confidence: 1, evidence: ["person"] };
}

function isKept(picture: string): boolean {
  return /^https?:/.test(picture) && picture.length <= ADDRESS_LENGTH;
}
