import { ciede2000, ciede2000SquaredAtLeast } from "./difference.ts";
import { namesOfPair } from "./names-of-pair.ts";
import type { PackedColors } from "./packed-colors.ts";
import { CLOSE_SHADE } from "./thresholds.ts";
import { AXIS_NOISE, atConfidence, between, jointError } from "./uncertainty.ts";
import { turnBetween } from "./wheel.ts";

/** Square of a CIEDE2000 that is beyond `CLOSE_SHADE` whatever the rounding. */
const FAR_SQUARED = (CLOSE_SHADE + 1e-6) ** 2;

/**
 * The names of one colour's relations to all of `others`, as `relate` gives them, without an object per pair. CIEDE2000 is worked out only
 * where it may be small enough to matter.
 * @param confidence how sure the sampler is of them, 0–1; less widens the hedge.
 * @param names takes one code of a list of names (`relation-code.ts`) per colour of `others`.
 */
export function relateToAll(
  colors: PackedColors,
  at: number,
  others: PackedColors,
  confidence: number,
  names: Uint32Array,
): void {
  const l = read(colors.labL, at);
  const a = read(colors.labA, at);
  const b = read(colors.labB, at);
  const labChroma = read(colors.labChroma, at);
  const wheel = read(colors.wheel, at);
  const chroma = read(colors.chroma, at);
  const error = between(read(colors.errorSure, at), read(colors.errorUnsure, at), confidence);
  const noise = atConfidence(AXIS_NOISE, confidence);
  for (let other = 0; other < others.count; other++) {
    const l2 = read(others.labL, other);
    const a2 = read(others.labA, other);
    const b2 = read(others.labB, other);
    const least = ciede2000SquaredAtLeast(l, a, b, labChroma, l2, a2, b2, read(others.labChroma, other));
    const itsError = between(read(others.errorSure, other), read(others.errorUnsure, other), confidence);
    names[other] = namesOfPair(
      turnBetween(wheel, read(others.wheel, other)),
      jointError(error, itsError),
      Math.min(chroma, read(others.chroma, other)),
      noise,
      least > FAR_SQUARED ? Number.POSITIVE_INFINITY : ciede2000(l, a, b, l2, a2, b2),
    );
  }
}

function read(numbers: Float64Array, place: number): number {
  return numbers[place] ?? Number.NaN;
}
