import type { Closet } from "../closet/closet.ts";
import type { Piece } from "../closet/piece.ts";
import { judge, type PreparedCloset, prepareCloset } from "../fit/judge.ts";
import type { KeepRequest, PartName } from "../link/messages.ts";
import type { Handlers } from "../link/serve.ts";
import { sampleViews } from "../sample/sample-views.ts";
import { firstSlot } from "../words/first-slot.ts";
import type { PictureDesk } from "./picture-desk.ts";
import { briefOf, explained } from "./verdict-views.ts";

/** What the handlers need of the outside. */
export interface HandlerTools {
  readonly closet: Closet;
  readonly pictures: PictureDesk;
  readonly switchOff: (origin: string) => Promise<void>;
  /** Runs a part of the page script in a frame of a tab. */
  readonly runPart: (name: PartName, tabId: number, frameId: number) => Promise<void>;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** Ends with the worker. */
  readonly signal: AbortSignal;
}

interface Wardrobe {
  readonly prepared: PreparedCloset;
  readonly byId: ReadonlyMap<string, Piece>;
}

/** The closet made ready for comparing, kept until it changes; the worker may die at any time, so it is only a cache. */
function keepWardrobe({ closet, signal }: HandlerTools): () => Promise<Wardrobe> {
  let current: Promise<Wardrobe> | null = null;
  const load = async (): Promise<Wardrobe> => {
    const [pieces, vision] = await Promise.all([closet.pieces(), closet.vision()]);
    return {
      prepared: prepareCloset(pieces, vision),
      byId: new Map(pieces.map((piece) => [piece.id, piece])),
    };
  };
  closet.onChange(() => {
    current = null;
  }, signal);
  return () => {
    if (current) return current;
    const loading = load();
    current = loading;
    // A closet that could not be read is read again when next asked for; one that changed meanwhile is being read already.
    loading.catch(() => {
      if (current === loading) current = null;
    });
    return loading;
  };
}

const pictureField = (picture: string | null): { picture?: string } => (picture === null ? {} : { picture });

async function pictureOf(
  { pictures }: HandlerTools,
  { picture, pageUrl }: KeepRequest,
): Promise<{ picture?: string }> {
  return pictureField(picture === null ? null : await pictures.thumbnail(picture, pageUrl));
}

/** The answers of the background worker, each safe to repeat. */
export function createHandlers(tools: HandlerTools): Handlers {
  const { closet, now } = tools;
  const wardrobe = keepWardrobe(tools);
  return {
    recall: async ({ products, pictures }) => ({
      slots: Object.fromEntries(
        products.map((product) => [product.key, firstSlot(product.slotTexts, product.language)]),
      ),
      corrections: await closet.correctionsOf(products.map(({ key }) => key)),
      palettes: await closet.palettesOf(pictures),
    }),
    remember: async ({ entries }) => {
      await closet.rememberPalettes(entries);
      return null;
    },
    samplePicture: async ({ pixels, others, slot, text }) => sampleViews(pixels, others, { slot, text }),
    readPicture: ({ url, slot, text }, sender) => tools.pictures.read(url, { slot, text }, sender.url ?? ""),
    judge: async ({ candidates }) => {
      const { prepared } = await wardrobe();
      return candidates.map((candidate) => briefOf(candidate, judge(candidate, prepared)));
    },
    explain: async ({ candidates }) => {
      const { prepared, byId } = await wardrobe();
      const wished = new Set((await closet.wishes()).map(({ id }) => id));
      return candidates.map((candidate) =>
        explained(candidate, judge(candidate, prepared), byId, wished.has(candidate.key)),
      );
    },
    saveWish: async (kept) => {
      const { candidate, price, link, pageUrl } = kept;
      const { key: id, title, slot, palette } = candidate;
      const store = new URL(pageUrl).hostname;
      const picture = await pictureOf(tools, kept);
      await closet.putWishes([{ id, title, slot, palette, price, link, store, savedAt: now(), ...picture }]);
      return { id };
    },
    dropWish: async ({ id }) => {
      await closet.removeWishes([id]);
      return null;
    },
    ownPiece: async (kept) => {
      const { key: productKey, title: name, slot, palette } = kept.candidate;
      if (slot === null) throw new Error("Say first where it is worn.");
      if (palette.swatches.length === 0)
        throw new Error("Pick its colour first: the picture could not be read.");
      const id = `store:${productKey}`.slice(0, 512);
      const picture = await pictureOf(tools, kept);
      await closet.putPieces([
        { id, name, slot, swatches: palette.swatches, addedAt: now(), productKey, ...picture },
      ]);
      return { id };
    },
    correct: async ({ productKey, swatches }) => {
      if (swatches.length === 0) await closet.removeCorrections([productKey]);
      else await closet.putCorrections([{ productKey, swatches, correctedAt: now() }]);
      return null;
    },
    bringPart: async ({ name }, { tab, frameId = 0 }) => {
      if (tab?.id === undefined) throw new Error("Only a page has parts.");
      await tools.runPart(name, tab.id, frameId);
      return null;
    },
    switchOff: async ({ origin }) => {
      await tools.switchOff(origin);
      return null;
    },
  };
}
