import { limb, mirrored, type Point, type Rib, smooth } from "../outline.ts";
import { knots, points, ribs } from "../points.ts";
import type { Cloth } from "../recipe.ts";
import { type Garment, type Layer, other, panel, seam, stroke } from "../stage.ts";

/** A beret on a head: crown over the hair, pulled to one side. */
export function beret(cloth: Cloth): Garment {
  const crown = smooth(points("-58,30 -64,2 -30,-34 30,-40 78,-14 82,16 56,34 0,30"));
  const band = smooth(knots("-54,26! 0,18 54,26! 53,38! 0,31 -53,38!"));
  return {
    trunk: [
      panel(crown, cloth, { deep: 0.7, round: 40, shadow: 0.4, throw: 6 }),
      panel(band, cloth, { fall: "none", round: 5, shadow: 0.3, throw: 3 }),
      stroke(
        [
          [12, -38],
          [15, -46],
        ],
        cloth.dyes[0] ?? "#000000",
        4,
      ),
    ],
  };
}

export function beanie(cloth: Cloth): Garment {
  const crown = mirrored(knots("0,-26 34,-16 54,20 55,44! 0,40"));
  const fold = mirrored(knots("0,16 55,22! 57,50! 0,44"));
  return {
    trunk: [panel(crown, cloth, { round: 40 }), panel(fold, cloth, { round: 9, shadow: 0.35, throw: 4 })],
  };
}

/** A string of round beads on the breast bone. */
export function beads(cloth: Cloth): Garment {
  const bead = (i: number): Layer => {
    const t = (i / 20) * Math.PI;
    const [x, y, r] = [-50 * Math.cos(t), 164 + 62 * Math.sin(t), 4.4 + 3.8 * Math.sin(t)];
    const ring: Point[] = Array.from({ length: 18 }, (_, k) => [
      x + r * Math.cos((k * Math.PI) / 9),
      y + r * Math.sin((k * Math.PI) / 9),
    ]);
    return panel(
      ring,
      { ...cloth, weave: "leather" },
      { fall: "none", round: r * 0.55, shadow: 0.4, throw: 3 },
    );
  };
  return { trunk: Array.from({ length: 21 }, (_, i) => bead(i)) };
}

/** A square scarf, folded in three and laid in a loop. */
export function scarf(cloth: Cloth): Garment {
  const tail = (ribs: readonly Rib[], repeat = 0.9): Layer =>
    panel(limb(ribs, "flat"), cloth, { fall: "drape", deep: 1.1, round: 14, shadow: 0.4, throw: 9, repeat });
  return {
    trunk: [
      tail(ribs("60,-150,44 120,-60,46 96,40,42 20,60,34")),
      tail(ribs("70,-160,40 -20,-196,44 -104,-130,46 -110,-20,44 -30,50,34")),
      tail(ribs("10,40,26 70,130,44 104,236,56")),
      tail(ribs("-6,44,26 -50,140,46 -60,262,60")),
      tail(ribs("-36,20,26 2,48,30 44,72,26")),
      seam(points("-114,250 -62,256 -8,252")),
    ],
  };
}

/** A belt, rolled up with its buckle in front. */
export function belt(cloth: Cloth): Garment {
  const turn: Rib[] = Array.from({ length: 34 }, (_, i): Rib => {
    const t = i * 0.36;
    const r = 62 + i * 2.6;
    return [r * Math.cos(t), r * Math.sin(t), 15];
  });
  const end: Rib[] = [
    [turn.at(-1)?.[0] ?? 0, turn.at(-1)?.[1] ?? 0, 15],
    [60, 190, 15],
    [-60, 216, 15],
    [-150, 206, 15],
  ];
  const made = { fall: "stiff", deep: 0.5, round: 8, shadow: 0.45, throw: 8 } as const;
  return {
    trunk: [
      panel(limb(turn, "flat"), cloth, made),
      panel(limb(end, "flat"), cloth, made),
      stroke(points("-166,180 -120,178 -118,234 -166,236 -166,180"), "#b8b4ab", 8, 0.5),
      stroke(
        [
          [-164, 206],
          [-112, 206],
        ],
        "#d8d5cd",
        5,
        0.5,
      ),
      ...[-60, -30, 0, 30].map((x) =>
        other(
          smooth([
            [x, 208],
            [x + 4, 211],
            [x, 215],
            [x - 4, 211],
          ]),
          "#2b201b",
          { round: 1, shadow: 0, fall: "none" },
        ),
      ),
    ],
  };
}
