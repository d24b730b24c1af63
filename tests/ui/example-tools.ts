import type { Closet } from "../../lib/closet/closet.ts";
import { CLOTH_COLORS } from "../../lib/closet/cloth-colors.ts";
import { judge, prepareCloset } from "../../lib/fit/judge.ts";
import type { AskWorker, ExplainedVerdict, WorkerRequests } from "../../lib/link/messages.ts";
import type { ClosetTools } from "../../lib/ui/closet-page/closet-tools.ts";
import { explained } from "../../lib/worker/verdict-views.ts";

/** A moment that does not move. */
export const NOON: number = Date.UTC(2026, 1, 2, 12);

/** Saved files, by name. */
export type SavedFiles = Map<string, string>;

/** What the closet page needs, without a browser around it: real verdicts, a photo that is always teal, or navy by
 * something white in its lower half. */
export function exampleTools(
  closet: Closet,
  saved: SavedFiles = new Map(),
  ask: AskWorker = askFor(closet),
): ClosetTools {
  let ids = 0;
  return {
    closet,
    ask,
    samplePhoto: async (file, white) => {
      if (!file.type.startsWith("image/"))
        throw new Error(`This file is no picture. Choose a JPEG, PNG or WebP.`);
      if (white && white.y < 0.5) throw new Error("This spot is too dark. Point at something lighter.");
      const swatches = [{ oklab: white ? CLOTH_COLORS.navy : CLOTH_COLORS.teal, share: 1 }];
      const palette = { swatches, confidence: white ? 0.9 : 0.5, evidence: ["pixels"] as const };
      return { palette, picture: white ? NAVY_DOT : TEAL_DOT };
    },
    saveText: (name, text) => void saved.set(name, text),
    now: () => NOON,
    newId: () => `new-${++ids}`,
  };
}

/** One navy pixel. */
export const NAVY_DOT = "data:image/gif;base64,R0lGODlhAQABAIAAABwoTwAAACH5BAAAAAAALAAAAAABAAEAAAICRAEAOw==";

/** One teal pixel. */
const TEAL_DOT = "data:image/gif;base64,R0lGODlhAQABAIAAAAdXYwAAACH5BAAAAAAALAAAAAABAAEAAAICRAEAOw==";

/** Answers `explain` as the worker does; refuses everything else. */
function askFor(closet: Closet): AskWorker {
  const explain = async ({ candidates }: WorkerRequests["explain"]["request"]) => {
    const pieces = await closet.pieces();
    const byId = new Map(pieces.map((piece) => [piece.id, piece]));
    const prepared = prepareCloset(pieces, await closet.vision());
    return candidates.map(
      (candidate): ExplainedVerdict => explained(candidate, judge(candidate, prepared), byId, true),
    );
  };
  return async (name, request) => {
    if (name !== "explain" || !request || !("candidates" in request))
      throw new Error(`The page has no business asking ${name}.`);
    // The type of the reply hangs on `name`, which was just checked; the compiler cannot follow that through the map.
    return (await explain(request)) as never;
  };
}
