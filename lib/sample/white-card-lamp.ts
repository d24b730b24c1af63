import type { Light } from "./white-card-balance.ts";

/** Kelvin. The reddest light that counts as one: a dimmed bulb (common practice, no source). Redder, sRGB keeps almost no blue. */
const WARMEST = 2_500;
/** Kelvin. The bluest: as far as the formula below is valid. Open shade under a blue sky reaches it. */
const COOLEST = 15_000;
/** Steps of equal reciprocal temperature in which the range is walked: a step is at most 0.002 in u, v. */
const STEPS = 128;
/**
 * Distance in CIE 1960 u, v. White in a light nearer to a glowing body than this may be a lamp; farther off it is a colour. The CIE's daylights,
 * fluorescent lamps and white LEDs lie within 0.01 (CIE 15), and a camera's own balance adds its error: proposal, no source.
 */
const STRAYING = 0.02;

/** CIE 1960 u, v of a glowing body of `kelvin`, 1,000–15,000 (M. Krystek, Color Research & Application 10(1):38–40, 1985). */
function glowing(kelvin: number): readonly [u: number, v: number] {
  return [
    (0.860117757 + 1.54118254e-4 * kelvin + 1.28641212e-7 * kelvin ** 2) /
      (1 + 8.42420235e-4 * kelvin + 7.08145163e-7 * kelvin ** 2),
    (0.317398726 + 4.22806245e-5 * kelvin + 4.20481691e-8 * kelvin ** 2) /
      (1 - 2.89741816e-5 * kelvin + 1.61456053e-7 * kelvin ** 2),
  ];
}

const LOCUS = Array.from({ length: STEPS + 1 }, (_, step) =>
  glowing(1 / (1 / COOLEST + (step / STEPS) * (1 / WARMEST - 1 / COOLEST))),
);

/**
 * Whether white or grey can look like this in a usual light: near the colours of glowing bodies of 2,500 to 15,000 K, for a
 * camera balanced for daylight. Beige, tan and skin in daylight look just like white in lamp light: they pass, nothing can tell.
 */
export function couldBeLamp([r, g, b]: Light): boolean {
  // sRGB to XYZ: IEC 61966-2-1.
  const x = 0.4123907992659593 * r + 0.357584339383878 * g + 0.1804807884018343 * b;
  const y = 0.2126390058715102 * r + 0.715168678767756 * g + 0.0721923153607337 * b;
  const z = 0.0193308187155918 * r + 0.119194779794626 * g + 0.9505321522496607 * b;
  const sum = x + 15 * y + 3 * z;
  return LOCUS.some(([u, v]) => Math.hypot((4 * x) / sum - u, (6 * y) / sum - v) <= STRAYING);
}
