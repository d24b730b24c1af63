import type { Stance } from "../body.ts";
import { flipped, type Knot, mirrored, smooth } from "../outline.ts";
import { knots } from "../points.ts";
import type { Cloth } from "../recipe.ts";
import { buttons, type Garment, type Layer, other, panel, seam, stroke } from "../stage.ts";
import { bodice, collar, cuffs, sleeves, stand } from "./bodice.ts";

/** One front of a jacket: `open` is how far its edge stands from the middle at the hem (negative laps over). */
function front(
  side: 1 | -1,
  hem: number,
  hemWidth: number,
  waist: number,
  open: number,
  breakAt: number,
): readonly Knot[] {
  const right: readonly Knot[] = [
    [40, 150, 1],
    [98, 178, 1],
    [104, 216],
    [91, 258],
    [84, 304],
    [waist, 372],
    ...(hem > 560 ? [[(waist + hemWidth) / 2 + 3, (372 + hem) / 2] as const] : []),
    [hemWidth, hem, 1],
    [open + 14, hem + 7],
    [open, hem - 2, 1],
    [open - 3, breakAt + 60],
    [open - 3, breakAt, 1],
  ];
  return side === 1 ? right : flipped(right);
}

/** The turned-back edge of a front, with its notch. */
function lapel(side: 1 | -1, breakAt: number, open: number): readonly Knot[] {
  const right: readonly Knot[] = [
    [40, 152, 1],
    [60, 196, 1],
    [50, 208, 1],
    [76, 226, 1],
    [58, breakAt - 60],
    [open - 3, breakAt, 1],
    [22, 226],
  ];
  return side === 1 ? right : flipped(right);
}

const lining = (hem: number, half: number): Layer =>
  other(
    mirrored([
      [0, 150],
      [42, 150],
      [80, 190],
      [66, 366],
      [half, hem - 6],
      [0, hem - 10],
    ]),
    "#5b5450",
    { weave: "satin", lit: 0.5, round: 20, shadow: 0 },
  );

const pocketAt = (y: number, x: number): Layer[] =>
  [1, -1].map((side) =>
    seam(
      [
        [side * x, y],
        [side * (x + 34), y - 4],
      ],
      3,
    ),
  );

/** A tailored front: lining, two fronts, lapels, collar, buttons, pockets. */
function tailored(
  cloth: Cloth,
  stance: Stance,
  hem: number,
  hemWidth: number,
  open: number,
  double: boolean,
): Garment {
  const breakAt = 352;
  const lap = double ? -26 : -6;
  const made = { deep: 0.75, round: 40, shadow: 0.36, throw: 8 } as const;
  const leaf = { fall: "stiff", deep: 0.5, round: 6, shadow: 0.42, throw: 5 } as const;
  const columns = double ? [-24, 26] : [3];
  const rows = hem > 700 ? [380, 450, 520] : [372, 424];
  return {
    behind: [lining(hem, hemWidth - 16), stand(cloth)],
    trunk: [
      panel(smooth(front(1, hem, hemWidth, 80, open, breakAt)), cloth, made),
      panel(smooth(front(-1, hem, hemWidth, 80, lap, breakAt)), cloth, made),
      panel(smooth(lapel(1, breakAt, open)), cloth, leaf),
      panel(smooth(lapel(-1, breakAt, lap)), cloth, leaf),
      ...pocketAt(hem > 700 ? 520 : 478, 44),
      buttons(
        columns.flatMap((x) => rows.map((y) => [x, y] as const)),
        "#3a2d25",
        5.6,
      ),
    ],
    arms: sleeves(cloth, stance, 0.98, [12, 12], 0.9),
  };
}

export const blazer = (cloth: Cloth, stance: Stance): Garment => tailored(cloth, stance, 572, 104, 4, true);
export const coat = (cloth: Cloth, stance: Stance): Garment => tailored(cloth, stance, 812, 124, 4, true);

export function jacket(cloth: Cloth, stance: Stance): Garment {
  const denim = cloth.weave === "denim";
  const hem = denim ? 452 : 556;
  const stitch = denim ? "rgb(205 150 80 / 0.8)" : "rgb(0 0 0 / 0.4)";
  const flap = (side: 1 | -1, y: number): Layer[] => {
    const box: readonly Knot[] = [
      [24, y, 1],
      [72, y - 3, 1],
      [73, y + 15, 1],
      [48, y + 24, 1],
      [24, y + 17, 1],
    ];
    return [
      panel(smooth(side === 1 ? box : flipped(box)), cloth, {
        fall: "stiff",
        deep: 0.4,
        round: 3,
        shadow: 0.4,
        throw: 3,
      }),
      buttons([[side * 48, y + 13]], "#a88a5a", 3),
    ];
  };
  const line = (points: readonly (readonly [number, number])[]): Layer[] => [
    stroke(points, stitch, 1.3),
    stroke(flipped(points), stitch, 1.3),
  ];
  return {
    behind: [stand(cloth, 0.55)],
    trunk: [
      panel(bodice({ neck: "v", hem, hemWidth: denim ? 86 : 102, waist: denim ? 82 : 88, ease: 8 }), cloth, {
        fall: "stiff",
        deep: 1.6,
        round: 44,
        shadow: 0.36,
        throw: 8,
      }),
      ...line([
        [14, 222],
        [16, hem],
      ]),
      ...line([
        [18, 252],
        [86, 246],
      ]),
      ...(denim
        ? line([
            [40, 280],
            [26, hem - 20],
          ])
        : []),
      ...flap(1, 258),
      ...flap(-1, 258),
      ...(denim ? [] : [...flap(1, 440), ...flap(-1, 440)]),
      buttons(
        Array.from({ length: Math.floor((hem - 240) / 46) }, (_, i) => [0, 250 + i * 46] as const),
        "#a88a5a",
        4.4,
      ),
      ...line([
        [0, hem - 24],
        [84, hem - 28],
      ]),
      ...collar(cloth, 220),
    ],
    arms: [...sleeves(cloth, stance, 0.95, [11, 12]), ...cuffs(cloth, stance, 0.86, 0.98, 10)],
  };
}

export function cardigan(cloth: Cloth, stance: Stance): Garment {
  const band = (side: 1 | -1): Layer => {
    const right: readonly Knot[] = knots("38,152! 50,156! 22,250 11,300 11,520! -4,520! -4,300 8,246");
    return panel(smooth(side === 1 ? right : flipped(right)), cloth, {
      fall: "none",
      round: 4,
      shadow: 0.3,
      throw: 3,
    });
  };
  const welt = mirrored(knots("0,506 94,500! 90,532! 0,536"));
  return {
    behind: [stand(cloth, 0.55)],
    trunk: [
      panel(bodice({ neck: "v", hem: 512, hemWidth: 95, waist: 82, ease: 6 }), cloth, { round: 44 }),
      panel(welt, cloth, { fall: "none", round: 7, shadow: 0.2, throw: 3 }),
      band(1),
      band(-1),
      buttons(
        Array.from({ length: 6 }, (_, i) => [2, 282 + i * 44] as const),
        "#e8e1d0",
        4.6,
      ),
    ],
    arms: [...sleeves(cloth, stance, 0.93, [9, 10]), ...cuffs(cloth, stance, 0.9, 1, 7)],
  };
}
