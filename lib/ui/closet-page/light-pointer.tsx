import "./light-pointer.css";
import type { TargetedPointerEvent } from "preact";
import { useEffect, useId, useLayoutEffect, useRef, useState } from "preact/hooks";
import { Button } from "../button.tsx";
import type { Spot } from "./closet-tools.ts";
import { SpotGlass } from "./spot-glass.tsx";
import { spotUnder, steppedSpot } from "./spot-steps.ts";
import { useAddress } from "./use-address.ts";
import { useEscape } from "./use-escape.ts";

const MIDDLE: Spot = { x: 0.5, y: 0.5 };

const percent = (part: number): string => `${100 * part}%`;
const whole = (part: number): number => Math.round(100 * part);

/**
 * A photo to point at something white or grey in: a click or the lifted finger takes the place, or the arrow keys and Enter.
 * Escape leaves it, and leaves the dialog around it open.
 */
export function LightPointer({
  file,
  onTake,
  onLeave,
}: {
  file: File;
  /** Resolves to why the place cannot serve, or to "". */
  onTake: (spot: Spot) => Promise<string>;
  onLeave: () => void;
}) {
  const [spot, setSpot] = useState(MIDDLE);
  // Where a mouse or finger is: it comes and goes without moving the keyboard's place.
  const [under, setUnder] = useState<Spot | null>(null);
  const [ratio, setRatio] = useState(1);
  const [refusal, setRefusal] = useState("");
  const [busy, setBusy] = useState(false);
  const panel = useRef<HTMLDivElement>(null);
  const pad = useRef<HTMLDivElement>(null);
  // A press counts where it is lifted, if it began here and never left: so it can be thought better of.
  const pressed = useRef(false);
  const help = useId();
  const address = useAddress(file);
  useLayoutEffect(() => pad.current?.focus({ preventScroll: true }), []);
  // Once the picture has its shape: it, and what stands beside it; then what is said of a spot.
  useEffect(() => panel.current?.scrollIntoView({ block: "nearest" }), [ratio, refusal]);
  useEscape(onLeave);

  const place = (event: TargetedPointerEvent<HTMLDivElement>) =>
    spotUnder(event.currentTarget.getBoundingClientRect(), event.clientX, event.clientY);
  const take = async (taken: Spot) => {
    if (busy) return;
    setSpot(taken);
    setBusy(true);
    setRefusal("");
    const said = await onTake(taken);
    setBusy(false);
    setRefusal(said);
  };
  const shown = under ?? spot;
  return (
    <div class="light-pointer" ref={panel}>
      <p class="light-help" id={help}>
        Point at something that is white or grey by daylight: paper, a plate, a plain wall.{" "}
        <span class="soft">
          Arrow keys move the ring, with Shift further; Enter takes the spot, Escape leaves.
        </span>
      </p>
      <div
        class="light-pad"
        ref={pad}
        style={{ "--ratio": ratio }}
        role="slider"
        tabIndex={0}
        aria-label="Place in the photo"
        aria-valuemin={0}
        aria-valuemax={100}
        aria-valuenow={whole(spot.x)}
        aria-valuetext={`${whole(spot.x)} % from the left, ${whole(spot.y)} % from the top`}
        aria-describedby={help}
        aria-busy={busy}
        onPointerDown={(event) => {
          pressed.current = event.button === 0;
          setUnder(place(event));
        }}
        onPointerMove={(event) => setUnder(place(event))}
        onPointerLeave={() => {
          pressed.current = false;
          setUnder(null);
        }}
        onPointerUp={(event) => {
          const taken = pressed.current ? place(event) : null;
          pressed.current = false;
          if (taken) void take(taken);
        }}
        onKeyDown={(event) => {
          const next = steppedSpot(spot, event.key, event.shiftKey, ratio);
          if (next) setSpot(next);
          else if (event.key === "Enter" || event.key === " ") void take(spot);
          else return;
          event.preventDefault();
        }}
      >
        {address && (
          <img
            src={address}
            alt=""
            draggable={false}
            onLoad={({ currentTarget: { naturalWidth, naturalHeight } }) => {
              if (naturalWidth && naturalHeight) setRatio(naturalWidth / naturalHeight);
            }}
          />
        )}
        <span class="light-ring" style={{ left: percent(shown.x), top: percent(shown.y) }} />
      </div>
      <div class="light-side">
        <SpotGlass address={address} spot={shown} ratio={ratio} />
        <div class="light-actions">
          <Button disabled={busy} onClick={() => void take(spot)}>
            {busy ? "Reading the light" : "Take this spot"}
          </Button>
          <Button kind="quiet" onClick={onLeave}>
            Stop pointing
          </Button>
        </div>
        <p class="alert-text" role="alert">
          {refusal}
        </p>
      </div>
    </div>
  );
}
