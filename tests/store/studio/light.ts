/** A colour as amounts of light, 0–1 each (linear sRGB). */
export type Light = readonly [red: number, green: number, blue: number];

const LINEAR = Float32Array.from({ length: 256 }, (_, code) => {
  const c = code / 255;
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
});

/** From an sRGB code 0–255 to light (IEC 61966-2-1). */
export const lightOfCode = (code: number): number => LINEAR[code] ?? 0;

/** Steps of the table from light to code: fine enough for a tenth of a code in all but the deepest black. */
const STEPS = 8192;
const CODES = Float32Array.from({ length: STEPS + 1 }, (_, i) => {
  const light = i / STEPS;
  return 255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055);
});

/** From light to an sRGB code, unrounded, 0–255 (IEC 61966-2-1). */
export const codeOfLight = (light: number): number =>
  CODES[Math.round(Math.min(1, Math.max(0, light)) * STEPS)] ?? 0;

/** `#rrggbb` as light. */
export function lightOf(hex: string): Light {
  const code = Number.parseInt(hex.slice(1), 16);
  return [lightOfCode(code >> 16), lightOfCode((code >> 8) & 255), lightOfCode(code & 255)];
}

export const scaled = ([r, g, b]: Light, by: number): Light => [r * by, g * by, b * by];
export const mixed = (a: Light, b: Light, t: number): Light => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];
