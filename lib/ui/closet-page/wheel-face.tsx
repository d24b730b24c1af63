import { arcPath, onWheel } from "../on-wheel.ts";
import { WHEEL } from "./place-dots.ts";
import { pureHue } from "./pure-hue.ts";
import { STEP_DEGREES, WHEEL_STEPS } from "./wheel-steps.ts";

/** Degrees of one thread of the band of hues. */
const THREAD = 5;
const THREADS = Array.from({ length: 360 / THREAD }, (_, at) => at * THREAD);
const BAND = WHEEL.ringOuter - WHEEL.ringInner;
const NAMES_AT = WHEEL.ringOuter + 11;

/** The still part of the wheel: the band of hues, its twelve steps with the six main names, and the strip of neutrals. */
export function WheelFace() {
  const half = WHEEL.stripHalf;
  return (
    <g class="wheel-face">
      <circle class="wheel-ground" r={WHEEL.ringInner} />
      {THREADS.map((angle) => (
        <path
          key={angle}
          d={arcPath(angle - THREAD / 2 + 0.4, angle + THREAD / 2 - 0.4, WHEEL.ringInner + BAND / 2)}
          stroke={pureHue(angle)}
          stroke-width={BAND}
          fill="none"
        />
      ))}
      {WHEEL_STEPS.map((name, at) => {
        const spoke = {
          from: onWheel(at * STEP_DEGREES, 8),
          to: onWheel(at * STEP_DEGREES, WHEEL.ringInner),
        };
        return (
          <line
            key={name}
            class="wheel-spoke"
            x1={spoke.from.x}
            y1={spoke.from.y}
            x2={spoke.to.x}
            y2={spoke.to.y}
          />
        );
      })}
      {WHEEL_STEPS.map((name, at) => {
        const place = onWheel(at * STEP_DEGREES, NAMES_AT);
        if (at % 2 === 1) return null;
        return (
          <text key={name} class="wheel-name" x={place.x} y={place.y + 3.5} text-anchor={anchorOf(place.x)}>
            {name}
          </text>
        );
      })}
      <rect
        class="wheel-ground"
        x={-half}
        y={WHEEL.stripTop}
        width={half * 2}
        height={WHEEL.stripHeight}
        rx={2}
      />
      <text class="wheel-name" x={-half} y={WHEEL.stripTop - 5}>
        black
      </text>
      <text class="wheel-name" x={0} y={WHEEL.stripTop - 5} text-anchor="middle">
        neutrals
      </text>
      <text class="wheel-name" x={half} y={WHEEL.stripTop - 5} text-anchor="end">
        white
      </text>
    </g>
  );
}

function anchorOf(x: number): "start" | "middle" | "end" {
  if (Math.abs(x) < 20) return "middle";
  return x < 0 ? "end" : "start";
}
