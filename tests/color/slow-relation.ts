import { converter, differenceCiede2000, type Lab65, type Oklab as OklabObject } from "culori";
import type { ByConfidence } from "../../lib/color/uncertainty.ts";
import { apart, bandOf, wheelAt } from "../fit/slow-comparison.ts";

/*
 * The whole decision about two colours once more, slow and plain: culori's objects, colour spaces and CIEDE2000, and the knots, bands
 * and limits that lib/color states; the reference for tests and the loop that the bench measures against.
 */
const toLab = converter("lab65");
const toOklch = converter("oklch");
const difference = differenceCiede2000();

/** Parts of 0–180 degrees by name, in order. */
const BANDS = [
  [0, 15, "monochromatic"],
  [15, 75, "analogous"],
  [75, 100, "none"],
  [100, 140, "triadic"],
  [140, 160, "split-complementary"],
  [160, 180, "complementary"],
] as const;

/** A colour with all that two of them are compared by. */
export interface SlowColor {
  readonly lab: Lab65;
  readonly chroma: number;
  /** Null for a neutral. */
  readonly wheel: number | null;
  readonly error: ByConfidence;
}

/** What a relation of two colours is decided from. */
export interface SlowFigures {
  readonly angle: number | null;
  readonly uncertainty: number;
  readonly fainter: number;
  readonly noise: number;
  readonly difference: number;
}

export function slowColor(color: OklabObject): SlowColor {
  const { l, c, h = 0 } = toOklch(color);
  const neutral = l < 0.14 || c < (l < 0.25 || l > 0.93 ? 0.03 : 0.02);
  const errorAt = (noise: number) => {
    const off = (Math.atan2(1.6449 * noise, c) * 180) / Math.PI;
    return turn(wheelAt(turn(h + off)) - wheelAt(turn(h - off))) / 2;
  };
  return {
    lab: toLab(color),
    chroma: c,
    wheel: neutral ? null : wheelAt(h),
    error: { sure: errorAt(0.01), unsure: errorAt(0.02) },
  };
}

const turn = (angle: number) => ((angle % 360) + 360) % 360;

/** @param confidence 0–1. */
export function slowFigures(one: SlowColor, other: SlowColor, confidence: number): SlowFigures {
  const at = ({ sure, unsure }: ByConfidence) => sure * confidence + unsure * (1 - confidence);
  return {
    angle: one.wheel === null || other.wheel === null ? null : apart(one.wheel, other.wheel),
    uncertainty: Math.min(180, Math.max(10, Math.hypot(at(one.error), at(other.error)))),
    fainter: Math.min(one.chroma, other.chroma),
    noise: at({ sure: 0.01, unsure: 0.02 }),
    difference: difference(one.lab, other.lab),
  };
}

/** The relation and then its alternatives, likelier first. */
export function slowNames({
  angle,
  uncertainty,
  fainter,
  noise,
  difference,
}: SlowFigures): readonly string[] {
  if (difference <= 3) return ["matching"];
  const names = angle === null ? ["with-neutral"] : namesByHue(angle, uncertainty, fainter, noise);
  if (difference <= 6) return ["matching", ...names];
  return difference <= 10 ? names.toSpliced(1, 0, "matching") : names;
}

/** How far culori's matrices, rounded otherwise than ours, may move CIEDE2000; and arithmetic an angle (degrees) or a chroma. */
const DIFFERENCE_SLACK = 1e-4;
const SLACK = 1e-9;

/** The names, joined by commas, of these figures and of all that rounding may have made of them. */
export function roundedNames(figures: SlowFigures): ReadonlySet<string> {
  const shifts = [-1, 0, 1];
  return new Set(
    shifts.flatMap((shift) =>
      shifts.flatMap((turn) =>
        shifts.map((fade) =>
          slowNames({
            ...figures,
            angle: figures.angle === null ? null : figures.angle + turn * SLACK,
            difference: figures.difference + shift * DIFFERENCE_SLACK,
            fainter: figures.fainter + fade * SLACK,
          }).join(),
        ),
      ),
    ),
  );
}

function namesByHue(angle: number, uncertainty: number, fainter: number, noise: number): readonly string[] {
  if (fainter < 0.035 - noise) return ["with-neutral"];
  const names = hueNames(angle, uncertainty);
  if (fainter < 0.035) return ["with-neutral", ...names.slice(0, 1)];
  return fainter < 0.035 + noise ? [...names, "with-neutral"] : names;
}

function hueNames(angle: number, uncertainty: number): readonly string[] {
  const [low, high] = [angle - uncertainty, angle + uncertainty];
  const share = (from: number, to: number) => Math.max(0, Math.min(high, to) - Math.max(low, from));
  const names = BANDS.map(([from, to, name]) => ({
    name,
    width: share(from, to) + share(-to, -from) + share(360 - to, 360 - from),
  }))
    .filter(({ width }) => width > 0)
    .sort((a, b) => b.width - a.width)
    .map(({ name }) => name as string);
  const shown = names.slice(0, 3);
  return shown.includes(bandOf(angle)) ? shown : [...shown.slice(0, 2), bandOf(angle)];
}
