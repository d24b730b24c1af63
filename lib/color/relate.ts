import type { ColorPoint } from "./color-point.ts";
import { deltaE2000 } from "./difference.ts";
import { namesOfPair } from "./names-of-pair.ts";
import { othersOf, relationIn, relationsIn } from "./relation-code.ts";
import type { Relation } from "./relation-name.ts";
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

/**
 * The relation of two colours. Symmetric. Two colours within a shade of each other match whatever their hues; a neutral never gets a
 * hue relation, a tinted one only as an alternative. Of one colour to very many: `relateToAll`.
 * @param confidence how sure the sampler is of them, 0–1; less widens the hedge.
 */
export function relate(a: ColorPoint, b: ColorPoint, confidence = 1): Relating {
  const difference = deltaE2000(a, b);
  const wheelAngle = wheelAngleOf(a, b);
  const error = pairError(a, b, confidence);
  const names = namesOfPair(
    wheelAngle ?? Number.NaN,
    error,
    Math.min(a.chroma, b.chroma),
    atConfidence(AXIS_NOISE, confidence),
    difference,
  );
  return {
    relation: relationIn(names),
    alternatives: relationsIn(othersOf(names)),
    wheelAngle,
    deltaE2000: difference,
    uncertainty: wheelAngle === null ? null : error,
  };
}

/** Degrees between two colours on the artist's wheel, 0–180; null when one is neutral. */
export function wheelAngleOf(a: ColorPoint, b: ColorPoint): number | null {
  return a.wheel === null || b.wheel === null ? null : angleBetween(a.wheel, b.wheel);
}
