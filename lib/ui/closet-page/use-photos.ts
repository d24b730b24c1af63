import { useCallback, useState } from "preact/hooks";
import type { ClosetTools, Spot } from "./closet-tools.ts";
import { newDraft, type PhotoDraft } from "./photo-draft.ts";
import { sentenceOf } from "./use-closet.ts";

export interface Photos {
  readonly drafts: readonly PhotoDraft[];
  readonly add: (files: readonly File[]) => Promise<void>;
  readonly change: (key: string, part: Partial<PhotoDraft>) => void;
  /** Reads a photo once more by something white or grey in it. Resolves to why that place cannot serve, or to "". */
  readonly readByWhite: (draft: PhotoDraft, spot: Spot) => Promise<string>;
  readonly drop: (key: string) => void;
}

/** Photos chosen from disk, read one after the other so that the page stays responsive. */
export function usePhotos({ samplePhoto, newId }: Pick<ClosetTools, "samplePhoto" | "newId">): Photos {
  const [drafts, setDrafts] = useState<readonly PhotoDraft[]>([]);
  const change = useCallback((key: string, part: Partial<PhotoDraft>) => {
    setDrafts((before) => before.map((draft) => (draft.key === key ? { ...draft, ...part } : draft)));
  }, []);
  const drop = useCallback((key: string) => {
    setDrafts((before) => before.filter((draft) => draft.key !== key));
  }, []);
  const add = useCallback(
    async (files: readonly File[]) => {
      const waiting = files.map((file) => newDraft(file, newId()));
      setDrafts((before) => [...before, ...waiting]);
      for (const { key, file } of waiting) {
        try {
          change(key, { asShot: await samplePhoto(file) });
        } catch (error) {
          change(key, { failure: sentenceOf(error) });
        }
      }
    },
    [samplePhoto, newId, change],
  );
  const readByWhite = useCallback(
    async ({ key, file }: PhotoDraft, spot: Spot) => {
      change(key, { rereading: true });
      try {
        change(key, { byWhite: await samplePhoto(file, spot), rereading: false });
        return "";
      } catch (error) {
        change(key, { rereading: false });
        return sentenceOf(error);
      }
    },
    [samplePhoto, change],
  );
  return { drafts, add, change, readByWhite, drop };
}
