import { finite, linearFromOklab, oklabFromLinear } from "./convert.ts";
import { deltaE2000 } from "./difference.ts";
import { labFromOklab } from "./lab.ts";
import type { Oklab } from "./oklab.ts";
import { CLOSE_SHADE, SAME_SHADE } from "./thresholds.ts";

/** Kinds of colour vision by the cone that is weak or missing: for long, middle or short waves. */
export const VISIONS = ["protan", "deutan", "tritan"] as const;
export type Vision = (typeof VISIONS)[number];

type Row = readonly [r: number, g: number, b: number];

/**
 * What each vision makes of linear-light sRGB where the cone is missing: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A
 * Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE TVCG 15(6), 2009, at severity 1. Nobody is
 * asked how far theirs goes: this is the cautious choice, for milder forms confuse fewer colours.
 */
const FULL_SEVERITY: Readonly<Record<Vision, readonly [Row, Row, Row]>> = {
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

/**
 * A colour as most people would have to see it to see what someone with that vision sees; it may lie a little outside
 * sRGB, which is left so, for a screen that cuts it off would make colours alike that are not.
 * @throws ColorError when a part is not finite.
 */
export function seenWith(vision: Vision, c: Oklab): Oklab {
  const [r, g, b] = linearFromOklab(finite(c));
  const [red, green, blue] = FULL_SEVERITY[vision];
  const mix = (row: Row) => row[0] * r + row[1] * g + row[2] * b;
  return oklabFromLinear(mix(red), mix(green), mix(blue));
}

/** Whether two colours that most people tell apart may look like one shade with that vision. @throws ColorError as `seenWith`. */
export function looksAlikeTo(vision: Vision, a: Oklab, b: Oklab): boolean {
  return (
    difference(finite(a), finite(b)) > CLOSE_SHADE &&
    difference(seenWith(vision, a), seenWith(vision, b)) <= SAME_SHADE
  );
}

/** The visions with which two colours that most people tell apart may look like one shade. @throws ColorError as `seenWith`. */
export function confusedWith(a: Oklab, b: Oklab): readonly Vision[] {
  return VISIONS.filter((vision) => looksAlikeTo(vision, a, b));
}

function difference(a: Oklab, b: Oklab): number {
  return deltaE2000({ lab: labFromOklab(a) }, { lab: labFromOklab(b) });
}
