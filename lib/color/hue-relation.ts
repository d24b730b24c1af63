import { before, codeOf, NO_NAMES } from "./relation-code.ts";
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
  /** The name as a code (`relation-code.ts`). */
  readonly code: number;
}

function band(relation: HueRelation, from: number, to: number): Band {
  return {
    relation,
    from,
    to,
    inside: from === 0 ? -to : from,
    beyond: to === 180 ? 360 - from : to,
    code: codeOf(relation),
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
  return (BANDS[placeOf(angle)] ?? OPPOSITE).relation;
}

/** The place of the band of each whole angle 0–180: all edges are whole degrees. */
const PLACES = Uint8Array.from({ length: 181 }, (_, angle) => BANDS.findIndex(({ to }) => angle <= to));

function placeOf(angle: number): number {
  return PLACES[Math.ceil(angle)] ?? 0;
}

/**
 * The names within `uncertainty` degrees of the angle, likelier first: by how much of angle ± uncertainty lies in the
 * band. An angle below 0 or above 180 is its mirror image. At most `HUE_NAMES_AT_MOST`, the plain name always among them.
 * @returns the code of a list of names (`relation-code.ts`).
 */
export function hueNamesNear(angle: number, uncertainty: number): number {
  const place = placeOf(angle);
  const plain = BANDS[place] ?? OPPOSITE;
  const low = angle - uncertainty;
  const high = angle + uncertainty;
  const below = low < plain.inside;
  const above = high > plain.beyond;
  if (!below && !above) return plain.code;
  if (below && above) return rankedNames(plain, low, high);
  // Of two bands in all, the one that holds the angle holds at least half.
  const next = BANDS[below ? place - 1 : place + 1] ?? plain;
  const two = below ? low >= next.inside : high <= next.beyond;
  return two ? before(plain.code, next.code) : rankedNames(plain, low, high);
}

/** Codes and shares of the bands that are touched, widest share first; made once, for a tight loop must allocate nothing. */
const rankedCodes = new Uint8Array(BANDS.length);
const rankedShares = new Float64Array(BANDS.length);

/** The names of low…high by share; what has the same share stays in the order of the angles. */
function rankedNames(plain: Band, low: number, high: number): number {
  let count = 0;
  for (const { code, from, to } of BANDS) {
    const share = shareOf(from, to, low, high);
    if (share <= 0) continue;
    let rank = count;
    for (; rank > 0 && (rankedShares[rank - 1] ?? 0) < share; rank--) {
      rankedShares[rank] = rankedShares[rank - 1] ?? 0;
      rankedCodes[rank] = rankedCodes[rank - 1] ?? 0;
    }
    rankedShares[rank] = share;
    rankedCodes[rank] = code;
    count++;
  }
  const last = Math.min(count, HUE_NAMES_AT_MOST) - 1;
  if (rankedCodes.indexOf(plain.code) > last) rankedCodes[last] = plain.code;
  let names = NO_NAMES;
  for (let rank = last; rank >= 0; rank--) names = before(rankedCodes[rank] ?? NO_NAMES, names);
  return names;
}

/** Degrees of low…high that lie in a band or in its mirror images at 0 and at 180. */
function shareOf(from: number, to: number, low: number, high: number): number {
  let share = overlap(low, high, from, to);
  if (low < 0) share += overlap(low, high, -to, -from);
  if (high > 180) share += overlap(low, high, 360 - to, 360 - from);
  return share;
}

function overlap(low: number, high: number, from: number, to: number): number {
  return Math.max(0, Math.min(high, to) - Math.max(low, from));
}
