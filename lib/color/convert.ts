import { ColorError } from "./color-error.ts";
import type { Oklab, Rgb8 } from "./oklab.ts";
import { encodedOf, linearOf } from "./srgb-curve.ts";

/** Linear-light value of each 8-bit sRGB value (IEC 61966-2-1). */
const LINEAR = Float64Array.from({ length: 256 }, (_, value) => linearOf(value / 255));

/**
 * OKLab of an 8-bit sRGB colour (B. Ottosson, 2020; matrices of CSS Color 4).
 * @throws ColorError when a part is no whole number 0–255.
 */
export function oklabFromRgb8(r: number, g: number, b: number): Oklab {
  const lr = LINEAR[r];
  const lg = LINEAR[g];
  const lb = LINEAR[b];
  if (lr === undefined || lg === undefined || lb === undefined) {
    throw new ColorError(`rgb ${r} ${g} ${b} is no 8-bit colour: give three whole numbers from 0 to 255.`);
  }
  return oklabFromLinear(lr, lg, lb);
}

/** OKLab of linear-light sRGB, 0–1 each. */
export function oklabFromLinear(lr: number, lg: number, lb: number): Oklab {
  const l = Math.cbrt(0.412221469470763 * lr + 0.5363325372617348 * lg + 0.0514459932675022 * lb);
  const m = Math.cbrt(0.2119034958178252 * lr + 0.6806995506452344 * lg + 0.1073969535369406 * lb);
  const s = Math.cbrt(0.0883024591900564 * lr + 0.2817188391361215 * lg + 0.6299787016738222 * lb);
  return [
    0.210454268309314 * l + 0.7936177747023054 * m - 0.0040720430116193 * s,
    1.9779985324311684 * l - 2.4285922420485799 * m + 0.450593709617411 * s,
    0.0259040424655478 * l + 0.7827717124575296 * m - 0.8086757549230774 * s,
  ];
}

/** Linear-light sRGB of an OKLab colour; parts leave 0–1 where the colour is outside sRGB. */
export function linearFromOklab(c: Oklab): readonly [r: number, g: number, b: number] {
  const [L, A, B] = c;
  const l = (L + 0.3963377773761749 * A + 0.2158037573099136 * B) ** 3;
  const m = (L - 0.1055613458156586 * A - 0.0638541728258133 * B) ** 3;
  const s = (L - 0.0894841775298119 * A - 1.2914855480194092 * B) ** 3;
  return [
    4.0767416360759574 * l - 3.3077115392580616 * m + 0.2309699031821044 * s,
    -1.2684379732850317 * l + 2.6097573492876887 * m - 0.3413193760026573 * s,
    -0.0041960761386756 * l - 0.7034186179359362 * m + 1.7076146940746117 * s,
  ];
}

/** Linear light, 0–1. As far as rounding carries a colour of sRGB out of it. */
const ROUNDING = 1e-4;

/** Whether sRGB can show the colour, give or take `slack` in linear light (0–1). */
export function inSrgb(c: Oklab, slack = ROUNDING): boolean {
  return linearFromOklab(c).every((part) => part >= -slack && part <= 1 + slack);
}

/**
 * Nearest 8-bit sRGB colour. What sRGB cannot show loses chroma at the same lightness and hue.
 * @throws ColorError when a part is not finite.
 */
export function rgb8FromOklab(c: Oklab): Rgb8 {
  const [r, g, b] = linearFromOklab(intoSrgb(finite(c)));
  return [byteOf(r), byteOf(g), byteOf(b)];
}

function byteOf(linear: number): number {
  return Math.round(encodedOf(Math.min(1, Math.max(0, linear))) * 255);
}

/** Halvings of the chroma search: leaves less than 1e-6 of the chroma, far below one 8-bit step. */
const GAMUT_STEPS = 20;

/** The colour itself, or what sRGB can show of it: less chroma at the same hue, lightness within 0–1. */
export function intoSrgb(c: Oklab): Oklab {
  const lightness = Math.min(1, Math.max(0, c[0]));
  const scaled = (part: number): Oklab => [lightness, c[1] * part, c[2] * part];
  if (inSrgb(scaled(1))) return scaled(1);
  let inside = 0;
  let outside = 1;
  for (let step = 0; step < GAMUT_STEPS; step++) {
    const middle = (inside + outside) / 2;
    if (inSrgb(scaled(middle))) inside = middle;
    else outside = middle;
  }
  return scaled(inside);
}

/** The colour as a CSS Color 4 function, exact enough to give every 8-bit colour back. @throws ColorError when a part is not finite. */
export function cssOf(c: Oklab): string {
  const [l, a, b] = finite(c);
  return `oklab(${decimal(l)} ${decimal(a)} ${decimal(b)})`;
}

/** Five decimals, without a negative zero or trailing zeros. */
function decimal(value: number): number {
  return Math.round(value * 1e5) / 1e5 + 0;
}

/** Distance from grey in OKLab, 0–0.4. */
export function chromaOf(c: Oklab): number {
  return Math.hypot(c[1], c[2]);
}

/** OKLCH hue in degrees, 0 ≤ h < 360; 0 for a colour without any chroma. */
export function hueOf(c: Oklab): number {
  const hue = (Math.atan2(c[2], c[1]) * 180) / Math.PI;
  return hue < 0 ? (hue + 360) % 360 : hue;
}

/** The colour itself. @throws ColorError when a part is not finite. */
export function finite(c: Oklab): Oklab {
  if (c.every(Number.isFinite)) return c;
  throw new ColorError(`oklab ${c.join(" ")} is no colour: all three numbers must be finite.`);
}
