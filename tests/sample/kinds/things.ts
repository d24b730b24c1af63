import { STANCES } from "../../store/studio/body.ts";
import { garmentOf } from "../../store/studio/garments/garment-of.ts";
import { hanger } from "../../store/studio/hanger.ts";
import { randomFrom, seedOf } from "../../store/studio/random.ts";
import { type Cloth, CUTS, type Cut, type Print, type Weave } from "../../store/studio/recipe.ts";
import { isDrawing, type Layer } from "../../store/studio/stage.ts";
import { dyeOf, METALS, type NamedDye, round, WHEEL, WHITES } from "./dyes.ts";
import { graphic } from "./extras.ts";
import { asPart, type FinishedCloth } from "./finish.ts";
import { lampOf } from "./lamp.ts";
import { LYING_PROPS, PROP_COLORS, STANDING_PROPS } from "./props.ts";
import { isCutOut, SETTINGS, type Setting } from "./settings.ts";
import { type View, viewOf } from "./sheet.ts";
import type { Figure, Shot } from "./shot.ts";
import { sticker } from "./sticker.ts";
import { PRINT_CLOTHS, THINGS_TABLE } from "./things-table.ts";
import { titleOf } from "./titles.ts";

export type Pose = "ghost" | "hanger" | "flat" | "still" | "small" | "several";

export interface Piece {
  readonly cut: Cut;
  readonly cloth: Cloth;
  readonly word: string;
}

/** Weaves that a cut is made of. */
const WEAVES: Partial<Record<Cut, Weave>> = {
  jumper: "knit",
  cardigan: "knit",
  rollneck: "knit",
  vest: "knit",
  "knit-dress": "knit",
  jeans: "denim",
  coat: "wool",
  blazer: "wool",
  "slip-dress": "satin",
  camisole: "satin",
  trainer: "leather",
  tote: "leather",
  "saddle-bag": "leather",
  "court-shoe": "leather",
  "ankle-boot": "leather",
  ballerina: "leather",
};

const PRINTS = PRINT_CLOTHS.trim()
  .split("\n")
  .map((line) => line.split(" "));

export function pieceOf(cut: Cut, dyes: string, i: number): Piece {
  const weave = WEAVES[cut] ?? "smooth";
  if (dyes === "print") {
    const [print, ...words] = round(PRINTS, i);
    return { cut, word: words[0] ?? "", cloth: { weave, print: print as Print, dyes: words.map(dyeOf) } };
  }
  const list: readonly NamedDye[] = dyes === "whites" ? WHITES : dyes === "metals" ? METALS : WHEEL;
  const { word, hex } = round(list, i);
  const plain: Cloth = { weave, print: "plain", dyes: [hex] };
  const metal: FinishedCloth = { ...plain, finish: "metal" };
  return { cut, word, cloth: dyes === "metals" ? metal : plain };
}

/** Rows of the scene that a garment spans when nobody wears it. */
export function rowsOf(cut: Cut): readonly [number, number] {
  const slot = CUTS[cut];
  if (cut === "coat") return [60, 900];
  if (cut === "shorts") return [330, 740];
  if (slot === "bottom") return [340, 990];
  if (slot === "one-piece") return [90, cut === "maxi-dress" || cut === "jumpsuit" ? 1000 : 880];
  return [120, 560];
}

/** Cuts that carry a graphic on the breast, and how many of them do. */
const PRINTED: readonly Cut[] = ["tee", "jumper", "longsleeve", "tee-dress"];
const GRAPHICS = 0.4;

/** A shoe is more than its upper. */
const whole = (layer: Layer): Layer =>
  isDrawing(layer) || layer.product ? layer : { ...layer, cloth: asPart(layer.cloth) };

/** A garment as if somebody invisible wore it, or laid out. */
export function empty({ cut, cloth }: Piece, laid: boolean, random: () => number): Layer[] {
  const garment = garmentOf(cut, cloth, laid ? STANCES.laid : STANCES.hung);
  const parts = [garment.behind, garment.below, garment.arms, garment.trunk, garment.over];
  const graphics =
    PRINTED.includes(cut) && random() < GRAPHICS
      ? [graphic(round(PROP_COLORS, Math.floor(9 * random())), random)]
      : [];
  const layers = parts.flatMap((some) => [...(some ?? [])]);
  return [...(CUTS[cut] === "shoes" ? layers.map(whole) : layers), ...graphics];
}

/** A view with so much air around the rows, the garment's width allowing. */
function airy(rows: readonly [number, number], air: number, aspect: number, angle = 0, x = 0): View {
  const room = ((rows[1] - rows[0]) * air) / 2;
  return viewOf([rows[0] - room, rows[1] + room], aspect, { angle, x });
}

/** Things lying or standing about, behind (`first`) or in front of the piece. */
function props(
  list: typeof LYING_PROPS,
  i: number,
  places: readonly (readonly [number, number])[],
  random: () => number,
) {
  return places.flatMap(([x, y], p) => round(list, i + p)(x, y, round(PROP_COLORS, 3 * i + p), random));
}

export function figuresOf(piece: Piece, pose: Pose, i: number, random: () => number): Figure[] {
  const rows = rowsOf(piece.cut);
  const goods = viewOf([-330, 330], 1, { x: 0.04 * (random() - 0.5), angle: 0.16 * (random() - 0.5) });
  switch (pose) {
    case "ghost":
      return [{ view: airy(rows, 0.12 + 0.3 * random(), 0.75), layers: empty(piece, false, random) }];
    case "hanger":
      return [
        {
          view: airy([rows[0] - 60, rows[1]], 0.1, 0.75),
          layers: [...hanger(CUTS[piece.cut] === "bottom"), ...empty(piece, false, random)],
        },
      ];
    case "flat":
      return [
        {
          view: goods,
          layers: props(
            LYING_PROPS,
            i,
            [
              [-250, 230],
              [255, -220],
            ],
            random,
          ),
        },
        { view: airy(rows, 0.25, 0.95, 0.4 * (random() - 0.5)), layers: empty(piece, true, random) },
      ];
    case "several":
      return [-0.25, 0.25].map((x, p) => ({
        view: airy(rows, 0.3, 1, 0, x),
        layers: empty(piece, p === 1, random),
      }));
    case "still":
      return [
        {
          view: airy([-260, 260], 0.05 + 0.5 * random(), 1, 0.2 * (random() - 0.5)),
          layers: empty(piece, false, random),
        },
      ];
    case "small":
      return [
        {
          view: goods,
          layers: props(
            STANDING_PROPS,
            i,
            [
              [-215, -70],
              [225, -20],
            ],
            random,
          ),
        },
        {
          view: airy([-470, 330], 0.1, 1, 0, 0.06 * (random() - 0.5)),
          layers: empty(piece, false, random),
        },
      ];
  }
}

/** How to take the `i`th picture of a rule. */
function shotOf(rule: readonly string[], number: number, i: number): Shot {
  const [kind = "", , pose = "", dyes = "", cuts = "", settings = "", near = ""] = rule;
  const seed = `${kind}-${number}-${i}`;
  const random = randomFrom(seedOf(seed));
  const piece = pieceOf(round(cuts.split(" "), i) as Cut, dyes, i + 5 * number);
  const setting = round(settings.split(" "), i) as Setting;
  const lamp = lampOf(random, isCutOut(setting));
  const figures = figuresOf(piece, pose as Pose, i, random);
  return {
    seed,
    backdrop: SETTINGS[setting](i + 2),
    lamp,
    near: Number(near),
    figures: kind === "stickers" ? [...figures, sticker(i, random)] : figures,
    slot: CUTS[piece.cut],
    text: titleOf(piece.cut, piece.word, i),
    tone: null,
    hair: null,
  };
}

/** The rules of the table, cell by cell, in its order. */
export const thingRules = (): string[][] =>
  THINGS_TABLE.trim()
    .split("\n")
    .map((line) => line.split("|").map((cell) => cell.trim()));

/** All pictures without people: kind, and how to take them. */
export function thingShots(): (readonly [kind: string, shots: () => Shot[]])[] {
  return thingRules().map((rule, number) => [
    rule[0] ?? "",
    () => Array.from({ length: Number(rule[1]) }, (_, i) => shotOf(rule, number, i)),
  ]);
}
