import {
  converter,
  modeA98,
  modeHsl,
  modeHwb,
  modeLab,
  modeLch,
  modeLrgb,
  modeOklab,
  modeOklch,
  modeP3,
  modeProphoto,
  modeRec2020,
  modeRgb,
  modeXyz50,
  modeXyz65,
  parse,
  useMode,
} from "culori/fn";
import { ColorError } from "./color-error.ts";
import { inSrgb } from "./convert.ts";
import type { Oklab } from "./oklab.ts";

for (const mode of [
  modeRgb,
  modeHsl,
  modeHwb,
  modeLab,
  modeLch,
  modeOklab,
  modeOklch,
  modeLrgb,
  modeP3,
  modeA98,
  modeProphoto,
  modeRec2020,
  modeXyz50,
  modeXyz65,
]) {
  useMode(mode);
}
const toOklab = converter("oklab");

/** The parser also takes hex digits without their "#", so that the word "add" would be a colour; CSS does not. */
const BARE_HEX = /^[0-9a-f]{3,8}$/i;

/** Linear light, 0–1. A colour written with three or four decimals may leave sRGB by this much. */
const WRITTEN_SLACK = 2e-3;

/** A negative chroma is clamped by CSS; from a person it is a slip. */
const NEGATIVE_CHROMA = /^(?:ok)?lch\(\s*[^\s,]+[\s,]+-\s*(?!0*(?:\.0*)?(?:%|\s|\)))/i;

/**
 * The colour that a CSS Color 4 string means, any of its spaces and names.
 * @throws ColorError when it is no colour, is not opaque, has a negative chroma or lies outside sRGB.
 */
export function parseColor(css: string): Oklab {
  const text = css.trim();
  const shown = JSON.stringify(css.slice(0, 80));
  const parsed = BARE_HEX.test(text) ? undefined : parse(text);
  if (parsed === undefined) {
    throw new ColorError(
      `${shown} is no colour: write it as CSS does, such as "#e42833", "teal" or "oklch(60% 0.1 200)".`,
    );
  }
  if ((parsed.alpha ?? 1) < 1)
    throw new ColorError(`${shown} is see-through: cloth needs an opaque colour, without an alpha below 1.`);
  if (NEGATIVE_CHROMA.test(text)) throw new ColorError(`${shown} has a negative chroma: give 0 or more.`);
  const { l, a, b } = toOklab(parsed);
  const color: Oklab = [l, a, b];
  if (!color.every(Number.isFinite))
    throw new ColorError(`${shown} has a number that is not finite: give ordinary numbers.`);
  if (!inSrgb(color, WRITTEN_SLACK))
    throw new ColorError(
      `${shown} lies outside sRGB, which pictures on the web use: give a paler or less strong colour.`,
    );
  return color;
}
