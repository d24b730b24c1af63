import "./dial.css";
import { colorPoint } from "../color/color-point.ts";
import { cssOf } from "../color/convert.ts";
import type { Oklab } from "../color/oklab.ts";
import type { Relation } from "../color/relation-name.ts";
import { onWheel } from "./on-wheel.ts";
import { relationText } from "./words.ts";

const RING = 10;

/**
 * A relation as the wheel itself: a thin ring, a dot at each hue and the chord between them. A neutral has no hue and
 * sits in the middle. Drawn only; the word stands beside it.
 */
export function Dial({ first, second }: { first: Oklab; second: Oklab }) {
  const dots = [first, second].map((oklab) => {
    const { wheel } = colorPoint(oklab);
    return { oklab, place: wheel === null ? { x: 0, y: 0 } : onWheel(wheel, RING) };
  });
  const [from, to] = dots;
  return (
    <svg class="dial" viewBox="-14 -14 28 28" aria-hidden="true" focusable="false">
      <circle class="dial-ring" r={RING} />
      {from && to && (
        <line class="dial-chord" x1={from.place.x} y1={from.place.y} x2={to.place.x} y2={to.place.y} />
      )}
      {dots.map(({ oklab, place }, at) => (
        <circle
          key={at === 0 ? "first" : "second"}
          class="dial-dot"
          cx={place.x}
          cy={place.y}
          r={3}
          fill={cssOf(oklab)}
        />
      ))}
    </svg>
  );
}

/** A dial with its word: "complementary, or split-complementary". */
export function RelationDial({
  first,
  second,
  relation,
  alternatives,
}: {
  first: Oklab;
  second: Oklab;
  relation: Relation;
  alternatives: readonly Relation[];
}) {
  return (
    <span class="relation-dial">
      <Dial first={first} second={second} />
      <span>{relationText(relation, alternatives)}</span>
    </span>
  );
}
