import { useCallback, useEffect, useState } from "preact/hooks";
import type { Piece, Wish } from "../../closet/piece.ts";
import type { AskWorker, ExplainedVerdict } from "../../link/messages.ts";
import { sentenceOf } from "./use-closet.ts";

/** What each wish would do for the closet today. */
export interface Verdicts {
  /** By the wish's id; null while the worker is asked. */
  readonly byId: ReadonlyMap<string, ExplainedVerdict> | null;
  readonly trouble: string;
  readonly again: () => void;
}

/** Asks the worker about all wishes, and again whenever pieces or wishes change. */
export function useVerdicts(ask: AskWorker, wishes: readonly Wish[], pieces: readonly Piece[]): Verdicts {
  const [answer, setAnswer] = useState<Omit<Verdicts, "again">>({ byId: null, trouble: "" });
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    if (wishes.length === 0) return;
    let current = true;
    const candidates = wishes.map(({ id, title, slot, palette }) => ({ key: id, title, slot, palette }));
    ask("explain", { candidates })
      .then((verdicts) => {
        if (current) setAnswer({ byId: new Map(verdicts.map((one) => [one.key, one])), trouble: "" });
      })
      .catch((error: unknown) => {
        if (current) setAnswer({ byId: null, trouble: sentenceOf(error) });
      });
    return () => {
      current = false;
    };
  }, [ask, wishes, pieces, turn]);
  const again = useCallback(() => setTurn((before) => before + 1), []);
  return { ...answer, again };
}
