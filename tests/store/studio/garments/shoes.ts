import { type Knot, type Point, smooth } from "../outline.ts";
import { knots, points } from "../points.ts";
import type { Cloth } from "../recipe.ts";
import { buttons, type Garment, type Layer, other, panel, seam, stroke } from "../stage.ts";

/** Moves a shoe's own points (toe to the left, ball of the foot at the origin) to its place in the picture. */
interface Place {
  readonly x: number;
  readonly y: number;
  readonly size: number;
}

const put = (place: Place, points: readonly Knot[]): Knot[] =>
  points.map(([x, y, corner]) => {
    const at = [place.x + x * place.size, place.y + y * place.size] as const;
    return corner ? [...at, corner] : at;
  });
const line = (place: Place, points: readonly Point[]): Point[] => put(place, points).map(([x, y]) => [x, y]);

const hide = { fall: "stiff", deep: 0.5, round: 24, shadow: 0.3, throw: 9 } as const;

/** The shadow on the ground under a shoe. */
const ground = (place: Place, half: number, y: number): Layer => ({
  how: "over",
  soft: 9,
  span: [
    [place.x - half, place.y + y * place.size],
    [place.x + half, place.y + y * place.size],
  ],
  draw: (board) => {
    board.fillStyle = "rgb(20 18 16 / 0.42)";
    board.beginPath();
    board.ellipse(place.x + 4, place.y + y * place.size, half * place.size, 8, 0, 0, 7);
    board.fill();
  },
});

/** The far one first, then the near one. */
const pair = (shoe: (place: Place) => Layer[]): Garment => ({
  trunk: [...shoe({ x: 34, y: -52, size: 0.94 }), ...shoe({ x: -14, y: 66, size: 1.04 })],
});

const lining = (place: Place, points: readonly Knot[], hex = "#cdb496"): Layer =>
  other(smooth(put(place, points)), hex, { lit: 0.72, round: 10, shadow: 0, fall: "none" });

export const courtShoe = (cloth: Cloth): Garment =>
  pair((place) => [
    ground(place, 150, 92),
    ground({ ...place, x: place.x + 112 * place.size }, 22, 114),
    panel(smooth(put(place, knots("84,40! 130,18! 128,60 121,118! 105,118! 100,84"))), cloth, {
      ...hide,
      round: 12,
    }),
    lining(place, knots("-66,22 -30,-2 40,-28 112,-66! 116,-40 60,10 -40,40")),
    panel(
      smooth(
        put(
          place,
          knots(
            "112,-66! 124,-52 133,4 126,40! 92,50 40,62 -20,88 -96,95 -152,92 -172,82 -150,58 -104,32 -66,22! -30,30 30,20 84,-22",
          ),
        ),
      ),
      cloth,
      hide,
    ),
    stroke(line(place, points("-171,84 -150,93 -94,96 -20,89 40,63 92,51 126,41")), "#2a211c", 4, 0.5),
  ]);

export const ballerina = (cloth: Cloth): Garment =>
  pair((place) => [
    ground(place, 165, 96),
    lining(place, knots("-78,42 -20,14 60,8 130,6! 126,34 40,50 -50,62")),
    panel(
      smooth(
        put(
          place,
          knots(
            "132,2! 144,30 146,84! 60,90 -60,94 -140,94 -166,84 -152,62 -112,46 -78,42! -40,56 40,54 100,40",
          ),
        ),
      ),
      cloth,
      { ...hide, round: 20 },
    ),
    stroke(line(place, points("-166,88 -140,98 -40,98 80,95 146,89")), "#2a211c", 4.5, 0.5),
    panel(smooth(put(place, knots("-82,44 -104,28! -108,46!"))), cloth, { ...hide, round: 4, throw: 3 }),
    panel(smooth(put(place, knots("-80,44 -56,36! -60,58!"))), cloth, { ...hide, round: 4, throw: 3 }),
  ]);

export const ankleBoot = (cloth: Cloth): Garment =>
  pair((place) => [
    ground(place, 160, 98),
    lining(place, points("20,-152 74,-164 126,-152 118,-138 70,-132 26,-138"), "#8a6f57"),
    panel(
      smooth(
        put(
          place,
          knots(
            "20,-150! 70,-140 128,-152! 132,-80 138,-10 146,70! 60,76 -30,92 -120,94 -164,84 -160,58 -120,30 -50,2 0,-36 16,-90",
          ),
        ),
      ),
      cloth,
      { ...hide, deep: 0.8, round: 34 },
    ),
    panel(
      smooth(put(place, knots("46,-136! 84,-134! 90,-20! 66,-6 44,-20!"))),
      { weave: "knit", print: "plain", dyes: ["#2b2624"] },
      { product: false, round: 5, shadow: 0.1, fall: "none" },
    ),
    other(smooth(put(place, knots("84,74! 147,68! 143,116! 92,116!"))), "#3a2a20", {
      weave: "leather",
      round: 8,
      throw: 4,
    }),
    stroke(line(place, points("-164,89 -120,100 -30,99 40,84 86,78")), "#2c201a", 7, 0.5),
    seam(line(place, points("-70,12 -20,40 30,60 60,74"))),
    seam(line(place, points("100,-150 106,-60 100,10 120,72"))),
  ]);

export const trainer = (cloth: Cloth): Garment =>
  pair((place) => [
    ground(place, 168, 112),
    lining(place, points("16,-46 70,-58 124,-62 130,-44 70,-30 24,-30"), "#e9e6df"),
    panel(
      smooth(
        put(
          place,
          knots(
            "14,-44! 60,-34 100,-44 132,-64! 140,-30 146,40 148,84! -150,88! -160,66 -138,42 -90,24 -40,-8",
          ),
        ),
      ),
      cloth,
      { ...hide, round: 28 },
    ),
    other(
      smooth(put(place, knots("-168,74! -120,80 0,78 150,72! 154,100 148,112 -150,114 -172,102"))),
      "#ecebe6",
      { fall: "none", round: 9, throw: 5 },
    ),
    other(smooth(put(place, points("-164,78 -160,56 -136,40 -108,46 -100,76"))), "#eeede8", {
      fall: "none",
      round: 12,
      throw: 2,
      shadow: 0.15,
    }),
    stroke(line(place, points("-168,98 0,101 152,96")), "#b5322f", 2.4),
    ...[0, 1, 2, 3].map((i) =>
      stroke(
        line(place, [
          [-74 + i * 24, 24 - i * 17],
          [-48 + i * 24, 34 - i * 14],
        ]),
        "#f4f2ee",
        6.5,
        0.6,
      ),
    ),
    buttons(line(place, points("-46,36 -22,22 2,8 26,-6")), "#c9c6bf", 3),
    seam(line(place, points("30,-30 44,30 40,78"))),
    seam(line(place, points("-100,46 -60,62 40,66 146,44"))),
  ]);
