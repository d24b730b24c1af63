import type { Stance } from "../body.ts";
import { type Knot, limb, mirrored, type Point, sleeveOf, smooth } from "../outline.ts";
import { points } from "../points.ts";
import type { Cloth } from "../recipe.ts";
import { type Layer, panel, seam } from "../stage.ts";

/** Necklines: the depth at the middle and the place of the shoulder seam's inner end. */
const NECKS = {
  crew: { deep: 176, x: 38, y: 157, corner: false },
  boat: { deep: 171, x: 60, y: 166, corner: false },
  scoop: { deep: 208, x: 50, y: 162, corner: false },
  v: { deep: 236, x: 42, y: 157, corner: true },
} as const;
export type Neck = keyof typeof NECKS;

/** The measures of a trunk, scene units. */
export interface Cut {
  readonly neck: Neck;
  /** Where the hem is, and its half-width. */
  readonly hem: number;
  readonly hemWidth: number;
  /** Half-width at the waist (y 366); the body has 62. */
  readonly waist: number;
  /** Room at chest and shoulder. */
  readonly ease: number;
}

const middle = (neck: Neck): Knot => {
  const { deep, corner } = NECKS[neck];
  return corner ? [0, deep, 1] : [0, deep];
};

/** The trunk of a garment with set-in sleeves or wide straps. */
export function bodice({ neck, hem, hemWidth, waist, ease }: Cut): Point[] {
  const { x, y, corner } = NECKS[neck];
  const hollow: readonly Knot[] = corner ? [] : [[x * 0.66, NECKS[neck].deep - 6]];
  return mirrored([
    middle(neck),
    ...hollow,
    [x, y, 1],
    [92 + ease * 0.5, 180, 1],
    [97 + ease, 214],
    [83 + ease, 254],
    [76 + ease, 300],
    [waist, 366],
    ...(hem > 460 ? [[(waist + hemWidth) / 2 + 4, 432] as const] : []),
    [hemWidth, hem, 1],
    [0, hem + 5],
  ]);
}

/** The inside of the back, seen through the neck of a garment that nobody wears. */
export const insideBack = (neck: Neck, cloth: Cloth): Layer => {
  const { x, y, deep } = NECKS[neck];
  return panel(
    mirrored([
      [0, y - 1],
      [x * 0.6, y - 2],
      [x + 2, y + 1, 1],
      [x * 0.8, (y + deep) / 2 + 8],
      [0, deep + 10],
    ]),
    cloth,
    { product: false, lit: 0.5, round: 8, shadow: 0, fall: "stiff" },
  );
};

/** The band along a neckline. */
export function neckBand(neck: Neck, cloth: Cloth, wide: number): Layer[] {
  const { x, y, deep, corner } = NECKS[neck];
  const edge = (grow: number): Knot[] => [
    corner ? [0, deep + grow * 1.5, 1] : [0, deep + grow],
    ...(corner ? [] : [[(x + grow) * 0.66, deep - 6 + grow * 0.7] as Knot]),
    [x + grow * 0.8, y + grow * 0.25, 1],
  ];
  const inner = edge(0);
  const outer = edge(wide);
  const outline = mirrored([...inner, ...outer.reverse()]);
  return [panel(outline, cloth, { fall: "none", round: 3, shadow: 0.25, throw: 2, repeat: 0.5 })];
}

/** Both sleeves, down to the fraction `to` of the arm. `ease` at shoulder and cuff. */
export function sleeves(
  cloth: Cloth,
  stance: Stance,
  to: number,
  ease: readonly [top: number, cuff: number],
  deep = 1,
): Layer[] {
  return [stance.leftArm, stance.rightArm].flatMap((arm) => {
    const line = sleeveOf(
      arm,
      0,
      to,
      (t) => (ease[0] + (ease[1] - ease[0]) * t) * Math.min(1, 0.25 + t * 2.5),
    );
    const [first, last] = [line[0] ?? [0, 0, 0], line.at(-1) ?? [0, 0, 0]];
    const angle = Math.atan2(last[1] - first[1], last[0] - first[0]) - Math.PI / 2;
    const head = [first[0] * 0.82, first[1] - 7, first[2] * 0.55] as const;
    return [
      panel(limb([head, ...line], "flat"), cloth, {
        fall: "tube",
        deep,
        round: 22,
        shadow: 0.3,
        throw: 7,
        grain: { x: first[0], y: first[1], angle },
      }),
    ];
  });
}

/** Ribbed cuffs at the end of long sleeves. */
export function cuffs(cloth: Cloth, stance: Stance, from: number, to: number, ease: number): Layer[] {
  return [stance.leftArm, stance.rightArm].map((arm) =>
    panel(
      limb(
        sleeveOf(arm, from, to, () => ease),
        "flat",
      ),
      cloth,
      { fall: "none", round: 9, shadow: 0.2, throw: 3 },
    ),
  );
}

/** The line of stitches a little above a hem. */
export const hemSeam = (half: number, y: number): Layer =>
  seam([
    [-half, y - 1],
    [0, y + 4],
    [half, y - 1],
  ]);

/** A folded collar: two leaves from the nape to the front. */
export function collar(cloth: Cloth, deep = 206): Layer[] {
  const leaf: readonly Knot[] = [
    [0, 184, 1],
    [24, 160],
    [36, 146, 1],
    [48, 158],
    [57, 186, 1],
    [30, deep, 1],
  ];
  return [leaf, leaf.map(([x, y, c]): Knot => (c ? [-x, y, c] : [-x, y]))].map((knots) =>
    panel(smooth(knots), cloth, { fall: "stiff", deep: 0.6, round: 4, shadow: 0.38, throw: 4, repeat: 0.8 }),
  );
}

/** The stand of a collar behind the neck. */
export const stand = (cloth: Cloth, lit = 0.6): Layer =>
  panel(mirrored(points("0,140 26,141 38,148 34,170 0,176")), cloth, {
    product: false,
    lit,
    fall: "none",
    round: 6,
    shadow: 0,
  });

/** Something plain to wear with the product. */
export const plain = (hex: string, weave: Cloth["weave"] = "smooth"): Cloth => ({
  weave,
  print: "plain",
  dyes: [hex],
});
