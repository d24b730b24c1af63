import { hueNamesNear } from "./hue-relation.ts";
import { before, codeOf, firstOf, followedBy, othersOf } from "./relation-code.ts";
import { CLOSE_SHADE, HUE_CHROMA, NO_VISIBLE_DIFFERENCE, SAME_SHADE } from "./thresholds.ts";

const WITH_NEUTRAL = codeOf("with-neutral");
const MATCHING = codeOf("matching");

/**
 * What two colours may be called, likelier first: the one decision behind every relation of a pair, in plain numbers so that a tight loop
 * can ask it.
 * @param angle degrees between them on the artist's wheel, 0–180; NaN where one is neutral.
 * @param uncertainty 90th percentile of the error of that angle, degrees.
 * @param fainter OKLCH chroma of the fainter one, and `noise` the standard deviation of each OKLab axis.
 * @param difference CIEDE2000; any figure above `CLOSE_SHADE` stands for every other.
 * @returns the code of a list of names (`relation-code.ts`).
 */
export function namesOfPair(
  angle: number,
  uncertainty: number,
  fainter: number,
  noise: number,
  difference: number,
): number {
  if (difference <= NO_VISIBLE_DIFFERENCE) return MATCHING;
  const names = Number.isNaN(angle)
    ? WITH_NEUTRAL
    : withFaintness(hueNamesNear(angle, uncertainty), fainter, noise);
  if (difference <= SAME_SHADE) return before(MATCHING, names);
  if (difference > CLOSE_SHADE) return names;
  return before(firstOf(names), before(MATCHING, othersOf(names)));
}

/** Puts "with-neutral" where one colour is tinted, or within the noise may be: then it is too faint for its hue to count. */
function withFaintness(names: number, fainter: number, noise: number): number {
  if (fainter < HUE_CHROMA - noise) return WITH_NEUTRAL;
  if (fainter < HUE_CHROMA) return before(WITH_NEUTRAL, firstOf(names));
  return fainter < HUE_CHROMA + noise ? followedBy(names, WITH_NEUTRAL) : names;
}
