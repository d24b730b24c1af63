import { useCallback, useEffect, useState } from "preact/hooks";
import type { Closet } from "../../closet/closet.ts";
import type { Piece, Wish } from "../../closet/piece.ts";
import type { Vision } from "../../color/color-vision.ts";

/** The closet as it stands, read again after every change in whichever context. */
export interface ClosetContent {
  /** Null while it is first read. */
  readonly pieces: readonly Piece[] | null;
  readonly wishes: readonly Wish[] | null;
  /** How the person says they see colours; null for as most people do, and while it is first read. */
  readonly vision: Vision | null;
  /** Why it could not be read; empty when all is well. */
  readonly trouble: string;
  readonly reload: () => Promise<void>;
}

/** Reads the closet and keeps reading it. */
export function useCloset(closet: Closet): ClosetContent {
  const [content, setContent] = useState<Omit<ClosetContent, "reload">>({
    pieces: null,
    wishes: null,
    vision: null,
    trouble: "",
  });
  const reload = useCallback(async () => {
    try {
      const [pieces, wishes, vision] = await Promise.all([closet.pieces(), closet.wishes(), closet.vision()]);
      setContent({ pieces, wishes, vision, trouble: "" });
    } catch (error) {
      setContent((before) => ({ ...before, trouble: sentenceOf(error) }));
    }
  }, [closet]);
  useEffect(() => {
    const gone = new AbortController();
    closet.onChange(() => void reload(), gone.signal);
    void reload();
    return () => gone.abort();
  }, [closet, reload]);
  return { ...content, reload };
}

/** What went wrong, fit to be shown. */
export function sentenceOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
