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

const TRACK = WHEEL.ringInner - 2.5;

/** Words stand on an arc between the dots and their band: on its inner side above the middle, on its outer one below it, so as to be upright. */
const BASELINE = { above: WHEEL.dotOuter + 2, below: WHEEL.dotOuter + 7.5 } as const;

/** Half of the arc that a word may take, in degrees; the longest takes about 32. */
const WORD_HALF = 30;

/** Marks on the wheel where a hue's complement, neighbours and triad lie. */
export function WheelBands({ wheel }: { wheel: number }) {
  const self = onWheel(wheel, WHEEL.ringInner);
  const across = onWheel(wheel + 180, WHEEL.ringInner);
  return (
    <g class="wheel-bands">
      <line class="wheel-axis" x1={self.x} y1={self.y} x2={across.x} y2={across.y} />
      {BANDS.map(({ word, from, to }) => (
        <g key={from}>
          <path class="wheel-band" d={arcPath(wheel + from, wheel + to, TRACK)} />
          <path id={`wheel-word-${from}`} fill="none" d={wordPath(wheel + (from + to) / 2)} />
          <text class="wheel-word" text-anchor="middle">
            <textPath href={`#wheel-word-${from}`} startOffset="50%">
              {word}
            </textPath>
          </text>
        </g>
      ))}
    </g>
  );
}

/** What a word at an angle of the wheel stands on; from left to right. */
function wordPath(middle: number): string {
  const isBelow = onWheel(middle, 1).y > 0;
  const radius = isBelow ? BASELINE.below : BASELINE.above;
  return arcPath(middle - WORD_HALF, middle + WORD_HALF, radius, isBelow);
}
