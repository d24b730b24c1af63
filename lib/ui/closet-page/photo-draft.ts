import { SURE, type Swatch } from "../../sample/palette.ts";
import { readSlot } from "../../words/read-words.ts";
import type { Slot } from "../../words/slot.ts";
import type { SampledPhoto } from "./closet-tools.ts";
import { photoName, plainName } from "./photo-name.ts";
import { BLANK_DRAFT } from "./piece-dialog.tsx";

/** One photo on its way into the closet: what was read, and beside it what the person said, which always wins. */
export interface PhotoDraft {
  readonly key: string;
  readonly file: File;
  /** As photographed; null while it is being read, or where that failed. */
  readonly asShot: SampledPhoto | null;
  /** As read by something white or grey in it; null where nobody pointed at anything. */
  readonly byWhite: SampledPhoto | null;
  /** Whether it is being read once more by a place pointed at. */
  readonly rereading: boolean;
  /** Why it could not be read: a plain sentence. */
  readonly failure: string;
  /** What the person typed; null while the file or the colours name it. */
  readonly typedName: string | null;
  readonly slot: Slot | null;
  /** The colours the person gave it; null while the photo's own stand. */
  readonly chosen: readonly Swatch[] | null;
}

export function newDraft(file: File, key: string): PhotoDraft {
  return {
    key,
    file,
    asShot: null,
    byWhite: null,
    rereading: false,
    failure: "",
    typedName: null,
    slot: readSlot(photoName(file.name)),
    chosen: null,
  };
}

/** A draft as it is shown and kept. */
export interface ShownDraft {
  readonly name: string;
  readonly swatches: readonly Swatch[];
  readonly picture: string;
  /** What to check, in a plain sentence. */
  readonly note: string;
}

/** What a draft comes to, once it has been read. */
export function shownDraft(draft: PhotoDraft): ShownDraft | null {
  const { file, asShot, byWhite, typedName, slot, chosen } = draft;
  const photo = byWhite ?? asShot;
  if (!photo) return null;
  const { palette, picture } = photo;
  const swatches = chosen ?? (palette.swatches.length > 0 ? palette.swatches : BLANK_DRAFT.swatches);
  return {
    name: typedName ?? (photoName(file.name) || plainName(swatches, slot)),
    swatches,
    picture,
    note: chosen ? "" : noteOf(photo),
  };
}

function noteOf({ palette }: SampledPhoto): string {
  if (palette.swatches.length === 0)
    return `${palette.reason ?? "No colour could be read."} Choose the colours yourself.`;
  return palette.confidence < SURE ? "Not sure of these colours. Compare them with the piece." : "";
}

/** What pointing did and what it cannot know. */
export function lightNote({ byWhite, chosen }: PhotoDraft): string {
  if (!byWhite) return "";
  const done =
    "Read as if that spot were white or grey. This puts one light right for the whole photo, not a second lamp or a shaded side. If the spot is cream in truth, every colour is now off by as much.";
  return chosen ? `${done} The colours you chose yourself stay as they are.` : done;
}
