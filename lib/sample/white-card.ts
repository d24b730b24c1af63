import { linearOf } from "../color/srgb-curve.ts";
import type { Photo } from "./photo.ts";
import { CLIPPED, type Light, type WhiteCardGains } from "./white-card-balance.ts";
import { couldBeLamp } from "./white-card-lamp.ts";

/** Why a spot cannot serve. */
export type WhiteCardFault = "empty" | "clipped" | "dark" | "uneven" | "coloured";

/** What a spot says of the light, or why it says nothing, with a sentence that says what to do. */
export type WhiteCardReading =
  | { readonly gains: WhiteCardGains }
  | { readonly fault: WhiteCardFault; readonly message: string };

/** Of the shorter side. Radius of the disc that is read: one pixel is noise, and a button or a label should still hold it. Layout choice. */
export const SPOT_RADIUS = 0.01;
/** Pixels. Least radius, so that a small picture still gives several. */
const LEAST_RADIUS = 1.5;
/** Part of the disc's pixels that may be clipped: dust and glints. */
const FEW = 0.05;
/** Part of the pixels left out at the dark and at the light end, for the same reason. */
const TRIMMED = 0.1;
/** Linear light. Darker is mostly noise: one step of 8 bits is 4 % of its light (8-bit 60). Proposal. */
const DARK = 0.045;
/** Linear light. A channel with less gives too few steps to bring its colours back (8-bit 28: 8 % a step). Proposal. */
const FAINT = 0.012;
/** Relative standard deviation of a channel's part of the light. More is an edge, a pattern or two lights: white beside beige has 0.2. */
const UNEVEN = 0.12;
/** Weights of linear sRGB in luminance (IEC 61966-2-1). */
const LUMINANCE: Light = [0.2126, 0.7152, 0.0722];

const MESSAGES: Readonly<Record<WhiteCardFault, string>> = {
  empty: "There is no picture at this spot. Point inside it.",
  clipped:
    "This spot is so bright that the camera lost its colour. Point at a shaded part of it, or at something grey.",
  dark: "This spot is too dark to show the light. Point at something lighter.",
  uneven: "More than one colour meets at this spot. Point at the middle of a plain white or grey area.",
  coloured:
    "This spot is too strongly coloured to be white or grey in a usual light. Point at something that is white or grey by daylight.",
};

/**
 * Reads the light from something white or grey in a photo: the gains that make the spot neutral at the luminance it has.
 * Keeping the luminance keeps the photo as light as the camera exposed it, cuts nothing off that is no brighter than the spot, and claims
 * nothing about how light the thing is: a person who points at grey does not say which grey.
 * @param x 0–1 from the left. @param y 0–1 from the top.
 * @throws RangeError when the point or the sizes are outside the picture.
 */
export function readWhiteCard(picture: Photo, x: number, y: number): WhiteCardReading {
  const spot = spotOf(picture, x, y);
  if (spot.length === 0) return unfit("empty");
  const clipped = spot.filter((pixel) => pixel.some((value) => value >= CLIPPED)).length;
  if (clipped > FEW * spot.length) return unfit("clipped");
  const kept = trimmed(
    spot.map(([r, g, b]): Light => [linearOf(r / 255), linearOf(g / 255), linearOf(b / 255)]),
  );
  const mean = kept
    .reduce<Light>(([r, g, b], light) => [r + light[0], g + light[1], b + light[2]], [0, 0, 0])
    .map((sum) => sum / kept.length) as [number, number, number];
  const luminance = luminanceOf(mean);
  if (luminance < DARK) return unfit("dark");
  if (unevenness(kept) > UNEVEN) return unfit("uneven");
  if (Math.min(...mean) < FAINT || !couldBeLamp(mean)) return unfit("coloured");
  return { gains: [luminance / mean[0], luminance / mean[1], luminance / mean[2]] };
}

const unfit = (fault: WhiteCardFault): WhiteCardReading => ({ fault, message: MESSAGES[fault] });

type Pixel = readonly [r: number, g: number, b: number];

/** The opaque pixels around a point. */
function spotOf({ data, width, height }: Photo, x: number, y: number): Pixel[] {
  if (!(width > 0 && height > 0) || data.length !== width * height * 4)
    throw new RangeError(`${width} × ${height} pixels are not what the data hold.`);
  if (!(x >= 0 && x <= 1 && y >= 0 && y <= 1)) throw new RangeError("The point is outside the picture.");
  const radius = Math.max(LEAST_RADIUS, SPOT_RADIUS * Math.min(width, height));
  const spot: Pixel[] = [];
  for (let row = Math.max(0, Math.floor(y * height - radius)); row < height; row++) {
    if (row + 0.5 - y * height > radius) break;
    for (let column = Math.max(0, Math.floor(x * width - radius)); column < width; column++) {
      if (column + 0.5 - x * width > radius) break;
      if (Math.hypot(column + 0.5 - x * width, row + 0.5 - y * height) > radius) continue;
      const [r = 0, g = 0, b = 0, alpha] = data.subarray(4 * (row * width + column));
      if (alpha === 255) spot.push([r, g, b]);
    }
  }
  return spot;
}

const luminanceOf = (light: Light): number =>
  light.reduce((sum, part, channel) => sum + part * (LUMINANCE[channel] ?? 0), 0);

/** Without the darkest and the lightest. */
function trimmed(lights: readonly Light[]): readonly Light[] {
  const out = Math.floor(TRIMMED * lights.length);
  return lights
    .toSorted((one, other) => luminanceOf(one) - luminanceOf(other))
    .slice(out, lights.length - out);
}

/** How much the colour of the light changes over the spot; folds and shades of one white change its brightness alone. */
function unevenness(lights: readonly Light[]): number {
  const parts = lights.map((light) => {
    const sum = light[0] + light[1] + light[2] || 1;
    return light.map((part) => part / sum);
  });
  return Math.max(...[0, 1, 2].map((channel) => relativeSpread(parts.map((part) => part[channel] ?? 0))));
}

function relativeSpread(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length;
  return mean > 0 ? Math.sqrt(variance) / mean : 0;
}
