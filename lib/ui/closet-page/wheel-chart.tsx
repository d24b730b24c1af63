import "./wheel-chart.css";
import { useContext, useMemo, useRef, useState } from "preact/hooks";
import { namesText } from "../named-swatches.ts";
import { LOOK_ALIKE, relationText } from "../words.ts";
import { comparedHue, type HungPiece } from "./hung-piece.ts";
import { type Dot, nearestDot, placeDots } from "./place-dots.ts";
import { SpotlightContext, useSpotlight, whatIsLit } from "./spotlight.ts";
import { WheelBands } from "./wheel-bands.tsx";
import { Dots, type KinById, RaisedDots } from "./wheel-dots.tsx";
import { WheelFace } from "./wheel-face.tsx";

export interface WheelChartProps {
  /** In the order in which the arrow keys go round. */
  readonly hung: readonly HungPiece[];
  readonly selected: HungPiece | null;
  /** Which pieces stand in a named relation to the selected one; null where none is selected. */
  readonly kin: KinById | null;
  /** Selects a piece, or lets go of it where it is selected already. */
  readonly onSelect: (id: string) => void;
}

/** The drawing's own units. */
const BOX = { left: -150, top: -130, width: 300, height: 322 } as const;

/** A pointer this near to a dot means it: 12 px each way on the narrowest screen. */
const REACH = 16;

const KEY_STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowDown: 1,
  ArrowLeft: -1,
  ArrowUp: -1,
};

/**
 * The artist's wheel with a dot for each piece. A pointer finds the nearest dot; for the keyboard and for assistive
 * technology each dot has a button, one of which the tab key reaches while arrows go from piece to piece.
 */
export function WheelChart({ hung, selected, kin, onSelect }: WheelChartProps) {
  const dots = useMemo(() => placeDots(hung), [hung]);
  const [stop, setStop] = useState<string | null>(null);
  const drawing = useRef<HTMLDivElement>(null);
  const light = useContext(SpotlightContext);
  const reachable = dots.find((dot) => dot.hung.piece.id === stop) ?? dots[0];
  const select = (id: string) => {
    setStop(id);
    onSelect(id);
  };
  const step = (event: KeyboardEvent) => {
    const by = KEY_STEPS[event.key];
    if (by === undefined || !reachable) return;
    event.preventDefault();
    const at = (dots.indexOf(reachable) + by + dots.length) % dots.length;
    setStop(dots[at]?.hung.piece.id ?? null);
    drawing.current?.querySelectorAll("button")[at]?.focus();
  };
  const wheel = selected && comparedHue(selected);
  const face = useMemo(() => <WheelFace />, []);
  const marks = useMemo(() => <Dots dots={dots} kin={kin} />, [dots, kin]);
  return (
    <figure class="wheel">
      <div
        ref={drawing}
        class="wheel-drawing"
        role="toolbar"
        tabIndex={-1}
        aria-label="Your pieces on the artist's wheel; arrow keys go from one to the next"
        onKeyDown={step}
        onPointerMove={(event) => light.shine(pointedAt(dots, event)?.hung.piece.id ?? null)}
        onPointerLeave={() => light.shine(null)}
        onClick={(event) => {
          const dot = event.target instanceof HTMLButtonElement ? null : pointedAt(dots, event);
          if (dot) select(dot.hung.piece.id);
        }}
      >
        <svg
          viewBox={`${BOX.left} ${BOX.top} ${BOX.width} ${BOX.height}`}
          aria-hidden="true"
          focusable="false"
        >
          {face}
          {wheel !== null && <WheelBands wheel={wheel} />}
          {marks}
          <RaisedDots dots={dots} selectedId={selected?.piece.id ?? null} />
        </svg>
        {dots.map((dot) => {
          const { piece, named } = dot.hung;
          return (
            <button
              key={piece.id}
              type="button"
              class="wheel-button"
              style={placeOf(dot)}
              tabIndex={dot === reachable ? 0 : -1}
              aria-label={`${piece.name}, ${namesText(named)}`}
              aria-pressed={piece.id === selected?.piece.id}
              onClick={() => select(piece.id)}
              onFocus={() => light.shine(piece.id)}
              onBlur={() => light.shine(null)}
            />
          );
        })}
      </div>
      <WheelCaption hung={hung} kin={kin} />
    </figure>
  );
}

function WheelCaption({ hung, kin }: { hung: readonly HungPiece[]; kin: KinById | null }) {
  const id = useSpotlight(whatIsLit);
  const lit = id === null ? undefined : hung.find(({ piece }) => piece.id === id);
  const relative = id === null ? undefined : kin?.get(id);
  return (
    <figcaption class="wheel-caption small">
      {lit ? (
        <>
          <strong>{lit.piece.name}</strong> <span class="soft">{namesText(lit.named)}</span>
          {relative && (
            <span>
              : {relationText(relative.relation, relative.alternatives)}
              {relative.lookAlike && `; ${LOOK_ALIKE}`}
            </span>
          )}
        </>
      ) : (
        <span class="soft">
          Faint colours lie near the middle, strong ones at the rim. Choose a dot to see what goes with it.
        </span>
      )}
    </figcaption>
  );
}

/** The dot a pointer means, or null. The drawing fills its box at one scale. */
function pointedAt(
  dots: readonly Dot[],
  event: MouseEvent & { readonly currentTarget: HTMLElement },
): Dot | null {
  const box = event.currentTarget.getBoundingClientRect();
  const scale = BOX.width / box.width;
  const x = BOX.left + (event.clientX - box.left) * scale;
  const y = BOX.top + (event.clientY - box.top) * scale;
  return nearestDot(dots, { x, y }, REACH);
}

function placeOf({ x, y }: Dot) {
  return {
    insetInlineStart: `${((x - BOX.left) / BOX.width) * 100}%`,
    insetBlockStart: `${((y - BOX.top) / BOX.height) * 100}%`,
  };
}
