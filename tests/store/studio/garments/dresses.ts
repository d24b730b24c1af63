import type { Stance } from "../body.ts";
import { limb, mirrored, type Point } from "../outline.ts";
import { knots, points } from "../points.ts";
import type { Cloth } from "../recipe.ts";
import { type Garment, type Layer, panel, seam } from "../stage.ts";
import { bodice, collar, hemSeam, insideBack, type Neck, neckBand, sleeves, stand } from "./bodice.ts";
import { skirtShape, waistband, wideTrousers } from "./bottoms.ts";
import { placket } from "./tops.ts";

/** Upper part down to the waist. */
const upper = (cloth: Cloth, neck: Neck, deep = 0.8): Layer =>
  panel(bodice({ neck, hem: 385, hemWidth: 66, waist: 66, ease: 2 }), cloth, { deep });

const lower = (cloth: Cloth, hem: number, hemWidth: number, deep = 1, hip = 106): Layer =>
  panel(skirtShape(374, 65, hip, hem, hemWidth, 12), cloth, {
    fall: "skirt",
    deep,
    round: 64,
    grain: { width: 130, y: 374 },
  });

export function flareDress(cloth: Cloth, stance: Stance): Garment {
  return {
    behind: [insideBack("scoop", cloth)],
    below: [lower(cloth, 770, 186, 1, 124)],
    trunk: [upper(cloth, "scoop"), ...neckBand("scoop", cloth, 5), seam(points("-66,378 0,384 66,378"), 2.2)],
    arms: sleeves(cloth, stance, 0.3, [9, 12]),
  };
}

export function wrapDress(cloth: Cloth, stance: Stance): Garment {
  const lap: readonly Point[] = points(
    "-41,158 -20,206 20,290 64,372 66,384 -66,384 -70,330 -84,254 -92,182",
  );
  const tie = (far: number): Layer =>
    panel(
      limb(
        [
          [52, 380, 5],
          [62, 420, 7],
          [58 + far, 500, 8],
          [64 + far, 560, 9],
        ],
        "flat",
      ),
      cloth,
      { fall: "drape", round: 4, throw: 5, shadow: 0.35 },
    );
  return {
    behind: [insideBack("v", cloth)],
    below: [lower(cloth, 800, 138), seam(points("10,392 26,560 34,806"), 2.4)],
    trunk: [
      upper(cloth, "v"),
      panel(lap, cloth, { deep: 0.9, round: 14, shadow: 0.4, throw: 4 }),
      waistband(cloth, 388, 66, 16),
      tie(0),
      tie(14),
    ],
    arms: sleeves(cloth, stance, 0.6, [5, 9]),
  };
}

export function shirtDress(cloth: Cloth, stance: Stance): Garment {
  return {
    behind: [stand(cloth)],
    below: [lower(cloth, 735, 120, 0.8)],
    trunk: [
      upper(cloth, "v", 1),
      ...placket(214, 730, "#e9e2d2"),
      ...collar(cloth, 214),
      waistband(cloth, 390, 67, 18),
    ],
    arms: sleeves(cloth, stance, 0.55, [9, 12]),
  };
}

const strap = (cloth: Cloth, side: 1 | -1): Layer =>
  panel(
    limb(
      [
        [side * 46, 234, 2.6],
        [side * 47, 196, 2.6],
        [side * 43, 160, 2.6],
      ],
      "flat",
    ),
    cloth,
    { fall: "none", round: 2, throw: 3 },
  );

export function slipDress(cloth: Cloth): Garment {
  const outline = mirrored(
    knots("0,262 28,246 46,230! 66,248 80,262! 74,305 66,368 92,470 104,640 118,845! 0,856"),
  );
  return {
    trunk: [
      strap(cloth, -1),
      strap(cloth, 1),
      panel(outline, cloth, { fall: "drape", deep: 1.2, round: 46 }),
    ],
  };
}

export function maxiDress(cloth: Cloth): Garment {
  const top = mirrored(knots("0,226! 26,190 40,160! 66,168! 68,214 82,256! 75,300 66,366 67,384! 0,388"));
  return {
    behind: [insideBack("v", cloth)],
    below: [lower(cloth, 930, 184, 1.1, 118)],
    trunk: [panel(top, cloth, { deep: 0.9 }), waistband(cloth, 390, 67, 14)],
  };
}

export function teeDress(cloth: Cloth, stance: Stance): Garment {
  return {
    behind: [insideBack("crew", cloth)],
    trunk: [
      panel(bodice({ neck: "crew", hem: 690, hemWidth: 112, waist: 82, ease: 4 }), cloth, { round: 44 }),
      ...neckBand("crew", cloth, 8),
      hemSeam(106, 680),
    ],
    arms: sleeves(cloth, stance, 0.34, [8, 13]),
  };
}

export function knitDress(cloth: Cloth, stance: Stance): Garment {
  return {
    behind: [insideBack("crew", cloth)],
    trunk: [
      panel(bodice({ neck: "crew", hem: 748, hemWidth: 88, waist: 70, ease: 4 }), cloth, { round: 46 }),
      ...neckBand("crew", cloth, 14),
    ],
    arms: sleeves(cloth, stance, 0.98, [7, 8]),
  };
}

export function jumpsuit(cloth: Cloth, stance: Stance): Garment {
  const trousers = wideTrousers(cloth, stance);
  return {
    behind: [insideBack("v", cloth)],
    below: trousers.below ?? [],
    trunk: [upper(cloth, "v", 1), waistband(cloth, 390, 67, 20)],
    arms: sleeves(cloth, stance, 0.3, [8, 14]),
  };
}
