export type Point = readonly [x: number, y: number];
/** A point that a smooth line runs through; with `1` it makes a corner there. */
export type Knot = readonly [x: number, y: number, corner?: 1];
/** A point of a limb's middle line with the limb's half-width there. */
export type Rib = readonly [x: number, y: number, radius: number];

const STEPS = 10;

/** Cubic Hermite between `a` and `b` with slopes `m` and `n`. */
const between = (a: number, b: number, m: number, n: number, t: number): number => {
  const [t2, t3] = [t * t, t * t * t];
  return (2 * t3 - 3 * t2 + 1) * a + (t3 - 2 * t2 + t) * m + (3 * t2 - 2 * t3) * b + (t3 - t2) * n;
};

/** The closed smooth line through the knots (Catmull and Rom, 1974), as a polygon. */
export function smooth(knots: readonly Knot[]): Point[] {
  const at = (i: number): Knot => knots[(i + knots.length) % knots.length] ?? [0, 0];
  return knots.flatMap((from, i) => {
    const [before, to, after] = [at(i - 1), at(i + 1), at(i + 2)];
    const slope = (axis: 0 | 1, start: boolean): number => {
      if (start) return from[2] ? to[axis] - from[axis] : (to[axis] - before[axis]) / 2;
      return to[2] ? to[axis] - from[axis] : (after[axis] - from[axis]) / 2;
    };
    return Array.from({ length: STEPS }, (_, step): Point => {
      const t = step / STEPS;
      return [
        between(from[0], to[0], slope(0, true), slope(0, false), t),
        between(from[1], to[1], slope(1, true), slope(1, false), t),
      ];
    });
  });
}

/** The same knots on the other side of the middle line x = 0. */
export const flipped = <T extends readonly [number, number, ...unknown[]]>(points: readonly T[]): T[] =>
  points.map((point) => [-point[0], ...point.slice(1)] as unknown as T);

/** A shape the same on both sides, from the knots of its right side, top to bottom. */
export function mirrored(right: readonly Knot[]): Point[] {
  const left = flipped(right)
    .reverse()
    .filter(([x]) => x !== 0);
  return smooth([...right, ...left]);
}

/** A limb's middle line, filled in smoothly with `steps` ribs between two given ones. */
export function spine(ribs: readonly Rib[], steps = 8): Rib[] {
  const at = (i: number): Rib => ribs[Math.min(ribs.length - 1, Math.max(0, i))] ?? [0, 0, 0];
  const dense = ribs.slice(0, -1).flatMap((_, i) => {
    const [p, a, b, n] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    const along = (axis: 0 | 1 | 2, t: number): number =>
      between(a[axis], b[axis], (b[axis] - p[axis]) / 2, (n[axis] - a[axis]) / 2, t);
    return Array.from({ length: steps }, (_, s): Rib => {
      const t = s / steps;
      return [along(0, t), along(1, t), along(2, t)];
    });
  });
  return [...dense, at(ribs.length - 1)];
}

/** Angles of the points of a round end, from one side to the other. */
const CAP = [1.2, 0.8, 0.4, 0, -0.4, -0.8, -1.2];

/** The outline of a limb. `ends`: round like skin, or cut flat like a sleeve. */
export function limb(ribs: readonly Rib[], ends: "round" | "flat"): Point[] {
  const line = spine(ribs);
  const side = (sign: 1 | -1): Point[] =>
    line.map(([x, y, r], i) => {
      const [ax, ay] = line[Math.max(0, i - 1)] ?? [x, y];
      const [bx, by] = line[Math.min(line.length - 1, i + 1)] ?? [x, y];
      const length = Math.hypot(bx - ax, by - ay) || 1;
      return [x + (sign * r * (ay - by)) / length, y + (sign * r * (bx - ax)) / length];
    });
  const [right, left] = [side(1), side(-1).reverse()];
  if (ends === "flat") return [...right, ...left];
  const cap = (rib: Rib | undefined, inner: Rib | undefined): Point[] => {
    if (!rib || !inner) return [];
    const [x, y, r] = rib;
    const heading = Math.atan2(y - inner[1], x - inner[0]);
    return CAP.map((turn): Point => [x + r * Math.cos(heading + turn), y + r * Math.sin(heading + turn)]);
  };
  return [...right, ...cap(line.at(-1), line.at(-2)), ...left, ...cap(line[0], line[1])];
}

/** The part of a limb from `from` to `to` (fractions of its length) and `ease` wider than the limb. */
export function sleeveOf(ribs: readonly Rib[], from: number, to: number, ease: (t: number) => number): Rib[] {
  const line = spine(ribs);
  const last = line.length - 1;
  return line
    .filter((_, i) => i >= from * last && i <= to * last)
    .map(([x, y, r], i, part) => [x, y, r + ease(i / Math.max(1, part.length - 1))]);
}
