import "./swatch-editor.css";
import { useId, useState } from "preact/hooks";
import type { Oklab } from "../../color/oklab.ts";
import { FINISHES, type Finish, type Swatch } from "../../sample/palette.ts";
import { Button } from "../button.tsx";
import { Cloth } from "../cloth.tsx";
import { namedSwatches } from "../named-swatches.ts";
import { ColourPicker } from "./colour-picker.tsx";
import {
  addColour,
  dropColour,
  MOST_SWATCHES,
  recolour,
  refinish,
  reshare,
  SMALLEST_SHARE,
} from "./swatch-list.ts";

/** What a new colour starts as, before one is chosen. */
const NEW_COLOUR: Oklab = [0.7, 0, 0];

/** The colours of one piece: one to six, each with its name, share and metal; the picker works on the chosen one. */
export function SwatchEditor({
  swatches,
  onChange,
}: {
  swatches: readonly Swatch[];
  onChange: (swatches: readonly Swatch[]) => void;
}) {
  const [at, setAt] = useState(0);
  const group = useId();
  const named = namedSwatches(swatches);
  const active = Math.min(at, swatches.length - 1);
  const value = swatches[active];
  return (
    <fieldset class="swatch-editor">
      <legend>Colours</legend>
      <Cloth swatches={swatches} size="band" />
      <ul class="swatch-rows">
        {named.map((swatch, index) => (
          <li key={index} class="swatch-row">
            <label class="swatch-pick">
              <input
                type="radio"
                name={group}
                checked={index === active}
                aria-label={`Change ${swatch.name}`}
                onChange={() => setAt(index)}
              />
              <Cloth swatches={[swatch]} size="chip" />
              <span>{swatch.name}</span>
            </label>
            {swatches.length > 1 && (
              <>
                <input
                  type="range"
                  aria-label={`Share of ${swatch.name}`}
                  min={SMALLEST_SHARE * 100}
                  max={100}
                  value={Math.round(swatch.share * 100)}
                  aria-valuetext={`${Math.round(swatch.share * 100)} %`}
                  onInput={(event) =>
                    onChange(reshare(swatches, index, event.currentTarget.valueAsNumber / 100))
                  }
                />
                <span class="swatch-share small">{Math.round(swatch.share * 100)} %</span>
                <Button
                  kind="quiet"
                  aria-label={`Take out ${swatch.name}`}
                  onClick={({ currentTarget }) => {
                    // The first row stays, whichever goes; this button may not.
                    currentTarget.closest("ul")?.querySelector("input")?.focus();
                    onChange(dropColour(swatches, index));
                  }}
                >
                  Take out
                </Button>
              </>
            )}
          </li>
        ))}
      </ul>
      <Button
        disabled={swatches.length >= MOST_SWATCHES}
        onClick={() => {
          onChange(addColour(swatches, NEW_COLOUR));
          setAt(swatches.length);
        }}
      >
        {swatches.length >= MOST_SWATCHES ? "Six colours at most" : "Another colour"}
      </Button>
      {value && (
        <>
          <ColourPicker
            key={active}
            value={value.oklab}
            onPick={(oklab) => onChange(recolour(swatches, active, oklab))}
          />
          <label class="swatch-finish">
            <span>Is it metal?</span>
            <select
              class="field"
              value={value.finish ?? ""}
              onChange={(event) => onChange(refinish(swatches, active, finishOf(event.currentTarget.value)))}
            >
              <option value="">No, cloth or leather</option>
              {FINISHES.map((finish) => (
                <option key={finish} value={finish}>
                  {finish}
                </option>
              ))}
            </select>
          </label>
        </>
      )}
    </fieldset>
  );
}

function finishOf(value: string): Finish | null {
  return FINISHES.find((finish) => finish === value) ?? null;
}
