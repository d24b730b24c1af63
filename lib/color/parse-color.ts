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

/** OKLab L. What rounding may make of black; a part a little below zero leaves sRGB by far more, for the cube root is steep there. */
const DARKER_THAN_BLACK = -1e-3;

/** A negative chroma is clamped by CSS; from a person it is a slip. */
const NEGATIVE_CHROMA = /^(?:ok)?lch\(\s*[^\s,]+[\s,]+-\s*(?!0*(?:\.0*)?(?:%|\s|\)))/i;

/** A lightness that CSS clamps too: its number and whether it is a percentage, of lab() and lch() or of their ok- kin. */
const LIGHTNESS = /^(ok)?l(?:ab|ch)\(\s*([-+]?[\d.]+(?:e[-+]?\d+)?)(%?)/i;

function hasWrongLightness(text: string): boolean {
  const [, ok, number, percent] = LIGHTNESS.exec(text) ?? [];
  const lightness = Number(number ?? 0);
  return lightness < 0 || lightness > (ok && !percent ? 1 : 100);
}

/** What the parser makes of a text; undefined where it finds no colour, also where it stumbles ("/0A"). */
function parsedOf(text: string) {
  if (BARE_HEX.test(text)) return undefined;
  try {
    return parse(text);
  } catch {
    return undefined;
  }
}

/**
 * The colour that a CSS Color 4 string means, any of its spaces and names.
 * @throws ColorError when it is no colour, is not opaque, has a lightness or chroma that cannot be or lies outside sRGB.
 */
export function parseColor(css: string): Oklab {
  const text = css.trim();
  const shown = JSON.stringify(css.slice(0, 80));
  const parsed = parsedOf(text);
  if (parsed === undefined) {
    throw new ColorError(
      `${shown} is no colour: write it as CSS does, such as "#e42833", "teal" or "oklch(60% 0.1 200)".`,
    );
  }
  if ((parsed.alpha ?? 1) < 1)
    throw new ColorError(`${shown} is see-through: cloth needs an opaque colour, without an alpha below 1.`);
  if (NEGATIVE_CHROMA.test(text)) throw new ColorError(`${shown} has a negative chroma: give 0 or more.`);
  if (hasWrongLightness(text))
    throw new ColorError(`${shown} has a lightness that is none: give one from black (0) to white (100%).`);
  const { l, a, b } = toOklab(parsed);
  const color: Oklab = [l, a, b];
  if (!color.every(Number.isFinite))
    throw new ColorError(`${shown} has a number that is not finite: give ordinary numbers.`);
  if (l < DARKER_THAN_BLACK || !inSrgb(color, WRITTEN_SLACK))
    throw new ColorError(
      `${shown} lies outside sRGB, which pictures on the web use: give a paler or less strong colour.`,
    );
  return color;
}
