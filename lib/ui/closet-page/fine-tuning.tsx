import { colorPoint } from "../../color/color-point.ts";
import { hueOf } from "../../color/convert.ts";
import type { Oklab } from "../../color/oklab.ts";
import { wheelFromHue } from "../../color/wheel.ts";
import { oklabAt } from "./pure-hue.ts";
import { strongestAt } from "./shade-card.ts";
import { stepName } from "./wheel-steps.ts";

/** Lightness kept away from the ends, where no hue is left to strengthen. */
const LIGHTEST = 98;
const DARKEST = 8;

/** Three sliders for a colour: hue on the artist's wheel, lightness, and strength as a part of what a screen can show. */
export function FineTuning({ value, onPick }: { value: Oklab; onPick: (oklab: Oklab) => void }) {
  const { chroma } = colorPoint(value);
  const angle = wheelFromHue(hueOf(value));
  const lightness = value[0];
  const strength = Math.min(1, chroma / strongestAt(lightness, angle));
  const set = (light: number, part: number, turn: number) =>
    onPick(oklabAt(light, strongestAt(light, turn) * part, turn));
  return (
    <details class="fine-tuning">
      <summary>Fine tuning</summary>
      <div class="fine-sliders">
        <Slider
          label="Hue"
          value={Math.round(angle)}
          min={0}
          max={359}
          text={stepName(angle)}
          onSlide={(turn) => set(lightness, strength, turn)}
        />
        <Slider
          label="Lightness"
          value={Math.round(lightness * 100)}
          min={DARKEST}
          max={LIGHTEST}
          onSlide={(percent) => set(percent / 100, strength, angle)}
        />
        <Slider
          label="Strength"
          value={Math.round(strength * 100)}
          min={0}
          max={100}
          onSlide={(percent) => set(lightness, percent / 100, angle)}
        />
      </div>
    </details>
  );
}

function Slider({
  label,
  value,
  min,
  max,
  text,
  onSlide,
}: {
  label: string;
  value: number;
  min: number;
  max: number;
  text?: string;
  onSlide: (value: number) => void;
}) {
  return (
    <label>
      <span>{label}</span>
      <input
        type="range"
        min={min}
        max={max}
        value={value}
        {...(text && { "aria-valuetext": text })}
        onInput={(event) => onSlide(event.currentTarget.valueAsNumber)}
      />
    </label>
  );
}
