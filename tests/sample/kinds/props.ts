import { limb, mirrored, type Point, type Rib, smooth } from "../../store/studio/outline.ts";
import { type Layer, other } from "../../store/studio/stage.ts";
import { round } from "./dyes.ts";

/** A thing that is not for sale, around (0, 0) in the units of shoes and bags: 640 fill the picture. */
export type Prop = (x: number, y: number, hex: string, random: () => number) => Layer[];

const box = (x: number, y: number, wide: number, high: number): Point[] => [
  [x - wide / 2, y - high / 2],
  [x + wide / 2, y - high / 2],
  [x + wide / 2, y + high / 2],
  [x - wide / 2, y + high / 2],
];
const disc = (x: number, y: number, rx: number, ry: number): Point[] =>
  Array.from({ length: 28 }, (_, i) => [
    x + rx * Math.cos((i * Math.PI) / 14),
    y + ry * Math.sin((i * Math.PI) / 14),
  ]);

const solid = { weave: "smooth", fall: "none", round: 20, shadow: 0.45, throw: 16 } as const;

/** A block of wood or plaster that something stands on or beside. */
const plinth: Prop = (x, y, hex) => [
  other(box(x, y + 10, 230, 250), hex, { ...solid, round: 6 }),
  other(
    [
      [x - 115, y - 115],
      [x - 70, y - 160],
      [x + 160, y - 160],
      [x + 115, y - 115],
    ],
    hex,
    { ...solid, lit: 1.15, shadow: 0, round: 4 },
  ),
];

/** A round pot with long leaves. */
const plant: Prop = (x, y, hex, random) => [
  ...Array.from({ length: 9 }, (_, i): Layer => {
    const [lean, far] = [(i - 4) * 34 + 20 * (random() - 0.5), 150 + 70 * random()];
    const leaf: Rib[] = [
      [x, y, 6],
      [x + lean * 0.5, y - far * 0.6, 20],
      [x + lean, y - far, 5],
    ];
    return other(limb(leaf, "flat"), round(["#3f6b3a", "#5d8a4b", "#2f5230"], i), {
      ...solid,
      round: 8,
      throw: 6,
    });
  }),
  other(
    smooth([
      [x - 80, y - 10, 1],
      [x + 80, y - 10, 1],
      [x + 60, y + 130, 1],
      [x - 60, y + 130, 1],
    ]),
    hex,
    {
      ...solid,
      weave: "leather",
      round: 40,
    },
  ),
];

const books: Prop = (x, y, hex) =>
  [hex, "#e4ddcf", "#40516b"].map((cover, i) =>
    other(box(x + 10 * (i - 1), y + 34 - 46 * i, 260 - 22 * i, 42), cover, { ...solid, round: 4 }),
  );

const ball: Prop = (x, y, hex) => [other(disc(x, y, 95, 95), hex, { ...solid, round: 90, shape: "cushion" })];

const cup: Prop = (x, y, hex) => [
  other(disc(x, y, 105, 105), "#efece6", { ...solid, round: 18 }),
  other(disc(x, y, 62, 62), hex, { ...solid, round: 10, throw: 6 }),
  other(disc(x, y, 50, 50), "#4a2e1d", { ...solid, round: 4, shadow: 0 }),
];

/** A length of stuff thrown over a corner. */
const throwOver: Prop = (x, y, hex, random) => [
  other(
    mirrored([
      [0, -150],
      [120, -140],
      [150, 40],
      [110 + 50 * random(), 170],
      [0, 150],
    ]).map(([px, py]): Point => [x + px, y + py]),
    hex,
    { fall: "drape", deep: 1.6, round: 20, shadow: 0.4, throw: 14 },
  ),
];

/** Glasses: two dark lenses and a bridge. */
const glasses: Prop = (x, y, hex) => [
  other(disc(x - 55, y, 46, 40), hex, { ...solid, weave: "leather", round: 8, throw: 7 }),
  other(disc(x + 55, y, 46, 40), hex, { ...solid, weave: "leather", round: 8, throw: 7 }),
  other(box(x, y - 10, 34, 9), hex, { ...solid, round: 3, throw: 4 }),
];

/** Things that stand, and things that lie. */
export const STANDING_PROPS: readonly Prop[] = [plinth, plant, books, ball, throwOver];
export const LYING_PROPS: readonly Prop[] = [cup, glasses, throwOver, books, ball];

/** Colours of props, as loud as stylists like them. */
export const PROP_COLORS = [
  "#d9b08c",
  "#b3493a",
  "#e8e2d4",
  "#6f8f7a",
  "#e2b13c",
  "#7a6a9a",
  "#c9cdd2",
  "#2f4a66",
] as const;
