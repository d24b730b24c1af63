import { limb, mirrored, smooth } from "../outline.ts";
import { knots, points, ribs } from "../points.ts";
import type { Cloth } from "../recipe.ts";
import { buttons, type Garment, type Layer, panel, seam, stroke } from "../stage.ts";

const hide = { fall: "stiff", deep: 0.9, round: 16, shadow: 0.35, throw: 12 } as const;

const standing = (half: number, y: number): Layer => ({
  how: "over",
  soft: 12,
  span: [
    [-half, y],
    [half, y],
  ],
  draw: (board) => {
    board.fillStyle = "rgb(20 18 16 / 0.45)";
    board.beginPath();
    board.ellipse(6, y, half, 10, 0, 0, 7);
    board.fill();
  },
});

export function saddleBag(cloth: Cloth): Garment {
  const strap = limb(ribs("-128,-10,7 -140,-120,7 -60,-236,7 40,-240,7 136,-130,7 128,-10,7"), "flat");
  const body = smooth(points("-140,-18 140,-18 150,60 138,128 60,146 -60,146 -138,128 -150,60"));
  const flap = smooth(knots("-146,-26! 0,-36 146,-26! 150,30 110,84 0,100 -110,84 -150,30"));
  return {
    trunk: [
      standing(150, 150),
      panel(strap, cloth, { ...hide, round: 5 }),
      panel(body, cloth, hide),
      panel(flap, cloth, { ...hide, shadow: 0.45, throw: 7 }),
      seam(points("-138,26 -102,76 0,91 102,76 138,26"), 1.8),
      stroke(points("-16,78 16,78 16,106 -16,106 -16,78"), "#b9964e", 5, 0.6),
      stroke(
        [
          [0, 84],
          [0, 112],
        ],
        "#d9bc78",
        5,
        0.6,
      ),
      buttons(
        [
          [-130, -8],
          [130, -8],
        ],
        "#b9964e",
        8,
      ),
    ],
  };
}

export function tote(cloth: Cloth): Garment {
  const handle = (dx: number, dy: number): Layer =>
    panel(
      limb(
        [
          [-64 + dx, -80 + dy, 7],
          [-60 + dx, -190 + dy, 7],
          [dx, -236 + dy, 7],
          [60 + dx, -190 + dy, 7],
          [64 + dx, -80 + dy, 7],
        ],
        "flat",
      ),
      cloth,
      { ...hide, round: 5 },
    );
  const body = mirrored(knots("0,-92 150,-100! 146,40 132,168 120,176 0,180"));
  const inside = mirrored(knots("0,-112 120,-112 150,-100! 60,-88 0,-88"));
  return {
    trunk: [
      standing(140, 178),
      handle(6, -14),
      panel(inside, cloth, { product: false, lit: 0.42, round: 6, shadow: 0, fall: "none" }),
      panel(body, cloth, { ...hide, deep: 1.4, round: 20 }),
      seam(points("-146,-82 0,-74 146,-82"), 1.8),
      seam(points("-132,-96 -128,60 -116,170"), 1.6),
      seam(points("132,-96 128,60 116,170"), 1.6),
      handle(0, 6),
      ...[-64, 64].map((x) =>
        seam(
          [
            [x - 9, -72],
            [x + 9, -72],
            [x + 9, -50],
            [x - 9, -50],
            [x - 9, -72],
          ],
          1.4,
        ),
      ),
    ],
  };
}
