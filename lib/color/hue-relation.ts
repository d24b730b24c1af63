import type { Relation } from "./relation-name.ts";
import {
  ANALOGOUS_UP_TO,
  HUE_NAMES_AT_MOST,
  SAME_HUE_UP_TO,
  SPLIT_UP_TO,
  TRIADIC_UP_TO,
  UNNAMED_UP_TO,
} from "./thresholds.ts";

/** What two hues alone can be called: "monochromatic" stands for one hue, whatever the shades. */
export type HueRelation = Exclude<Relation, "matching" | "with-neutral">;

/** A stretch of the angle between two hues, in degrees; it holds its upper edge. */
interface Band {
  readonly relation: HueRelation;
  readonly from: number;
  readonly to: number;
  /** Its edges with the mirror image that continues it at 0 or at 180. */
  readonly inside: number;
  readonly beyond: number;
  /** The name by itself, made once. */
  readonly alone: readonly [HueRelation];
}

function band(relation: HueRelation, from: number, to: number): Band {
  return {
    relation,
    from,
    to,
    inside: from === 0 ? -to : from,
    beyond: to === 180 ? 360 - from : to,
    alone: [relation],
  };
}

const OPPOSITE = band("complementary", SPLIT_UP_TO, 180);

/** All bands of 0–180 degrees, without a gap. */
export const BANDS: readonly Band[] = [
  band("monochromatic", 0, SAME_HUE_UP_TO),
  band("analogous", SAME_HUE_UP_TO, ANALOGOUS_UP_TO),
  band("none", ANALOGOUS_UP_TO, UNNAMED_UP_TO),
  band("triadic", UNNAMED_UP_TO, TRIADIC_UP_TO),
  band("split-complementary", TRIADIC_UP_TO, SPLIT_UP_TO),
  OPPOSITE,
];

/** The one name of an angle between two hues on the artist's wheel (0–180 degrees), without any hedge. */
export function hueRelation(angle: number): HueRelation {
  return bandOf(angle).relation;
}

function bandOf(angle: number): Band {
  for (const band of BANDS) if (angle <= band.to) return band;
  return OPPOSITE;
}

/**
 * The names within `uncertainty` degrees of the angle, likelier first: by how much of angle ± uncertainty lies in the
 * band. An angle below 0 or above 180 is its mirror image. At most `HUE_NAMES_AT_MOST`, the plain name always among them.
 */
export function hueRelationsNear(angle: number, uncertainty: number): readonly HueRelation[] {
  const plain = bandOf(angle);
  const low = angle - uncertainty;
  const high = angle + uncertainty;
  if (low >= plain.inside && high <= plain.beyond) return plain.alone;
  const names: HueRelation[] = [];
  const shares: number[] = [];
  for (const one of BANDS) {
    const share = shareOf(one, low, high);
    if (share <= 0) continue;
    const place = shares.findIndex((other) => other < share);
    const at = place < 0 ? shares.length : place;
    names.splice(at, 0, one.relation);
    shares.splice(at, 0, share);
  }
  if (names.indexOf(plain.relation) >= HUE_NAMES_AT_MOST) names[HUE_NAMES_AT_MOST - 1] = plain.relation;
  return names.slice(0, HUE_NAMES_AT_MOST);
}

/** Degrees of low…high that lie in a band or in its mirror images at 0 and at 180. */
function shareOf({ from, to }: Band, low: number, high: number): number {
  return (
    overlap(low, high, from, to) + overlap(low, high, -to, -from) + overlap(low, high, 360 - to, 360 - from)
  );
}

function overlap(low: number, high: number, from: number, to: number): number {
  return Math.max(0, Math.min(high, to) - Math.max(low, from));
}
