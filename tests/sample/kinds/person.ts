import { arms, legs, STANCES, type Stance, skull, trunk } from "../../store/studio/body.ts";
import { footwear } from "../../store/studio/footwear.ts";
import { plain } from "../../store/studio/garments/bodice.ts";
import { garmentOf } from "../../store/studio/garments/garment-of.ts";
import { face, type HairStyle, hairBehind, hairInFront } from "../../store/studio/head.ts";
import { type Cloth, CUTS, type Cut } from "../../store/studio/recipe.ts";
import { type Garment, isDrawing, type Layer } from "../../store/studio/stage.ts";

export const STANDING: readonly Stance[] = [STANCES.still, STANCES.hip, STANCES.easy];

/** Dyes that stand for skin and hair until `asPerson` says whose. */
const SKIN = "#010203";
const HAIR = "#030201";
/** Brows and lips: too small at the sampler's size to differ between people. */
const BROWS = "#4a3428";
const LIPS = "#9a4c4a";

/** Something else that a person wears, of plain cloth. */
export interface Companion {
  readonly cut: Cut;
  readonly hex: string;
}

const quiet = (layers: readonly Layer[] = []): Layer[] =>
  layers.map((layer) => (isDrawing(layer) ? layer : { ...layer, product: false }));

/** A garment that is not the piece; its waist hangs over what is under it. */
function aside({ cut, hex }: Companion, stance: Stance): Garment {
  const weave = cut === "jeans" ? "denim" : "smooth";
  const { behind, below, over, arms, trunk } = garmentOf(cut, plain(hex, weave), stance);
  return {
    behind: quiet(behind),
    below: [...quiet(below), ...quiet(over)],
    arms: quiet(arms),
    trunk: quiet(trunk),
  };
}

const parts = (garments: readonly Garment[], ...names: readonly (keyof Garment)[]): Layer[] =>
  names.flatMap((name) => garments.flatMap((garment) => garment[name] ?? []));

/** Everything between shoes and head: a piece below the waist is worn over a top, others over or under a layer. */
function body(
  cut: Cut,
  piece: Garment,
  companions: readonly Companion[],
  stance: Stance,
  lining: readonly Layer[],
): Layer[] {
  const open = companions.filter((worn) => CUTS[worn.cut] === "layer").map((worn) => aside(worn, stance));
  const inner = companions.filter((worn) => CUTS[worn.cut] !== "layer").map((worn) => aside(worn, stance));
  const [skinTrunk, skinArms] = [trunk(SKIN), arms(stance, SKIN)];
  if (CUTS[cut] === "bottom")
    return [
      ...skinTrunk,
      ...parts(inner, "trunk"),
      ...parts([piece], "below", "over"),
      ...skinArms,
      ...parts(inner, "arms"),
      ...parts(open, "below", "arms", "trunk"),
    ];
  const all = [...inner, piece, ...open];
  return [
    ...parts(inner, "below"),
    ...skinTrunk,
    ...lining,
    ...parts([piece, ...open], "below"),
    ...skinArms,
    ...parts(all, "arms", "trunk"),
    ...parts([piece], "over"),
  ];
}

/**
 * Somebody from behind to front who wears the piece and its companions; skin and hair are still to be given.
 * @param lining what is under a sheer piece.
 */
export function dressed(
  cut: Cut,
  cloth: Cloth,
  companions: readonly Companion[],
  look: { readonly stance: Stance; readonly style: HairStyle; readonly lining: readonly Layer[] },
  random: () => number,
): Layer[] {
  const { stance, style, lining } = look;
  const piece = garmentOf(cut, cloth, stance);
  const slot = CUTS[cut];
  const [legwear, hat] = [slot === "legwear", slot === "headwear"];
  const shoes = footwear(stance, random);
  return [
    ...hairBehind(style, HAIR),
    ...parts([piece, ...companions.map((worn) => aside(worn, stance))], "behind"),
    ...legs(stance, SKIN),
    ...(legwear ? [] : shoes),
    ...body(cut, hat ? {} : piece, companions, stance, lining),
    ...(legwear ? shoes : []),
    ...skull(SKIN),
    ...face(BROWS, LIPS),
    ...hairInFront(style, HAIR),
    ...(cut === "rollneck" ? (piece.over ?? []) : []),
    ...(hat ? (piece.trunk ?? []) : []),
  ];
}

/** The same picture of somebody else: only skin and hair change. */
export function asPerson(layers: readonly Layer[], skin: string, hair: string): Layer[] {
  return layers.map((layer) => {
    if (isDrawing(layer)) return layer;
    const own = layer.cloth.dyes[0] === SKIN ? skin : layer.cloth.dyes[0] === HAIR ? hair : null;
    return own === null ? layer : { ...layer, cloth: { ...layer.cloth, dyes: [own] } };
  });
}
