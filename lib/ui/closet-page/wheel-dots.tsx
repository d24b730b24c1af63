import { cssOf } from "../../color/convert.ts";
import type { Kin } from "./kin.ts";
import { type Dot, dotRadius } from "./place-dots.ts";
import { useSpotlight, whatIsLit } from "./spotlight.ts";

/** How every piece stands to the selected one, by id. */
export type KinById = ReadonlyMap<string, Kin>;

/** All pieces on the wheel; those without a named relation to the selected one stand back. `kin` null: none is selected. */
export function Dots({ dots, kin }: { dots: readonly Dot[]; kin: KinById | null }) {
  const radius = dotRadius(dots.length);
  return (
    <g>
      {dots.map(({ hung, x, y }) => (
        <circle
          key={hung.piece.id}
          class={kin === null || kin.has(hung.piece.id) ? "wheel-mark" : "wheel-mark aside"}
          cx={x}
          cy={y}
          r={radius}
          fill={cssOf(hung.point.oklab)}
        />
      ))}
    </g>
  );
}

/** The selected dot and the one pointed at, drawn again above all others with a ring and the chord between them. */
export function RaisedDots({ dots, selectedId }: { dots: readonly Dot[]; selectedId: string | null }) {
  const litId = useSpotlight(whatIsLit);
  const find = (id: string | null) =>
    id === null ? undefined : dots.find(({ hung }) => hung.piece.id === id);
  const selected = find(selectedId);
  const lit = litId === selectedId ? undefined : find(litId);
  const radius = dotRadius(dots.length);
  return (
    <g>
      {selected && lit && <line class="wheel-chord" x1={selected.x} y1={selected.y} x2={lit.x} y2={lit.y} />}
      {selected && <RaisedDot dot={selected} radius={radius} />}
      {lit && <RaisedDot dot={lit} radius={radius} />}
    </g>
  );
}

function RaisedDot({ dot, radius }: { dot: Dot; radius: number }) {
  return (
    <g>
      <circle class="wheel-halo" cx={dot.x} cy={dot.y} r={radius + 4.5} />
      <circle class="wheel-mark" cx={dot.x} cy={dot.y} r={radius + 2} fill={cssOf(dot.hung.point.oklab)} />
    </g>
  );
}
