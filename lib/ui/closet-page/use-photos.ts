import { useCallback, useState } from "preact/hooks";
import type { Palette, Swatch } from "../../sample/palette.ts";
import { readSlot } from "../../words/read-words.ts";
import type { Slot } from "../../words/slot.ts";
import type { ClosetTools } from "./closet-tools.ts";
import { photoName, plainName } from "./photo-name.ts";
import { BLANK_DRAFT } from "./piece-dialog.tsx";

/** One photo on its way into the closet. */
export interface PhotoDraft {
  readonly key: string;
  readonly fileName: string;
  readonly state: "reading" | "read" | "failed";
  readonly name: string;
  readonly slot: Slot | null;
  readonly swatches: readonly Swatch[];
  readonly picture: string;
  /** A plain sentence: why it failed, or what to check. */
  readonly note: string;
}

export interface Photos {
  readonly drafts: readonly PhotoDraft[];
  readonly add: (files: readonly File[]) => Promise<void>;
  readonly change: (key: string, part: Partial<PhotoDraft>) => void;
  readonly drop: (key: string) => void;
}

/** Confidence 0–1 under which the person is asked to look: the sampler's own "sure" starts at 0.8. */
const SURE = 0.8;

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
      const waiting = files.map((file) => ({ file, draft: startOf(file, newId()) }));
      setDrafts((before) => [...before, ...waiting.map(({ draft }) => draft)]);
      for (const { file, draft } of waiting) {
        try {
          const { palette, picture } = await samplePhoto(file);
          change(draft.key, readOf(draft, palette, picture));
        } catch (error) {
          change(draft.key, {
            state: "failed",
            note: error instanceof Error ? error.message : String(error),
          });
        }
      }
    },
    [samplePhoto, newId, change],
  );
  return { drafts, add, change, drop };
}

function startOf(file: File, key: string): PhotoDraft {
  const name = photoName(file.name);
  return {
    key,
    fileName: file.name,
    state: "reading",
    name,
    slot: readSlot(name),
    swatches: [],
    picture: "",
    note: "",
  };
}

function readOf({ name, slot }: PhotoDraft, palette: Palette, picture: string): Partial<PhotoDraft> {
  const swatches = palette.swatches.length > 0 ? palette.swatches : BLANK_DRAFT.swatches;
  return {
    state: "read",
    swatches,
    picture,
    name: name === "" ? plainName(swatches, slot) : name,
    note: noteOf(palette),
  };
}

function noteOf(palette: Palette): string {
  if (palette.swatches.length === 0)
    return `${palette.reason ?? "No colour could be read."} Choose the colours yourself.`;
  return palette.confidence < SURE ? "Not sure of these colours. Compare them with the piece." : "";
}
