import { linearFromOklab, oklabFromLinear } from "./convert.ts";
import { ciede2000 } from "./difference.ts";
import { labFromOklab } from "./lab.ts";
import type { Oklab } from "./oklab.ts";
import { CLOSE_SHADE, SAME_SHADE } from "./thresholds.ts";

/** Kinds of dichromatic colour vision: without working long, middle or short cones. */
export const VISIONS = ["protan", "deutan", "tritan"] as const;
export type Vision = (typeof VISIONS)[number];

type Row = readonly [r: number, g: number, b: number];

/**
 * What each vision makes of linear-light sRGB, at full severity: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A
 * Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE TVCG 15(6), 2009.
 */
export const MACHADO_2009: Readonly<Record<Vision, readonly [Row, Row, Row]>> = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** A colour as someone with that vision sees it. */
export function seenWith(vision: Vision, c: Oklab): Oklab {
  const [r, g, b] = linearFromOklab(c);
  const [red, green, blue] = MACHADO_2009[vision];
  const mix = (row: Row) => Math.min(1, Math.max(0, row[0] * r + row[1] * g + row[2] * b));
  return oklabFromLinear(mix(red), mix(green), mix(blue));
}

/** The visions for which two colours that most people tell apart look like one shade. */
export function confusedWith(a: Oklab, b: Oklab): readonly Vision[] {
  if (difference(a, b) <= CLOSE_SHADE) return [];
  return VISIONS.filter((vision) => difference(seenWith(vision, a), seenWith(vision, b)) <= SAME_SHADE);
}

/** The pairs of a set, by index, that someone with that vision would take for one shade and most people would not. */
export function confusedPairs(
  vision: Vision,
  colors: readonly Oklab[],
): readonly (readonly [number, number])[] {
  return colors.flatMap((a, one) =>
    colors.flatMap((b, other) =>
      one < other && confusedWith(a, b).includes(vision) ? [[one, other] as const] : [],
    ),
  );
}

function difference(a: Oklab, b: Oklab): number {
  return ciede2000(...labFromOklab(a), ...labFromOklab(b));
}
