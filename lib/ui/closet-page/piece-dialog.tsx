import "./piece-dialog.css";
import { useState } from "preact/hooks";
import { CLOTH_COLORS } from "../../closet/cloth-colors.ts";
import type { PieceDraft } from "../../closet/new-piece.ts";
import type { Slot } from "../../words/slot.ts";
import { Button } from "../button.tsx";
import { Sheet } from "./sheet.tsx";
import { SlotSelect } from "./slot-select.tsx";
import { SwatchEditor } from "./swatch-editor.tsx";

/** A piece being filled in: the slot may still be open. */
export type OpenDraft = Omit<PieceDraft, "slot"> & { readonly slot: Slot | null };

/** What a new piece starts as. */
export const BLANK_DRAFT: OpenDraft = {
  name: "",
  slot: null,
  swatches: [{ oklab: CLOTH_COLORS.navy, share: 1 }],
};

export interface PieceDialogProps {
  readonly title: string;
  readonly start: OpenDraft;
  /** What the button that keeps it says. */
  readonly keep: string;
  readonly onKeep: (draft: PieceDraft) => void;
  readonly onClose: () => void;
}

/** Adds or changes one piece: its name, where it is worn and its colours. */
export function PieceDialog({ title, start, keep, onKeep, onClose }: PieceDialogProps) {
  const [draft, setDraft] = useState(start);
  const [missing, setMissing] = useState("");
  const send = () => {
    const name = draft.name.trim();
    if (name === "") return setMissing("Give it a name, so that you know it again.");
    if (draft.slot === null) return setMissing("Choose where it is worn.");
    onKeep({ ...draft, name, slot: draft.slot });
  };
  return (
    <Sheet title={title} onClose={onClose}>
      <form
        class="piece-form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          send();
        }}
      >
        <div class="piece-fields">
          {draft.picture && <img class="piece-form-picture" src={draft.picture} alt="" />}
          <label class="labelled piece-form-name">
            Name
            <input
              class="field"
              required
              maxLength={300}
              autocomplete="off"
              placeholder="Pleated skirt"
              value={draft.name}
              onInput={(event) => setDraft({ ...draft, name: event.currentTarget.value })}
            />
          </label>
          <SlotSelect value={draft.slot} onChange={(slot) => setDraft({ ...draft, slot })} />
        </div>
        <SwatchEditor
          swatches={draft.swatches}
          onChange={(swatches) => setDraft((before) => ({ ...before, swatches }))}
        />
        <div class="sheet-foot">
          <Button kind="strong" type="submit">
            {keep}
          </Button>
          <Button onClick={onClose}>Cancel</Button>
          <p class="alert-text" role="alert">
            {missing}
          </p>
        </div>
      </form>
    </Sheet>
  );
}
