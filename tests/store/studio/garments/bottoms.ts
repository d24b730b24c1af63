import type { Stance } from "../body.ts";
import { type Knot, limb, mirrored, type Point, type Rib, sleeveOf } from "../outline.ts";
import { knots, points } from "../points.ts";
import type { Cloth } from "../recipe.ts";
import { buttons, type Garment, type Layer, panel, seam, stroke } from "../stage.ts";

/** A skirt's outline from the waist to its hem. */
export function skirtShape(
  top: number,
  waist: number,
  hip: number,
  hem: number,
  hemWidth: number,
  dip = 10,
): Point[] {
  return mirrored([
    [0, top + 3],
    [waist, top, 1],
    [hip, top + (500 - top) * 0.85],
    [(hip + hemWidth * 2) / 3, (top + hem * 2) / 3],
    [hemWidth, hem, 1],
    [hemWidth * 0.5, hem + dip * 0.75],
    [0, hem + dip],
  ]);
}

/** A waistband with a rounded edge. */
export const waistband = (cloth: Cloth, top: number, half: number, deep: number): Layer =>
  panel(
    mirrored([
      [0, top - deep + 3],
      [half, top - deep, 1],
      [half + 2.5, top + 1, 1],
      [0, top + 5],
    ]),
    cloth,
    { fall: "none", round: 5, shadow: 0.3, throw: 3, repeat: 0.7 },
  );

function skirt(
  cloth: Cloth,
  fall: "skirt" | "pleat" | "drape",
  hip: number,
  hem: number,
  hemWidth: number,
  deep = 1,
): Garment {
  return {
    below: [
      panel(skirtShape(378, 65, hip, hem, hemWidth), cloth, {
        fall,
        deep,
        round: 62,
        grain: { width: 130, y: 378 },
      }),
    ],
    over: [waistband(cloth, 380, 66, 20)],
  };
}

export const pleatedSkirt = (cloth: Cloth): Garment => skirt(cloth, "pleat", 98, 790, 150);
export const aLineSkirt = (cloth: Cloth): Garment => skirt(cloth, "skirt", 99, 745, 158);
export const pencilSkirt = (cloth: Cloth): Garment => skirt(cloth, "drape", 97, 722, 82, 0.7);

/** Half-widths of trouser legs at thigh, knee, calf and hem, beyond the body's own. */
interface Legs {
  readonly ease: readonly [number, number, number, number];
  readonly to: number;
}

/** A leg of cloth: the body's leg, widened, moved outward by what it gains so that the inner seams meet. */
function legRibs(leg: readonly Rib[], { ease, to }: Legs): Rib[] {
  const easeAt = (t: number): number => {
    const step = Math.min(2.999, t * 3);
    const [from, next] = [ease[Math.floor(step)] ?? 0, ease[Math.floor(step) + 1] ?? 0];
    return from + (next - from) * (step - Math.floor(step));
  };
  const ribs = sleeveOf(leg, 0, to, easeAt).map(
    ([x, y, r], i, all): Rib => [x + Math.sign(x) * easeAt(i / all.length) * 0.45, y, r],
  );
  const [x, , r] = ribs[0] ?? [0, 0, 0];
  return [[x * 0.92, 420, r - 16], [x * 0.97, 465, r - 5], ...ribs];
}

function trousers(cloth: Cloth, stance: Stance, legs: Legs, extra: readonly Layer[]): Garment {
  const seat = mirrored(knots("0,384 64,380! 82,430 93,490 92,540 60,568 0,560"));
  const [left, right] = [legRibs(stance.leftLeg, legs), legRibs(stance.rightLeg, legs)];
  const inner = right.map(([x, y, r]): Point => [x - r + 1.5, y]).filter(([x, y]) => y > 566 && x < 9);
  return {
    below: [
      panel(limb(left, "flat"), cloth, {
        and: [limb(right, "flat"), seat],
        fall: "leg",
        deep: 0.9,
        round: 34,
        shadow: 0.3,
        throw: 8,
        grain: { x: 0, y: 380 },
      }),
      seam(points("0,392 1.5,470 0,562")),
      seam(inner, 3),
      ...[1, -1].map((side) =>
        seam([
          [side * 62, 392],
          [side * 71, 436],
          [side * 83, 478],
        ]),
      ),
      ...extra,
    ],
    over: [waistband(cloth, 384, 66, 20), buttons([[0, 374]], "#6d6a66", 3.6)],
  };
}

export const wideTrousers = (cloth: Cloth, stance: Stance): Garment =>
  trousers(cloth, stance, { ease: [6, 17, 27, 40], to: 1 }, []);
export const straightTrousers = (cloth: Cloth, stance: Stance): Garment =>
  trousers(cloth, stance, { ease: [2, 10, 11, 21], to: 0.98 }, []);

export function jeans(cloth: Cloth, stance: Stance): Garment {
  const thread = "rgb(196 142 74 / 0.75)";
  const pocket = (side: 1 | -1): Layer =>
    stroke(
      (
        [
          [30, 388],
          [38, 416],
          [58, 428],
          [78, 426],
        ] as const
      ).map(([x, y]) => [side * x, y] as const),
      thread,
      1.4,
    );
  const fly: readonly Knot[] = points("12,390 13,450 2,482");
  return trousers(cloth, stance, { ease: [1, 7, 7, 18], to: 0.97 }, [
    pocket(1),
    pocket(-1),
    stroke(
      fly.map(([x, y]) => [x, y]),
      thread,
      1.3,
    ),
  ]);
}

export const shorts = (cloth: Cloth, stance: Stance): Garment =>
  trousers(cloth, stance, { ease: [2, 6, 8, 10], to: 0.4 }, []);
