import "./photo-dialog.css";
import { useRef, useState } from "preact/hooks";
import type { PieceDraft } from "../../closet/new-piece.ts";
import { Button } from "../button.tsx";
import { countOf } from "../words.ts";
import type { ClosetTools } from "./closet-tools.ts";
import { type PhotoDraft, shownDraft } from "./photo-draft.ts";
import { PhotoRow } from "./photo-row.tsx";
import { Sheet } from "./sheet.tsx";
import { usePhotos } from "./use-photos.ts";

export interface PhotoDialogProps {
  readonly tools: Pick<ClosetTools, "samplePhoto" | "newId">;
  readonly onKeep: (drafts: readonly PieceDraft[]) => void;
  readonly onClose: () => void;
}

/** Adds pieces from photo files, several at once; each may be corrected before it is kept. */
export function PhotoDialog({ tools, onKeep, onClose }: PhotoDialogProps) {
  const { drafts, add, change, readByWhite, drop } = usePhotos(tools);
  const [missing, setMissing] = useState("");
  /** Key of the photo that is being pointed at: one at a time. */
  const [pointing, setPointing] = useState<string | null>(null);
  const files = useRef<HTMLInputElement>(null);
  const read = drafts.filter(({ asShot }) => asShot);
  const waiting = drafts.some(({ asShot, failure, rereading }) => rereading || (!asShot && !failure));
  const keep = () => {
    const ready = read.flatMap(pieceOf);
    if (ready.length < read.length) return setMissing("Each piece needs a name and where it is worn.");
    onKeep(ready);
  };
  return (
    <Sheet title="Add from photos" onClose={onClose}>
      <div class="photo-form">
        <p>
          One piece in each photo, on a plain ground and in daylight, reads best. Where a lamp has tinted the
          photo, point at something white or grey in it. Photos are read here and go nowhere; only a small
          copy is kept.
        </p>
        <label class="labelled">
          Photos
          <input
            class="field"
            ref={files}
            type="file"
            accept="image/*"
            multiple
            onChange={(event) => {
              const files = [...(event.currentTarget.files ?? [])];
              event.currentTarget.value = "";
              void add(files);
            }}
          />
        </label>
        <ul class="photo-drafts">
          {drafts.map((draft) => (
            <PhotoRow
              key={draft.key}
              draft={draft}
              pointing={draft.key === pointing}
              onPoint={(on) => setPointing(on ? draft.key : null)}
              onWhite={(spot) => readByWhite(draft, spot)}
              onChange={(part) => change(draft.key, part)}
              onDrop={() => {
                // Its button goes with it.
                files.current?.focus();
                drop(draft.key);
              }}
            />
          ))}
        </ul>
        <div class="sheet-foot">
          <Button kind="strong" disabled={read.length === 0 || waiting} onClick={keep}>
            {waiting ? "Reading photos" : `Put ${countOf(read.length, "piece")} in the closet`}
          </Button>
          <Button onClick={onClose}>Cancel</Button>
          <p class="alert-text" role="alert">
            {missing}
          </p>
        </div>
      </div>
    </Sheet>
  );
}

/** The piece that a draft becomes, or none while its name or slot is missing. */
function pieceOf(draft: PhotoDraft): PieceDraft[] {
  const shown = shownDraft(draft);
  const name = shown?.name.trim();
  if (!shown || !name || draft.slot === null) return [];
  const { swatches, picture } = shown;
  return [{ name, slot: draft.slot, swatches, ...(picture && { picture }) }];
}
