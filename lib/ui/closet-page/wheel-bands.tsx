import {
  ANALOGOUS_UP_TO,
  SAME_HUE_UP_TO,
  SPLIT_UP_TO,
  TRIADIC_UP_TO,
  UNNAMED_UP_TO,
} from "../../color/thresholds.ts";
import { arcPath, onWheel } from "../on-wheel.ts";
import { WHEEL } from "./place-dots.ts";

/** Where the relations of a hue lie, in degrees from it, with the word written at the middle of each. */
const BANDS = [
  { word: "complement", from: SPLIT_UP_TO, to: 360 - SPLIT_UP_TO },
  { word: "triad", from: UNNAMED_UP_TO, to: TRIADIC_UP_TO },
  { word: "triad", from: -TRIADIC_UP_TO, to: -UNNAMED_UP_TO },
  { word: "neighbours", from: SAME_HUE_UP_TO, to: ANALOGOUS_UP_TO },
  { word: "neighbours", from: -ANALOGOUS_UP_TO, to: -SAME_HUE_UP_TO },
] as const;

const TRACK = WHEEL.ringInner - 4;
const WORD_AT = WHEEL.ringInner - 13;

/** Marks on the wheel where a hue's complement, neighbours and triad lie. */
export function WheelBands({ wheel }: { wheel: number }) {
  const self = onWheel(wheel, WHEEL.ringInner);
  const across = onWheel(wheel + 180, WHEEL.ringInner);
  return (
    <g class="wheel-bands">
      <line class="wheel-axis" x1={self.x} y1={self.y} x2={across.x} y2={across.y} />
      {BANDS.map(({ from, to }) => (
        <path key={from} class="wheel-band" d={arcPath(wheel + from, wheel + to, TRACK)} />
      ))}
    </g>
  );
}

/** The words of the marks, drawn above the dots so that they stay legible. */
export function WheelBandWords({ wheel }: { wheel: number }) {
  return (
    <g class="wheel-words">
      {BANDS.map(({ word, from, to }) => {
        const place = onWheel(wheel + (from + to) / 2, WORD_AT);
        return (
          <text key={from} class="wheel-word" x={place.x * WORD_WIDE} y={place.y + 3.5} text-anchor="middle">
            {word}
          </text>
        );
      })}
    </g>
  );
}

/** Words are wider than high: they stand on an oval, so that they do not run over the rim. */
const WORD_WIDE = 0.7;
