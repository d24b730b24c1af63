import type { ColorPoint } from "./color-point.ts";

/** Many colours, number by number instead of colour by colour, so that a loop over all of them reads nothing but numbers. */
export interface PackedColors {
  readonly count: number;
  /** CIELAB (D65) L*, a* and b*, and the chroma of a* and b*. */
  readonly labL: Float64Array;
  readonly labA: Float64Array;
  readonly labB: Float64Array;
  readonly labChroma: Float64Array;
  /** Degrees on the artist's wheel, 0 ≤ w < 360; NaN for a neutral. */
  readonly wheel: Float64Array;
  /** OKLCH chroma, 0–0.4. */
  readonly chroma: Float64Array;
  /** How far the angle on the wheel may be off at full and at no confidence, degrees (90th percentile). */
  readonly errorSure: Float64Array;
  readonly errorUnsure: Float64Array;
}

/** The colours in the order given. */
export function packColors(points: readonly ColorPoint[]): PackedColors {
  const each = (read: (point: ColorPoint) => number) => Float64Array.from(points, read);
  return {
    count: points.length,
    labL: each(({ lab }) => lab[0]),
    labA: each(({ lab }) => lab[1]),
    labB: each(({ lab }) => lab[2]),
    labChroma: each(({ lab }) => Math.hypot(lab[1], lab[2])),
    wheel: each(({ wheel }) => wheel ?? Number.NaN),
    chroma: each(({ chroma }) => chroma),
    errorSure: each(({ wheelError }) => wheelError.sure),
    errorUnsure: each(({ wheelError }) => wheelError.unsure),
  };
}
