import { looksAlikeTo, type Vision } from "../../color/color-vision.ts";
import { relate } from "../../color/relate.ts";
import { RELATIONS, type Relation } from "../../color/relation-name.ts";
import { comparedHue, type HungPiece } from "./hung-piece.ts";
import { stepName } from "./wheel-steps.ts";

/** An owned piece and how its statement swatch stands to the selected one's. */
export interface Kin {
  readonly hung: HungPiece;
  readonly relation: Relation;
  readonly alternatives: readonly Relation[];
  /** The two may look like one shade to this person, though most people tell them apart. */
  readonly lookAlike: boolean;
}

/** All that stand in one relation to the selected piece; `hint` says where to look on the wheel. */
export interface KinGroup {
  readonly relation: Relation;
  readonly hint: string;
  readonly kin: readonly Kin[];
}

/** From the widest contrast to the closest, as one reads a wheel from the far side home; neutrals, which go with all, last. */
const TOLD: readonly Relation[] = [
  ...RELATIONS.filter((relation) => relation !== "none" && relation !== "with-neutral").toReversed(),
  "with-neutral",
];

/** Angles on the wheel, in degrees from the selected hue, that name a relation's place in words. */
const PLACES: Partial<Record<Relation, readonly number[]>> = {
  complementary: [180],
  "split-complementary": [150, 210],
  triadic: [120, 240],
  analogous: [-30, 30],
};

/**
 * How every other piece stands to the selected one, grouped; a neutral or faint one has no places on the wheel to name.
 * `vision` is how the person says they see colours, null for as most people do.
 */
export function kinOf(
  selected: HungPiece,
  hung: readonly HungPiece[],
  vision: Vision | null,
): readonly KinGroup[] {
  const all = hung
    .filter((other) => other.piece.id !== selected.piece.id)
    .map(
      (other): Kin => ({
        hung: other,
        ...relate(selected.point, other.point),
        lookAlike: vision !== null && looksAlikeTo(vision, selected.point.oklab, other.point.oklab),
      }),
    );
  const wheel = comparedHue(selected);
  return TOLD.map((relation) => ({
    relation,
    hint: wheel === null ? "" : hintOf(wheel, PLACES[relation] ?? []),
    kin: all.filter((one) => one.relation === relation),
  })).filter((group) => group.kin.length > 0 || group.hint !== "");
}

function hintOf(wheel: number, places: readonly number[]): string {
  return [...new Set(places.map((place) => stepName(wheel + place)))].join(" and ");
}
