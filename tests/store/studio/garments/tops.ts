import type { Stance } from "../body.ts";
import { limb, mirrored } from "../outline.ts";
import { knots, points, ribs } from "../points.ts";
import type { Cloth } from "../recipe.ts";
import { buttons, type Garment, type Layer, panel, seam } from "../stage.ts";
import { bodice, collar, cuffs, hemSeam, insideBack, neckBand, sleeves, stand } from "./bodice.ts";

export function tee(cloth: Cloth, stance: Stance): Garment {
  return {
    behind: [insideBack("crew", cloth)],
    trunk: [
      panel(bodice({ neck: "crew", hem: 500, hemWidth: 90, waist: 76, ease: 3 }), cloth),
      ...neckBand("crew", cloth, 9),
      hemSeam(86, 490),
    ],
    arms: sleeves(cloth, stance, 0.32, [7, 14]),
  };
}

export function longsleeve(cloth: Cloth, stance: Stance): Garment {
  return {
    behind: [insideBack("boat", cloth)],
    trunk: [
      panel(bodice({ neck: "boat", hem: 500, hemWidth: 88, waist: 74, ease: 2 }), cloth),
      ...neckBand("boat", cloth, 6),
      hemSeam(84, 491),
    ],
    arms: sleeves(cloth, stance, 0.96, [5, 6]),
  };
}

export function jumper(cloth: Cloth, stance: Stance): Garment {
  const welt = mirrored(knots("0,478 92,470! 84,508! 0,514"));
  const cable = (x: number, left: boolean): Layer =>
    seam(
      Array.from(
        { length: 110 },
        (_, i) => [x + (left ? 6 : -6) * Math.sin(i * 0.38), 205 + i * 2.5] as const,
      ),
      3,
    );
  return {
    behind: [insideBack("crew", cloth)],
    trunk: [
      panel(bodice({ neck: "crew", hem: 480, hemWidth: 98, waist: 88, ease: 10 }), cloth, { round: 46 }),
      ...[-50, -40, -5, 5, 40, 50].map((x, i) => cable(x, i % 2 === 0)),
      panel(welt, cloth, { fall: "none", round: 8, shadow: 0.2, throw: 3 }),
      ...neckBand("crew", cloth, 17),
    ],
    arms: [...sleeves(cloth, stance, 0.92, [14, 15]), ...cuffs(cloth, stance, 0.9, 1, 8)],
  };
}

export function rollneck(cloth: Cloth, stance: Stance): Garment {
  const roll = limb(ribs("0,122,34 0,142,36 0,180,47"), "flat");
  return {
    trunk: [panel(bodice({ neck: "crew", hem: 496, hemWidth: 86, waist: 70, ease: 3 }), cloth)],
    over: [
      panel(roll, cloth, { fall: "stiff", round: 12, shadow: 0.35, throw: 5 }),
      seam(points("-37,146 0,152 37,146")),
    ],
    arms: sleeves(cloth, stance, 1, [5, 5]),
  };
}

/** A placket with buttons down the front. */
export const placket = (from: number, to: number, color: string): Layer[] => [
  seam([
    [11, from],
    [12, to],
  ]),
  seam(
    [
      [-10, from],
      [-9, to],
    ],
    1,
  ),
  buttons(
    Array.from({ length: Math.floor((to - from) / 42) }, (_, i) => [1, from + 20 + i * 42] as const),
    color,
    3.4,
  ),
];

export function shirt(cloth: Cloth, stance: Stance): Garment {
  return {
    behind: [stand(cloth)],
    trunk: [
      panel(bodice({ neck: "v", hem: 520, hemWidth: 92, waist: 82, ease: 5 }), cloth, { deep: 0.9 }),
      ...placket(206, 516, "#f4f2ee"),
      ...collar(cloth, 214),
    ],
    arms: [...sleeves(cloth, stance, 0.94, [8, 10]), ...cuffs(cloth, stance, 0.9, 1, 7)],
  };
}

export function blouse(cloth: Cloth, stance: Stance): Garment {
  const bow = (side: 1 | -1): Layer =>
    panel(
      limb(
        [
          [0, 196, 7],
          [side * 16, 232, 12],
          [side * 24, 292, 15],
          [side * 22, 330, 17],
        ],
        "flat",
      ),
      cloth,
      { fall: "drape", round: 6, shadow: 0.35, throw: 5, repeat: 0.8 },
    );
  return {
    behind: [insideBack("v", cloth)],
    trunk: [
      panel(bodice({ neck: "v", hem: 506, hemWidth: 94, waist: 84, ease: 7 }), cloth, { deep: 1.2 }),
      ...neckBand("v", cloth, 7),
      bow(-1),
      bow(1),
    ],
    arms: [...sleeves(cloth, stance, 0.9, [14, 24], 1.3), ...cuffs(cloth, stance, 0.84, 0.98, 8)],
  };
}

/** A sleeveless top cut low under the arms. */
const strappy = (deep: number, wide: number, hem: number) =>
  mirrored([
    [0, deep],
    [wide * 0.7, deep - 10],
    [wide - 6, 166, 1],
    [wide + 16, 168, 1],
    [wide + 20, 214],
    [82, 256, 1],
    [75, 300],
    [66, 366],
    [80, 440],
    [88, hem, 1],
    [0, hem + 4],
  ]);

export function vest(cloth: Cloth): Garment {
  return {
    behind: [insideBack("scoop", cloth)],
    trunk: [panel(strappy(214, 50, 494), cloth, { deep: 0.8 }), hemSeam(85, 486)],
  };
}

export function camisole(cloth: Cloth): Garment {
  const strap = (side: 1 | -1): Layer =>
    panel(
      limb(
        [
          [side * 44, 232, 3],
          [side * 46, 196, 3],
          [side * 42, 160, 3],
        ],
        "flat",
      ),
      cloth,
      { fall: "none", round: 2, throw: 3 },
    );
  const outline = mirrored(knots("0,246! 26,238 44,226! 66,246 81,258! 76,300 70,366 88,448 95,500! 0,505"));
  return { trunk: [strap(-1), strap(1), panel(outline, cloth, { deep: 1.1 }), hemSeam(90, 494)] };
}
