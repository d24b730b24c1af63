import type { ColorPoint } from "./color-point.ts";
import { deltaE2000 } from "./difference.ts";
import { hueRelationsNear } from "./hue-relation.ts";
import type { Relation } from "./relation-name.ts";
import { CLOSE_SHADE, HUE_CHROMA, NO_VISIBLE_DIFFERENCE, SAME_SHADE } from "./thresholds.ts";
import { AXIS_NOISE, atConfidence, pairError } from "./uncertainty.ts";
import { angleBetween } from "./wheel.ts";

/** How two colours stand to each other. */
export interface Relating {
  readonly relation: Relation;
  /** Other names that the uncertainty leaves open, likelier first; never `relation` itself. */
  readonly alternatives: readonly Relation[];
  /** Degrees between them on the artist's wheel, 0–180; null when one is neutral. */
  readonly wheelAngle: number | null;
  readonly deltaE2000: number;
  /** 90th percentile of the error of the wheel angle, in degrees; null when one is neutral. */
  readonly uncertainty: number | null;
}

const NO_OTHERS: readonly Relation[] = [];
const WITH_NEUTRAL: readonly Relation[] = ["with-neutral"];
const MATCHING: readonly Relation[] = ["matching"];

/**
 * The relation of two colours. Symmetric. Two colours within a shade of each other match whatever their hues; a neutral never gets a
 * hue relation, a tinted one only as an alternative.
 * @param confidence how sure the sampler is of them, 0–1; less widens the hedge.
 */
export function relate(a: ColorPoint, b: ColorPoint, confidence = 1): Relating {
  const difference = deltaE2000(a, b);
  const hues =
    a.wheel === null || b.wheel === null
      ? null
      : { angle: angleBetween(a.wheel, b.wheel), uncertainty: pairError(a, b, confidence) };
  const byHue: readonly Relation[] =
    hues === null
      ? WITH_NEUTRAL
      : withFaintness(
          a,
          b,
          hueRelationsNear(hues.angle, hues.uncertainty),
          atConfidence(AXIS_NOISE, confidence),
        );
  const names = withShade(byHue, difference);
  return {
    relation: names[0] ?? "none",
    alternatives: names.length > 1 ? names.slice(1) : NO_OTHERS,
    wheelAngle: hues?.angle ?? null,
    deltaE2000: difference,
    uncertainty: hues?.uncertainty ?? null,
  };
}

/** Puts "with-neutral" where one colour is, or within the noise may be, too faint for its hue to count. */
function withFaintness(
  a: ColorPoint,
  b: ColorPoint,
  names: readonly Relation[],
  noise: number,
): readonly Relation[] {
  const fainter = Math.min(a.chroma, b.chroma);
  if (a.tinted || b.tinted) {
    return fainter < HUE_CHROMA - noise ? WITH_NEUTRAL : ["with-neutral", ...names.slice(0, 1)];
  }
  return fainter < HUE_CHROMA + noise ? [...names, "with-neutral"] : names;
}

/** Puts "matching" where the difference in shade puts it. */
function withShade(names: readonly Relation[], difference: number): readonly Relation[] {
  if (difference <= NO_VISIBLE_DIFFERENCE) return MATCHING;
  if (difference <= SAME_SHADE) return ["matching", ...names];
  if (difference > CLOSE_SHADE) return names;
  return [...names.slice(0, 1), "matching", ...names.slice(1)];
}
