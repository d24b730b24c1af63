import { converter, differenceCiede2000 } from "culori";
import type { Oklab } from "../../lib/color/oklab.ts";
import type { Swatch } from "../../lib/sample/palette.ts";
import type { Slot } from "../../lib/words/slot.ts";

/*
 * The whole comparison once more, slow and plain, from culori's colour spaces and CIEDE2000 and from the knots and bands that
 * lib/color states; written for tests only.
 */
const KNOTS = [
  [26, 0],
  [37, 30],
  [54, 60],
  [77, 90],
  [100, 120],
  [124, 150],
  [148, 180],
  [194, 210],
  [256, 240],
  [280, 270],
  [311, 300],
  [346, 330],
  [386, 360],
] as const;

/** What is worn with what, written out (common practice, no source). */
const NOT_WITH: Readonly<Record<Slot, readonly Slot[]>> = {
  top: ["top", "one-piece"],
  bottom: ["bottom", "one-piece"],
  "one-piece": ["one-piece", "top", "bottom"],
  layer: ["layer"],
  legwear: ["legwear"],
  shoes: ["shoes"],
  bag: ["bag"],
  headwear: ["headwear"],
  jewellery: [],
  accessory: [],
};

const toLab = converter("lab65");
const toOklch = converter("oklch");
const difference = differenceCiede2000();

const culoriOf = ([l, a, b]: Oklab) => ({ mode: "oklab" as const, l, a, b });
/** CIEDE2000 by culori. */
export const deltaE = (one: Swatch, other: Swatch) =>
  difference(toLab(culoriOf(one.oklab)), toLab(culoriOf(other.oklab)));

/** Angle on the artist's wheel; null for a neutral. The colours of this test are clearly the one or the other. */
export function wheelOf({ oklab }: Swatch): number | null {
  const { c, h = 0 } = toOklch(culoriOf(oklab));
  return c < 0.02 ? null : wheelAt(h);
}

/** Angle on the artist's wheel of an OKLCH hue, both 0–360. */
export function wheelAt(h: number): number {
  const hue = h < 26 ? h + 360 : h;
  for (const [at, [from, start]] of KNOTS.entries()) {
    const next = KNOTS[at + 1];
    if (next && hue >= from && hue <= next[0]) {
      return (start + ((hue - from) * (next[1] - start)) / (next[0] - from)) % 360;
    }
  }
  throw new Error(`no knot for ${hue}`);
}

/** Angle between two places on the wheel, 0–180. */
export function apart(one: number, other: number): number {
  const turn = Math.abs(one - other) % 360;
  return Math.min(turn, 360 - turn);
}

/** The name of an angle, by the bands alone. */
export function bandOf(angle: number): string {
  if (angle <= 15) return "monochromatic";
  if (angle <= 75) return "analogous";
  if (angle <= 100) return "none";
  if (angle <= 140) return "triadic";
  return angle <= 160 ? "split-complementary" : "complementary";
}

/** The plain name of two colours, without any hedge. */
export function relationOf(one: Swatch, other: Swatch): string {
  if (deltaE(one, other) <= 6) return "matching";
  const [angle, otherAngle] = [wheelOf(one), wheelOf(other)];
  return angle === null || otherAngle === null ? "with-neutral" : bandOf(apart(angle, otherAngle));
}

/** The swatches that count: the first, and those of 15 % or more. */
export const shownOf = (swatches: readonly Swatch[]) =>
  swatches.filter(({ share }, at) => at === 0 || share >= 0.15);

/** Least difference of a swatch to any of a piece; the worst of all, both ways. */
export function pieceDifference(one: readonly Swatch[], other: readonly Swatch[]): number {
  const least = (swatch: Swatch, among: readonly Swatch[]) =>
    Math.min(...among.map((x) => deltaE(swatch, x)));
  return Math.max(...one.map((swatch) => least(swatch, other)), ...other.map((swatch) => least(swatch, one)));
}

/** Whether two pieces are worn at once; a slot that is not known may be. */
export const wornWith = (slot: Slot | null, other: Slot) => slot === null || !NOT_WITH[slot].includes(other);
