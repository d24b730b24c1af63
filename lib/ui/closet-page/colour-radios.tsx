import "./colour-radios.css";
import { useId } from "preact/hooks";
import { cssOf } from "../../color/convert.ts";
import type { Oklab } from "../../color/oklab.ts";

export interface ColourChoice {
  readonly key: string;
  readonly name: string;
  readonly oklab: Oklab;
}

/** Colours to choose one of: radio buttons drawn as cloth, so that the arrow keys work. The chosen name stands below. */
export function ColourRadios({
  legend,
  choices,
  chosen,
  columns,
  named = false,
  onChoose,
}: {
  legend: string;
  choices: readonly ColourChoice[];
  /** Key of the chosen one, or null. */
  chosen: string | null;
  /** Fixed number of columns; as many as fit where it is left out. */
  columns?: number;
  /** Write each name beside its colour. */
  named?: boolean;
  onChoose: (choice: ColourChoice) => void;
}) {
  const group = useId();
  const style = columns ? { gridTemplateColumns: `repeat(${columns}, minmax(1.5rem, 1fr))` } : {};
  return (
    <fieldset class="colour-radios">
      <legend class="small">{legend}</legend>
      <div class={named ? "colour-grid colour-named" : "colour-grid"} style={style}>
        {choices.map((choice) => (
          <label key={choice.key} class="colour-choice" title={choice.name}>
            <input
              type="radio"
              class="unseen"
              name={group}
              checked={choice.key === chosen}
              aria-label={choice.name}
              onChange={() => onChoose(choice)}
            />
            <span class="colour-face" style={{ background: cssOf(choice.oklab) }} />
            {named && <span class="small">{choice.name}</span>}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
