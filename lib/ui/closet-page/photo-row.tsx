import { useEffect, useRef, useState } from "preact/hooks";
import { Button } from "../button.tsx";
import { NamedCloth } from "../cloth.tsx";
import { namedSwatches } from "../named-swatches.ts";
import type { Spot } from "./closet-tools.ts";
import { LightPointer } from "./light-pointer.tsx";
import { lightNote, type PhotoDraft, shownDraft } from "./photo-draft.ts";
import { SlotSelect } from "./slot-select.tsx";
import { SwatchEditor } from "./swatch-editor.tsx";

export interface PhotoRowProps {
  readonly draft: PhotoDraft;
  /** Whether this is the photo that is being pointed at. */
  readonly pointing: boolean;
  readonly onPoint: (on: boolean) => void;
  /** Resolves to why the place cannot serve, or to "". */
  readonly onWhite: (spot: Spot) => Promise<string>;
  readonly onChange: (part: Partial<PhotoDraft>) => void;
  readonly onDrop: () => void;
}

/** One photo: what was read of it, and the ways to put that right. */
export function PhotoRow({ draft, pointing, onPoint, onWhite, onChange, onDrop }: PhotoRowProps) {
  const [open, setOpen] = useState(false);
  const row = useRef<HTMLLIElement>(null);
  const actions = useRef<HTMLDivElement>(null);
  // What pointing changed stands above the place where it was pointed at.
  useEffect(() => {
    if (draft.byWhite && !pointing) row.current?.scrollIntoView({ block: "nearest" });
  }, [draft.byWhite, pointing]);
  const shown = shownDraft(draft);
  const called = shown?.name || draft.file.name;
  const out = (
    <Button kind="quiet" aria-label={`Leave out ${called}`} onClick={onDrop}>
      Leave out
    </Button>
  );
  if (!shown) {
    return (
      <li class="photo-draft">
        <p class="photo-wide">
          <strong>{draft.file.name}</strong>{" "}
          {draft.failure ? <span class="alert-text">{draft.failure}</span> : "is being read"}
        </p>
        {draft.failure && out}
      </li>
    );
  }
  // The button that opened it stays; whatever else had the focus goes.
  const toOpener = () => actions.current?.querySelector("button")?.focus();
  const leave = () => {
    toOpener();
    onPoint(false);
  };
  return (
    <li class="photo-draft" ref={row}>
      {shown.picture && <img class="photo-picture" src={shown.picture} alt="" />}
      <div class="photo-words">
        <label class="labelled">
          Name
          <input
            class="field"
            maxLength={300}
            value={shown.name}
            onInput={(event) => onChange({ typedName: event.currentTarget.value })}
          />
        </label>
        <SlotSelect value={draft.slot} onChange={(slot) => onChange({ slot })} />
        <NamedCloth swatches={namedSwatches(shown.swatches)} />
        {shown.note && <p class="small">{shown.note}</p>}
        <p class="small" role="status">
          {lightNote(draft)}
        </p>
        <div class="photo-actions" ref={actions}>
          <Button
            kind="quiet"
            aria-expanded={pointing}
            aria-label={`Point at something white or grey in ${called}`}
            onClick={() => onPoint(!pointing)}
          >
            Point at something white or grey
          </Button>
          {draft.byWhite && (
            <Button
              kind="quiet"
              aria-label={`As photographed: ${called}`}
              onClick={() => {
                toOpener();
                onChange({ byWhite: null });
              }}
            >
              As photographed
            </Button>
          )}
          <Button kind="quiet" aria-expanded={open} onClick={() => setOpen(!open)}>
            {open ? "Done with the colours" : "Correct the colours"}
          </Button>
          {draft.chosen && (
            <Button
              kind="quiet"
              aria-label={`Back to the photo's colours: ${called}`}
              onClick={() => {
                toOpener();
                onChange({ chosen: null });
              }}
            >
              Back to the photo's colours
            </Button>
          )}
          {out}
        </div>
      </div>
      {pointing && (
        <div class="photo-wide">
          <LightPointer
            file={draft.file}
            onTake={async (spot) => {
              const refusal = await onWhite(spot);
              if (refusal === "") leave();
              return refusal;
            }}
            onLeave={leave}
          />
        </div>
      )}
      {open && (
        <div class="photo-wide">
          <SwatchEditor swatches={shown.swatches} onChange={(chosen) => onChange({ chosen })} />
        </div>
      )}
    </li>
  );
}
