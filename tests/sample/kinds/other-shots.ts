import { MONK_SKIN } from "../../store/studio/monk-skin.ts";
import { type Cloth, CUTS } from "../../store/studio/recipe.ts";
import { HAIRS, round, WHEEL } from "./dyes.ts";
import { lampOf } from "./lamp.ts";
import { trace } from "./lettering.ts";
import { extrasOf, type Scene, slipUnder } from "./people.ts";
import { asPerson, type Companion, dressed, STANDING } from "./person.ts";
import { isCutOut, SETTINGS, type Setting } from "./settings.ts";
import { viewOf } from "./sheet.ts";
import type { Figure, Shot } from "./shot.ts";
import { empty, figuresOf, type Piece, type Pose, rowsOf } from "./things.ts";

/** Where shops take further photos of a piece. */
const STUDIOS: readonly Setting[] = ["mist", "white", "grey", "fade", "paper", "rose", "azure", "storm"];

type Taken = Pick<Shot, "backdrop" | "lamp" | "near" | "figures">;

function taken(
  setting: Setting,
  number: number,
  near: number,
  figures: Figure[],
  random: () => number,
): Taken {
  return { backdrop: SETTINGS[setting](number), lamp: lampOf(random, isCutOut(setting)), near, figures };
}

/** The piece worn: the person of the first photo stands otherwise, nearer or further away; some have a new place. */
export function worn(scene: Scene, number: number, tone: number, random: () => number): Taken {
  const clothes = scene.companions.filter((one): one is Companion => one.cut in CUTS);
  const look = {
    stance: round(STANDING, number + 1 + Math.floor(2 * random())),
    style: scene.style,
    lining: slipUnder(scene, number % 2 === 0),
  };
  const layers = [...dressed(scene.cut, scene.cloth, clothes, look, random), ...extrasOf(scene, random)];
  const [top, bottom] = scene.rows;
  const nearer = (bottom - top) * 0.22 * (random() - 0.35);
  const setting = random() < 0.6 ? scene.setting : round(STUDIOS, Math.floor(8 * random()));
  const aspect = scene.kind === "several-views" ? 0.75 : scene.aspect;
  const view = viewOf([top + nearer * 0.6, bottom - nearer], aspect, { x: 0.1 * (random() - 0.5) });
  const figure = { view, layers: asPerson(layers, skinOf(tone), hairOf(number, tone)) };
  return taken(setting, number + 4, 0, [figure], random);
}

/** A close look at the worn cloth: little else is in the picture. */
export function wornDetail(scene: Scene, number: number, tone: number, random: () => number): Taken {
  const [top, bottom] = rowsOf(scene.cut);
  const middle = CUTS[scene.cut] === "headwear" ? 0 : top + (0.3 + 0.2 * random()) * (bottom - top);
  const half = (CUTS[scene.cut] === "headwear" ? 60 : 90) + 50 * random();
  return worn({ ...scene, rows: [middle - half, middle + half], aspect: 0.8 }, number, tone, random);
}

/** The piece by itself. */
export function alone(piece: Piece, pose: Pose, number: number, random: () => number): Taken {
  const setting = pose === "flat" ? round(["ash", "sheet", "oak"] as const, number) : round(STUDIOS, number);
  return taken(setting, number, 0.6, figuresOf(piece, pose, number, random), random);
}

/** A close look at it. */
export function aloneDetail(piece: Piece, number: number, random: () => number): Taken {
  const isThing = CUTS[piece.cut] === "shoes" || CUTS[piece.cut] === "bag";
  const [top, bottom] = isThing ? [-120, 120] : rowsOf(piece.cut);
  const middle = top + (0.4 + 0.2 * random()) * (bottom - top);
  const half = (isThing ? 70 : 90) + 50 * random();
  const view = viewOf([middle - half, middle + half], 0.8, { angle: 0.2 * (random() - 0.5) });
  return taken(round(STUDIOS, number), number, 0.6, [{ view, layers: empty(piece, false, random) }], random);
}

/** The first photo's person from the shoulders up: hardly any cloth. */
export function portrait(scene: Scene, number: number, tone: number, random: () => number): Taken {
  return worn({ ...scene, rows: [-60, 150], aspect: 0.8 }, number, tone, random);
}

/** A table of sizes: rules and grey bars for its figures on white. */
export function sizeChart(number: number, random: () => number): Taken {
  const layers = [
    {
      how: "over",
      soft: 0.5,
      span: [
        [-400, 100],
        [400, 900],
      ],
      draw: (board) => {
        for (let row = 0; row < 7; row++)
          for (let column = 0; column < 4; column++) {
            const [x, y, right] = [-380 + 200 * column, 130 + 110 * row, -290 + 200 * column + 60 * random()];
            board.fillStyle = row === 0 ? "#1d1d1f" : "#77777c";
            trace(board, [
              [x, y],
              [right, y],
              [right, y + 34],
              [x, y + 34],
            ]);
            board.fill();
          }
      },
    },
  ] satisfies Figure["layers"];
  return taken("white", number, 0, [{ view: viewOf([0, 1000], 1), layers }], random);
}

/** The same cloth in another colour, as a shop's next variant has it. */
export function otherDye(cloth: Cloth, number: number): Cloth {
  const { hex } = round(
    WHEEL.filter(({ hex }) => !cloth.dyes.includes(hex)),
    7 * number,
  );
  return { ...cloth, dyes: [hex, ...cloth.dyes.slice(1)] };
}

const skinOf = (tone: number): string => round(MONK_SKIN, tone - 1);
/** As `peopleShots` gives them to a scene's people. */
const hairOf = (number: number, tone: number): string => round(HAIRS, 3 * number + tone - 1).hex;
