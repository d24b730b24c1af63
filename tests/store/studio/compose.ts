import { arms, legs, STANCES, type Stance, skull, trunk } from "./body.ts";
import { footwear } from "./footwear.ts";
import { plain } from "./garments/bodice.ts";
import { garmentOf } from "./garments/garment-of.ts";
import { hanger } from "./hanger.ts";
import { face, HAIR, type HairStyle, hairBehind, hairInFront } from "./head.ts";
import { MONK_SKIN } from "./monk-skin.ts";
import { HEIGHT, type View, WIDTH } from "./photo.ts";
import { CUTS, type Cut, type Recipe } from "./recipe.ts";
import { type Garment, isDrawing, type Layer } from "./stage.ts";

/** A scene ready to be painted. */
export interface Composition {
  readonly view: View;
  readonly layers: readonly Layer[];
  /** Whether the backdrop is near enough for shadows. */
  readonly near: boolean;
}

/** What part of a standing figure a picture shows: top and bottom, in a figure's own units. */
const FRAMES: Partial<Record<Cut, readonly [number, number]>> = {
  "maxi-dress": [-34, 1046],
  jumpsuit: [-34, 1046],
  "slip-dress": [-34, 1000],
  coat: [-34, 1040],
  blazer: [-40, 740],
  shorts: [300, 900],
  tights: [420, 1020],
  beret: [-80, 340],
  beanie: [-80, 340],
  beads: [40, 420],
};
const FRAME_OF_SLOT: Record<string, readonly [number, number]> = {
  "one-piece": [-34, 1000],
  top: [-40, 640],
  bottom: [290, 1020],
  layer: [-40, 700],
};

/** Where a worn or hung garment lies, so that an empty one fills the frame. */
const SPANS: Partial<Record<Cut, readonly [number, number]>> = {
  "maxi-dress": [60, 990],
  jumpsuit: [80, 990],
  "slip-dress": [80, 910],
  coat: [70, 880],
  shorts: [330, 740],
  jacket: [60, 640],
};
const SPAN_OF_SLOT: Record<string, readonly [number, number]> = {
  "one-piece": [70, 860],
  top: [70, 600],
  bottom: [310, 990],
  layer: [60, 640],
};

const pick = <T>(list: readonly T[], random: () => number): T => {
  const item = list[Math.floor(random() * list.length)];
  if (item === undefined) throw new Error("Nothing to pick from.");
  return item;
};

/** A view that shows `top`…`bottom` over the height of the picture, as wide as it comes, at least `wide` scene units. */
function framed(
  [top, bottom]: readonly [number, number],
  wide: number,
  angle: number,
  random: () => number,
): View {
  const scale = Math.min(HEIGHT / (bottom - top), WIDTH / wide) * (0.985 + 0.03 * random());
  const middle = (top + bottom) / 2;
  return {
    scale,
    angle,
    left: WIDTH / 2 + Math.sin(angle) * middle * scale + (random() - 0.5) * 14,
    top: HEIGHT / 2 - Math.cos(angle) * middle * scale + (random() - 0.5) * 8,
  };
}

/** Plain things that a model wears with the product; quiet, as in a catalogue. */
function companions(
  cut: Cut,
  stance: Stance,
  random: () => number,
): { bottom: Garment | null; top: Garment | null } {
  const slot = CUTS[cut];
  const light = pick(["#efeeea", "#e6dfd2", "#d9d9d7", "#26262a"], random);
  const dark = pick(["#26262a", "#3a4a66", "#55565a", "#cfc4b2"], random);
  const below = slot === "top" || slot === "layer" || slot === "headwear" || slot === "jewellery";
  const short = cut === "coat" ? "straight-trousers" : pick(["straight-trousers", "jeans"] as const, random);
  const above = slot === "bottom" || slot === "layer" || slot === "headwear";
  return {
    bottom: below
      ? garmentOf(short, plain(dark, short === "jeans" ? "denim" : "smooth"), stance)
      : slot === "legwear"
        ? garmentOf("pencil-skirt", plain("#c9c5be"), stance)
        : null,
    top: above
      ? garmentOf(
          slot === "bottom" ? pick(["tee", "longsleeve", "vest"] as const, random) : "vest",
          plain(light),
          stance,
        )
      : slot === "jewellery"
        ? garmentOf("camisole", plain(light), stance)
        : null,
  };
}

/** A garment that is not the product. */
const aside = (garment: Garment | null): Garment => {
  const quiet = (layers: readonly Layer[] = []): Layer[] =>
    layers.map((layer) => (isDrawing(layer) ? layer : { ...layer, product: false }));
  return garment
    ? {
        below: [...quiet(garment.below), ...quiet(garment.over)],
        arms: quiet(garment.arms),
        trunk: quiet(garment.trunk),
      }
    : {};
};

/** The layers of garments that are worn together, in the order in which they were put on. */
function worn(garments: readonly Garment[], skin: readonly Layer[]): Layer[] {
  const each = (part: keyof Garment): Layer[] => garments.flatMap((garment) => garment[part] ?? []);
  return [...each("below"), ...skin, ...each("arms"), ...each("trunk"), ...each("over")];
}

/** A top tucked into the product; the arms hang in front of it. */
const tuckedIn = (top: Garment, product: Garment, stance: Stance, skin: string): Layer[] => [
  ...trunk(skin),
  ...(top.trunk ?? []),
  ...(product.below ?? []),
  ...(product.over ?? []),
  ...arms(stance, skin),
  ...(top.arms ?? []),
];

/** The shadow of somebody standing on the floor of a studio. */
const FLOOR_SHADOW: Layer = {
  how: "over",
  soft: 11,
  span: [
    [-140, 960],
    [190, 1010],
  ],
  draw: (board) => {
    board.fillStyle = "rgb(24 20 18 / 0.34)";
    board.beginPath();
    board.ellipse(14, 982, 96, 9, 0, 0, 7);
    board.fill();
  },
};

function onModel({ cut, cloth, scene }: Recipe, random: () => number): Composition {
  const stance = pick([STANCES.still, STANCES.hip, STANCES.easy], random);
  const skin = MONK_SKIN[(scene.skin ?? 1) - 1] ?? MONK_SKIN[0];
  const deep = (scene.skin ?? 1) > 6;
  const hair = pick(deep ? HAIR.slice(0, 3) : HAIR, random);
  const style: HairStyle = pick(["long", "bob", "bun", "short"], random);
  const lips = deep ? "#7d3a3c" : "#b8585a";
  const slot = CUTS[cut];
  const { bottom, top } = companions(cut, stance, random);
  const product = garmentOf(cut, cloth, stance);
  const head = [...skull(skin), ...face(hair, lips), ...hairInFront(style, hair)];
  const shoes =
    slot === "bottom" || slot === "one-piece" || slot === "layer" || slot === "legwear"
      ? footwear(stance, random)
      : [];
  const outfit =
    slot === "legwear"
      ? [product, aside(bottom)]
      : [aside(bottom), aside(top), ...(slot === "headwear" ? [] : [product])];
  const [frameTop, frameBottom] = FRAMES[cut] ?? FRAME_OF_SLOT[slot] ?? [-34, 1000];
  // Stores often crop the head: the picture is of the garment.
  const crop = (slot === "one-piece" || slot === "top" || slot === "layer") && random() < 0.45 ? 126 : 0;
  return {
    near: false,
    view: framed([frameTop + crop, frameBottom], 200, 0, random),
    layers: [
      FLOOR_SHADOW,
      ...hairBehind(style, hair),
      ...(slot === "layer" ? (product.behind ?? []) : []),
      ...legs(stance, skin),
      ...(slot === "legwear" ? [] : shoes),
      ...(slot === "bottom"
        ? tuckedIn(aside(top), product, stance, skin)
        : worn(outfit, [...arms(stance, skin), ...trunk(skin)])),
      ...(slot === "legwear" ? shoes : []),
      ...head,
      ...(cut === "rollneck" ? (product.over ?? []) : []),
      ...(slot === "headwear" ? (product.trunk ?? []) : []),
    ],
  };
}

/** Nobody there: a garment on a hanger, on a floor, or filled out as if worn. */
function empty({ cut, cloth, scene }: Recipe, random: () => number): Composition {
  const slot = CUTS[cut];
  if (!(slot in SPAN_OF_SLOT)) {
    const turn = scene.pose === "flat" ? (random() - 0.5) * 0.5 : 0;
    const layers = garmentOf(cut, cloth, STANCES.hung).trunk ?? [];
    return { near: scene.pose !== "ghost", view: framed([-320, 320], 480, turn, random), layers };
  }
  const stance = scene.pose === "flat" ? STANCES.laid : STANCES.hung;
  const garment = garmentOf(cut, cloth, stance);
  const span = SPANS[cut] ?? SPAN_OF_SLOT[slot] ?? [0, 1000];
  const lie = scene.pose === "flat" ? (random() - 0.5) * 0.22 : (random() - 0.5) * 0.02;
  const wide = scene.pose === "flat" ? (slot === "bottom" ? 420 : 486) : 400;
  return {
    near: scene.pose !== "ghost",
    view: framed(scene.pose === "hanger" ? [span[0] - 60, span[1] + 20] : span, wide, lie, random),
    layers: [
      ...(scene.pose === "hanger" ? hanger(slot === "bottom") : []),
      ...(garment.behind ?? []),
      ...worn([garment], []),
    ],
  };
}

/** Puts a recipe's scene together. */
export const compose = (recipe: Recipe, random: () => number): Composition =>
  recipe.scene.pose === "model" ? onModel(recipe, random) : empty(recipe, random);
