import { useMemo } from "preact/hooks";
import { type ClosetContents, readClosetFile, writeClosetFile } from "../../closet/closet-file.ts";
import { makePiece, type PieceDraft } from "../../closet/new-piece.ts";
import type { Piece, Wish } from "../../closet/piece.ts";
import type { Vision } from "../../color/color-vision.ts";
import type { Toast, Toasts } from "../use-toasts.ts";
import { countOf } from "../words.ts";
import type { ClosetTools } from "./closet-tools.ts";
import { sentenceOf } from "./use-closet.ts";

/** Everything a person can do on this page; each says what happened, and most can be taken back. */
export interface Actions {
  readonly addPieces: (drafts: readonly PieceDraft[]) => Promise<void>;
  readonly putPieces: (pieces: readonly Piece[]) => Promise<void>;
  readonly editPiece: (before: Piece, draft: PieceDraft) => Promise<void>;
  readonly removePiece: (piece: Piece) => Promise<void>;
  readonly removeWish: (wish: Wish) => Promise<void>;
  /** Hangs a wish in the closet and takes it off the list. */
  readonly ownWish: (wish: Wish, draft: PieceDraft) => Promise<void>;
  /** Keeps how the person sees colours; null for as most people do. */
  readonly putVision: (vision: Vision | null) => Promise<void>;
  readonly exportFile: () => Promise<void>;
  /** Resolves to a sentence for each entry that was left out; rejects where the text is no closet file. */
  readonly importFile: (text: string) => Promise<readonly string[]>;
}

/** The actions of one page; `reload` shows what was stored, `say` tells it. */
export function useActions(tools: ClosetTools, reload: () => Promise<void>, say: Toasts["say"]): Actions {
  return useMemo(() => actionsOf(tools, reload, say), [tools, reload, say]);
}

function actionsOf(
  { closet, saveText, now, newId }: ClosetTools,
  reload: () => Promise<void>,
  say: Toasts["say"],
): Actions {
  /** Runs a change, shows it and says so, or says why it was not stored. */
  const change = async (run: () => Promise<void>, done: string, back?: () => Promise<void>) => {
    try {
      await run();
      await reload();
      say(done, back && undo(back));
    } catch (error) {
      say(`Nothing was changed. ${sentenceOf(error)}`);
    }
  };
  const undo = (back: () => Promise<void>): NonNullable<Toast["action"]> => ({
    label: "Undo",
    run: () => void change(back, "Taken back."),
  });
  const hang = (pieces: () => readonly Piece[], named: readonly { readonly name: string }[]) =>
    change(
      async () => closet.putPieces(pieces()),
      named.length === 1 && named[0]
        ? `${named[0].name} hangs in the closet.`
        : `${countOf(named.length, "piece")} now hang in the closet.`,
    );
  return {
    addPieces: (drafts) => hang(() => drafts.map((draft) => makePiece(draft, now(), newId())), drafts),
    putPieces: (pieces) => hang(() => pieces, pieces),
    editPiece: (before, draft) =>
      change(
        () => closet.putPieces([{ ...before, ...draft }]),
        `${draft.name} was changed.`,
        () => closet.putPieces([before]),
      ),
    removePiece: (piece) =>
      change(
        () => closet.removePieces([piece.id]),
        `${piece.name} was removed.`,
        () => closet.putPieces([piece]),
      ),
    removeWish: (wish) =>
      change(
        () => closet.removeWishes([wish.id]),
        `${wish.title} was taken off the wishlist.`,
        () => closet.putWishes([wish]),
      ),
    ownWish: (wish, draft) => {
      const id = newId();
      return change(
        async () => {
          await closet.putPieces([makePiece({ ...draft, productKey: wish.id }, now(), id)]);
          await closet.removeWishes([wish.id]);
        },
        `${draft.name} moved to the closet.`,
        async () => {
          await closet.putWishes([wish]);
          await closet.removePieces([id]);
        },
      );
    },
    putVision: (vision) =>
      change(
        () => closet.putVision(vision),
        vision === null
          ? "Colours are no longer compared for your eyes."
          : "From now on you are told where two colours may look alike to you.",
      ),
    async exportFile() {
      try {
        const day = new Date(now()).toISOString().slice(0, 10);
        saveText(`hueward-closet-${day}.json`, writeClosetFile(await contentsOf(), now()));
        say("The closet file was handed to your downloads.");
      } catch (error) {
        say(`The closet could not be exported. ${sentenceOf(error)}`);
      }
    },
    async importFile(text) {
      const { leftOut, ...read } = readClosetFile(text, now());
      const before = await contentsOf();
      await change(
        () => putAll(read),
        `The file was read: ${countOf(read.pieces.length, "piece")}, ${countOf(read.wishes.length, "wish", "wishes")}.`,
        async () => {
          await closet.removePieces(read.pieces.map(({ id }) => id));
          await closet.removeWishes(read.wishes.map(({ id }) => id));
          await closet.removeCorrections(read.corrections.map(({ productKey }) => productKey));
          await putAll(before);
        },
      );
      return leftOut;
    },
  };

  async function contentsOf(): Promise<ClosetContents> {
    const [pieces, wishes, corrections] = await Promise.all([
      closet.pieces(),
      closet.wishes(),
      closet.corrections(),
    ]);
    return { pieces, wishes, corrections };
  }

  async function putAll({ pieces, wishes, corrections }: ClosetContents): Promise<void> {
    await closet.putPieces(pieces);
    await closet.putWishes(wishes);
    await closet.putCorrections(corrections);
  }
}
