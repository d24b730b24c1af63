import "./photo-dialog.css";
import { useState } from "preact/hooks";
import type { PieceDraft } from "../../closet/new-piece.ts";
import { Button } from "../button.tsx";
import { NamedCloth } from "../cloth.tsx";
import { namedSwatches } from "../named-swatches.ts";
import { countOf } from "../words.ts";
import type { ClosetTools } from "./closet-tools.ts";
import { Sheet } from "./sheet.tsx";
import { SlotSelect } from "./slot-select.tsx";
import { SwatchEditor } from "./swatch-editor.tsx";
import { type PhotoDraft, usePhotos } from "./use-photos.ts";

export interface PhotoDialogProps {
  readonly tools: Pick<ClosetTools, "samplePhoto" | "newId">;
  readonly onKeep: (drafts: readonly PieceDraft[]) => void;
  readonly onClose: () => void;
}

/** Adds pieces from photo files, several at once; each may be corrected before it is kept. */
export function PhotoDialog({ tools, onKeep, onClose }: PhotoDialogProps) {
  const { drafts, add, change, drop } = usePhotos(tools);
  const [missing, setMissing] = useState("");
  const read = drafts.filter(({ state }) => state === "read");
  const waiting = drafts.some(({ state }) => state === "reading");
  const keep = () => {
    const ready = read.flatMap(({ name, slot, swatches, picture }) =>
      slot === null || name.trim() === ""
        ? []
        : [{ name: name.trim(), slot, swatches, ...(picture && { picture }) }],
    );
    if (ready.length < read.length) return setMissing("Each piece needs a name and where it is worn.");
    onKeep(ready);
  };
  return (
    <Sheet title="Add from photos" onClose={onClose}>
      <div class="photo-form">
        <p>
          One piece in each photo, on a plain ground and in daylight, reads best. Photos are read here and go
          nowhere; only a small copy is kept.
        </p>
        <label class="labelled">
          Photos
          <input
            class="field"
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
              onChange={(part) => change(draft.key, part)}
              onDrop={() => drop(draft.key)}
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

function PhotoRow({
  draft,
  onChange,
  onDrop,
}: {
  draft: PhotoDraft;
  onChange: (part: Partial<PhotoDraft>) => void;
  onDrop: () => void;
}) {
  const [open, setOpen] = useState(false);
  const out = (
    <Button kind="quiet" aria-label={`Leave out ${draft.name || draft.fileName}`} onClick={onDrop}>
      Leave out
    </Button>
  );
  if (draft.state !== "read") {
    return (
      <li class="photo-draft">
        <p class="photo-wide">
          <strong>{draft.fileName}</strong>{" "}
          {draft.state === "reading" ? "is being read" : <span class="alert-text">{draft.note}</span>}
        </p>
        {draft.state === "failed" && out}
      </li>
    );
  }
  return (
    <li class="photo-draft">
      {draft.picture && <img class="photo-picture" src={draft.picture} alt="" />}
      <div class="photo-words">
        <label class="labelled">
          Name
          <input
            class="field"
            maxLength={300}
            value={draft.name}
            onInput={(event) => onChange({ name: event.currentTarget.value })}
          />
        </label>
        <SlotSelect value={draft.slot} onChange={(slot) => onChange({ slot })} />
        <NamedCloth swatches={namedSwatches(draft.swatches)} />
        {draft.note && <p class="small">{draft.note}</p>}
        <div class="photo-actions">
          <Button kind="quiet" aria-expanded={open} onClick={() => setOpen(!open)}>
            {open ? "Done with the colours" : "Correct the colours"}
          </Button>
          {out}
        </div>
      </div>
      {open && (
        <div class="photo-wide">
          <SwatchEditor swatches={draft.swatches} onChange={(swatches) => onChange({ swatches, note: "" })} />
        </div>
      )}
    </li>
  );
}
