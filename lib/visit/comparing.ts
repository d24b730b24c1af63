import type { Candidate } from "../fit/verdict.ts";
import type { AskWorker, VerdictBrief } from "../link/messages.ts";
import type { FoundProduct } from "../page/product.ts";
import type { PictureSource } from "../pixels/picture-reader.ts";
import type { Palette } from "../sample/palette.ts";
import type { Slot } from "../words/slot.ts";
import { atMost } from "./at-most.ts";
import { batched } from "./batched.ts";
import { memoryOf } from "./memory.ts";
import { settled } from "./settled.ts";
import { candidateOf, sourceOf, type Tracked } from "./tracked.ts";
import { mayGain, witnessesOf } from "./witnesses.ts";

/** Pictures read at the same time: more would only slow the page's own loading. */
const PICTURES_AT_ONCE = 4;

/** How long comparisons are gathered, in milliseconds; shorter than anyone can see. */
const GATHER = 20;

/** Reads the colours of a product worn in `slot` from one of its pictures. */
export type ReadPalette = (
  product: FoundProduct,
  slot: Slot | null,
  source: PictureSource,
) => Promise<Palette>;

/** Brings products from a picture to a verdict. */
export interface Comparing {
  /** Waits for the product's picture, finds out what it shows, and compares it. */
  readonly read: (tracked: Tracked) => Promise<void>;
  /** Remembers what its picture shows and compares it; comes too late where it has another picture by now. */
  readonly learn: (tracked: Tracked, source: PictureSource, palette: Palette) => Promise<void>;
  /** Compares what is known of it. */
  readonly compare: (tracked: Tracked) => Promise<void>;
}

export interface ComparingDeps {
  readonly ask: AskWorker;
  readonly readPalette: ReadPalette;
  /** Whether a product is still there with this picture: else an answer comes too late. */
  readonly isCurrent: (tracked: Tracked, source: PictureSource) => boolean;
  /** It has a verdict now; `first`: for the first time. */
  readonly compared: (tracked: Tracked, first: boolean) => void;
}

export function comparing({ ask, readPalette, isCurrent, compared }: ComparingDeps): Comparing {
  const oneOfFew = atMost(PICTURES_AT_ONCE);
  const { recall, remember } = memoryOf(ask);
  const judge = batched<Candidate, VerdictBrief>((candidates) => ask("judge", { candidates }), GATHER);

  const compare = async (tracked: Tracked) => {
    const { source, brief: before } = tracked;
    const brief = await judge(candidateOf(tracked)).catch((error) => silentBrief(tracked, error));
    if (!isCurrent(tracked, source)) return;
    tracked.brief = brief;
    compared(tracked, !before);
  };

  return {
    compare,
    async learn(tracked, source, palette) {
      if (!isCurrent(tracked, source)) return;
      remember(source.url, palette);
      tracked.palette = palette;
      await compare(tracked);
    },
    async read(tracked) {
      const { product, source: awaited } = tracked;
      await settled(product);
      if (!isCurrent(tracked, awaited)) return;
      // Which of several files the page shows is known only now.
      const source = sourceOf(product);
      tracked.source = source;
      const known = await recall(product, source.url);
      const kept = known.palette && !mayImprove(known.palette, product) ? known.palette : null;
      const read =
        kept ??
        (await oneOfFew(async () =>
          isCurrent(tracked, source) ? readPalette(product, known.slot, source) : null,
        ));
      if (!read || !isCurrent(tracked, source)) return;
      tracked.slot = known.slot;
      // Where nothing can be read now, what was seen before is the best there is.
      const palette = read.swatches.length ? read : (known.palette ?? read);
      if (palette !== known.palette) remember(source.url, palette);
      tracked.palette = palette;
      await compare(tracked);
    },
  };
}

/** Whether a palette of earlier may be bettered now: one from the screen, or an unsure one where other pictures have come since. */
function mayImprove(palette: Palette, product: FoundProduct): boolean {
  return palette.evidence.includes("screen") || (mayGain(palette) && witnessesOf(product).length > 0);
}

/** What a badge says when no answer came. */
function silentBrief({ product }: Tracked, error: unknown): VerdictBrief {
  const why = error instanceof Error ? error.message : String(error);
  return { key: product.key, headline: why, kind: "unreadable", count: 0, names: [] };
}
