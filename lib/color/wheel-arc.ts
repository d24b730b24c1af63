import { turnOf } from "./wheel.ts";

/** A stretch of the wheel that holds some hues, in degrees. */
export interface Arc {
  readonly middle: number;
  /** 0 ≤ span < 360. */
  readonly span: number;
}

/** The shortest stretch that holds all hues; null without any. */
export function arcOf(hues: readonly number[]): Arc | null {
  const [gap] = gapsOf(hues);
  return gap === undefined ? null : arcBetween(gap.end, gap.start);
}

/** The two stretches that are left when the wheel is cut at its two widest gaps; null for fewer than two hues. */
export function splitInTwo(hues: readonly number[]): readonly [Arc, Arc] | null {
  const [wide, second] = gapsOf(hues);
  if (wide === undefined || second === undefined) return null;
  return [arcBetween(wide.end, second.start), arcBetween(second.end, wide.start)];
}

function arcBetween(from: number, to: number): Arc {
  const span = turnOf(to - from);
  return { middle: turnOf(from + span / 2), span };
}

/** The empty stretches between neighbouring hues, widest first. */
function gapsOf(hues: readonly number[]) {
  const sorted = hues.map(turnOf).sort((a, b) => a - b);
  return sorted
    .map((start, index) => {
      const end = sorted[(index + 1) % sorted.length] ?? start;
      const around = index + 1 === sorted.length ? 360 : 0;
      return { start, end, width: end + around - start };
    })
    .sort((a, b) => b.width - a.width);
}
