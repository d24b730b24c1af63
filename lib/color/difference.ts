import type { Lab } from "./lab.ts";

const RADIAN = Math.PI / 180;
const POW_25_7 = 25 ** 7;

/** x⁷ / (x⁷ + 25⁷), square root: how far chroma x has left the achromatic region. */
function chromaWeight(chroma: number): number {
  const squared = chroma * chroma;
  const seventh = squared * squared * squared * chroma;
  return Math.sqrt(seventh / (seventh + POW_25_7));
}

function hueAngle(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const angle = Math.atan2(b, a);
  return angle < 0 ? angle + 2 * Math.PI : angle;
}

/**
 * CIEDE2000 of two CIELAB (D65) colours given as six numbers, so that a tight loop allocates nothing; kL = kC = kH = 1.
 * G. Sharma, W. Wu, E. N. Dalal, Color Research & Application 30(1), 2005. Symmetric to the last bit.
 */
export function ciede2000(l1: number, a1: number, b1: number, l2: number, a2: number, b2: number): number {
  const stretch =
    1 + 0.5 * (1 - chromaWeight((Math.sqrt(a1 * a1 + b1 * b1) + Math.sqrt(a2 * a2 + b2 * b2)) / 2));
  const redness1 = a1 * stretch;
  const redness2 = a2 * stretch;
  const chroma1 = Math.sqrt(redness1 * redness1 + b1 * b1);
  const chroma2 = Math.sqrt(redness2 * redness2 + b2 * b2);
  const hue1 = hueAngle(redness1, b1);
  const hue2 = hueAngle(redness2, b2);
  const achromatic = chroma1 * chroma2 === 0;

  let turn = achromatic ? 0 : hue2 - hue1;
  let hue = achromatic ? hue1 + hue2 : (hue1 + hue2) / 2;
  if (Math.abs(turn) > Math.PI) {
    turn += turn > 0 ? -2 * Math.PI : 2 * Math.PI;
    hue += hue < Math.PI ? Math.PI : -Math.PI;
  }

  const chroma = (chroma1 + chroma2) / 2;
  const fromMiddle = ((l1 + l2) / 2 - 50) ** 2;
  const t =
    1 -
    0.17 * Math.cos(hue - 30 * RADIAN) +
    0.24 * Math.cos(2 * hue) +
    0.32 * Math.cos(3 * hue + 6 * RADIAN) -
    0.2 * Math.cos(4 * hue - 63 * RADIAN);
  const lightnessPart = (l2 - l1) / (1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle));
  const chromaPart = (chroma2 - chroma1) / (1 + 0.045 * chroma);
  const huePart = (2 * Math.sqrt(chroma1 * chroma2) * Math.sin(turn / 2)) / (1 + 0.015 * chroma * t);
  const rotation =
    -2 * chromaWeight(chroma) * Math.sin(60 * RADIAN * Math.exp(-(((hue / RADIAN - 275) / 25) ** 2)));
  return Math.sqrt(
    Math.max(0, lightnessPart ** 2 + chromaPart ** 2 + huePart ** 2 + rotation * chromaPart * huePart),
  );
}

/** Most that the mean chroma C* grows by when a* is stretched, G·C*: 6.37, at C* = 16.6; and, as G ≤ 0.5, half of it. */
const CHROMA_GAIN = 6.4;

/** Most that the blues at 275° turn, as a sine; and what is left of it where no b* is negative, 95° or more away, rounded up. */
const ROTATED_MOST = Math.sin(60 * RADIAN);
const ROTATED_FAR_OFF = 1e-6;

/**
 * The square of a figure that CIEDE2000 (kL = kC = kH = 1) is never below, without its angles and cosines. `chroma1`, `chroma2`: C* of the
 * two. From the formula of Sharma, Wu & Dalal 2005: S_L ≤ 1 + 0.015·|L̄ − 50|; S_H ≤ S_C, as T ≤ 1.93 < 3; a* is only ever stretched,
 * so that ΔC′² + ΔH′² ≥ Δa*² + Δb*²; and the rotation term takes at most the share |R_T|/2 of what chroma and hue give.
 */
export function ciede2000SquaredAtLeast(
  l1: number,
  a1: number,
  b1: number,
  chroma1: number,
  l2: number,
  a2: number,
  b2: number,
  chroma2: number,
): number {
  const mean = (chroma1 + chroma2) / 2;
  const chroma = mean + Math.min(CHROMA_GAIN, mean / 2);
  const chromaUnit = 1 + 0.045 * chroma;
  const inPlane = ((a2 - a1) * (a2 - a1) + (b2 - b1) * (b2 - b1)) / (chromaUnit * chromaUnit);
  const rotated = b1 < 0 || b2 < 0 ? ROTATED_MOST * chromaWeight(chroma) : ROTATED_FAR_OFF;
  const lightness = (l2 - l1) / (1 + 0.015 * Math.abs((l1 + l2) / 2 - 50));
  return lightness * lightness + inPlane * (1 - rotated);
}

/** CIEDE2000 of two colours that carry their CIELAB (D65). */
export function deltaE2000(a: { readonly lab: Lab }, b: { readonly lab: Lab }): number {
  return ciede2000(a.lab[0], a.lab[1], a.lab[2], b.lab[0], b.lab[1], b.lab[2]);
}

/**
 * HyAB: lightness by its own, hue and chroma together; made for large differences.
 * S. Abasi, M. Amani Tehran, M. D. Fairchild, Color Research & Application 45(1), 2020 (online 2019).
 */
export function deltaHyab(a: { readonly lab: Lab }, b: { readonly lab: Lab }): number {
  return Math.abs(a.lab[0] - b.lab[0]) + Math.hypot(a.lab[1] - b.lab[1], a.lab[2] - b.lab[2]);
}

/**
 * CMC(2:1), the textile trade's acceptability figure (F. J. J. Clarke, R. McDonald, B. Rigg, J. Soc. Dyers Colour. 100, 1984;
 * ISO 105-J03). Not symmetric: the first colour is the standard that the second is held against.
 */
export function deltaCmc21(standard: { readonly lab: Lab }, sample: { readonly lab: Lab }): number {
  const [l1, a1, b1] = standard.lab;
  const [l2, a2, b2] = sample.lab;
  const chroma1 = Math.hypot(a1, b1);
  const chromaDifference = chroma1 - Math.hypot(a2, b2);
  const hueSquared = Math.max(0, (a1 - a2) ** 2 + (b1 - b2) ** 2 - chromaDifference ** 2);
  const hue = hueAngle(a1, b1) / RADIAN;
  const f = Math.sqrt(chroma1 ** 4 / (chroma1 ** 4 + 1900));
  const t =
    hue >= 164 && hue <= 345
      ? 0.56 + Math.abs(0.2 * Math.cos((hue + 168) * RADIAN))
      : 0.36 + Math.abs(0.4 * Math.cos((hue + 35) * RADIAN));
  const lightnessUnit = l1 < 16 ? 0.511 : (0.040975 * l1) / (1 + 0.01765 * l1);
  const chromaUnit = (0.0638 * chroma1) / (1 + 0.0131 * chroma1) + 0.638;
  const hueUnit = chromaUnit * (f * t + 1 - f);
  return Math.sqrt(
    ((l1 - l2) / (2 * lightnessUnit)) ** 2 + (chromaDifference / chromaUnit) ** 2 + hueSquared / hueUnit ** 2,
  );
}
