import { onWheel, type Place } from "../on-wheel.ts";
import type { HungPiece } from "./hung-piece.ts";

/** Lengths in units of the drawing. */
export const WHEEL = {
  /** The band of hues. */
  ringInner: 105,
  ringOuter: 114,
  /** Dots lie between these, by chroma: with their middles outside the first, and all of them inside the second. */
  dotInner: 14,
  dotOuter: 91,
  /** The strip of neutrals below the wheel. */
  stripTop: 150,
  stripHeight: 38,
  stripHalf: 104,
} as const;

/**
 * OKLCH chroma drawn at the rim. Fabrics seldom pass 0.2 (P. Centore, JAIC 25, 2020: named fabric centroids reach about
 * 0.17); stronger screen colours share the rim.
 */
const RIM_CHROMA = 0.2;

/** Largest and smallest dot, and the room that all dots share between them. */
const DOT = { most: 6.5, least: 4, room: 42 } as const;

/** Two dots nearer than this many radii cover each other too much to be told apart. */
const APART = 1.7;

/** How far a dot may be moved inwards or outwards to be seen; its angle stays true. */
const NUDGE_STEPS = [0, 1, -1, 2, -2, 3, -3, 4, -4] as const;

export interface Dot extends Place {
  readonly hung: HungPiece;
}

/** Radius of each dot, by how many there are: a few may be large, hundreds must be small. */
export function dotRadius(count: number): number {
  return clamp(DOT.room / Math.sqrt(Math.max(1, count)), DOT.least, DOT.most);
}

/**
 * Where each piece's dot goes: hues by wheel angle and chroma, neutrals on the strip from black to white. A dot that
 * would lie on another moves along its radius (or up and down the strip) while there is room.
 */
export function placeDots(hung: readonly HungPiece[]): readonly Dot[] {
  const radius = dotRadius(hung.length);
  const apart = radius * APART;
  const placed = new Map<string, Place[]>();
  const cellOf = ({ x, y }: Place) => `${Math.floor(x / apart)},${Math.floor(y / apart)}`;
  const around = ({ x, y }: Place) =>
    [-apart, 0, apart].flatMap((dx) =>
      [-apart, 0, apart].flatMap((dy) => placed.get(cellOf({ x: x + dx, y: y + dy })) ?? []),
    );
  const room = (place: Place) => Math.min(apart, ...around(place).map((other) => distance(place, other)));
  return hung.map((one) => {
    const places = possiblePlaces(one, radius);
    const place = places.reduce((best, other) => (room(other) > room(best) ? other : best));
    placed.set(cellOf(place), [...(placed.get(cellOf(place)) ?? []), place]);
    return { hung: one, ...place };
  });
}

/** Where a dot may go, the true place first. */
function possiblePlaces({ point }: HungPiece, radius: number): readonly Place[] {
  const { wheel } = point;
  const nudges = NUDGE_STEPS.map((step) => step * radius * APART);
  if (wheel === null) {
    const x = (point.oklab[0] * 2 - 1) * (WHEEL.stripHalf - radius);
    const middle = WHEEL.stripTop + WHEEL.stripHeight / 2;
    const most = WHEEL.stripHeight / 2 - radius;
    return nudges.map((nudge) => ({ x, y: middle + clamp(nudge, -most, most) }));
  }
  // The root gives faint colours, of which closets are full, more room than strong ones.
  const out = Math.sqrt(Math.min(1, point.chroma / RIM_CHROMA));
  const outermost = WHEEL.dotOuter - radius;
  const middle = WHEEL.dotInner + (outermost - WHEEL.dotInner) * out;
  return nudges.map((nudge) => onWheel(wheel, clamp(middle + nudge, WHEEL.dotInner, outermost)));
}

/** The dot nearest to a place, no farther than `reach`; null where there is none. */
export function nearestDot(dots: readonly Dot[], place: Place, reach: number): Dot | null {
  let best: Dot | null = null;
  let bestDistance = reach;
  for (const dot of dots) {
    const away = distance(dot, place);
    if (away <= bestDistance) {
      best = dot;
      bestDistance = away;
    }
  }
  return best;
}

function distance(one: Place, other: Place): number {
  return Math.hypot(one.x - other.x, one.y - other.y);
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
