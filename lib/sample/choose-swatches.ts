import type { Slot } from "../words/slot.ts";
import type { Standing } from "./confidence-of.ts";
import { findParts } from "./find-parts.ts";
import { type Shade, shadeOf } from "./find-shades.ts";
import { meanGround } from "./ground.ts";
import { isBlend } from "./is-blend.ts";
import { fitOf, rankShades, type Scene } from "./rank-shades.ts";
import type { Raster } from "./raster.ts";
import { readRegions, shareOwn } from "./shade-regions.ts";
import { skinLikeness } from "./skin-likeness.ts";

/** Smallest share of the cloth that becomes a swatch. */
const SMALLEST_SHARE = 0.05;
/** 0–1. Mean weight of a further colour's pixels below which it is the backdrop seen through. */
const OWN = 0.6;
/** Pieces that are photographed alone, so that all that is not backdrop and stays in the picture belongs to them. */
const ALONE: readonly Slot[] = ["shoes", "bag", "accessory", "jewellery", "headwear", "legwear"];
/** 0–1. A colour between two others, or one and the ground, is their blend unless this part of it lies inside itself. */
const CORE = 0.1;
/**
 * 0–1. Part of a colour's mass around its mode below which the mode alone no longer says what it looks like: the mean of all
 * its pixels counts by what is missing.
 */
const DENSE = 0.5;
/** 0–1. Likeness from which a further colour may be somebody's skin. */
const SKIN = 0.5;
/** A palette has at most so many swatches. */
const MOST_SWATCHES = 6;

/** A colour that may be the piece, OKLab × 100. `rank`: how much speaks for it, compared with others of its picture. */
export interface Contender {
  readonly l: number;
  readonly a: number;
  readonly b: number;
  readonly rank: number;
}

/** A colour of the piece, OKLab × 100, with its mass. */
export interface Chosen {
  readonly l: number;
  readonly a: number;
  readonly b: number;
  readonly mass: number;
}

/** Which colours are the piece, the statement colour first, then by mass; what speaks for the first; all contenders. */
export function chooseSwatches(
  sketch: Raster,
  cloth: Float32Array,
  shades: readonly Shade[],
  scene: Scene,
): {
  readonly colors: readonly Chosen[];
  readonly standing: Standing;
  readonly contenders: readonly Contender[];
} | null {
  const { figure, slot, part, terms } = scene;
  const alone = !figure || (slot !== null && ALONE.includes(slot) && part === 1);
  findParts(sketch, shadeOf, cloth);
  const regions = readRegions(sketch, shades.length);
  const ranks = rankShades(sketch, cloth, shades, regions, scene);
  const [lead, second] = [...shades].sort((p, q) => rankOf(ranks, q) - rankOf(ranks, p));
  if (!lead) return null;
  const total = shades.reduce((sum, shade) => sum + shade.mass, 0);
  const ownShare = shareOwn(sketch, cloth, lead.index, alone);
  const further = shades
    .filter((shade) => shade !== lead && shade.sure > OWN * shade.mass)
    .map((shade) => ({ ...shade, mass: shade.mass * ownShare(shade.index, figure && isLikeSkin(shade)) }))
    .filter(({ mass }) => mass > SMALLEST_SHARE * total)
    .sort((p, q) => q.mass - p.mass);
  const ground = meanGround(sketch);
  const ends = [lead, ...further, ...(ground ? [{ ...ground, mass: Number.POSITIVE_INFINITY }] : [])];
  const pure = further.filter((shade) => (regions[shade.index]?.core ?? 0) > CORE || !isBlend(shade, ends));
  return {
    // A further colour is small and mixed: its mean tells more of it.
    colors: [readLead(lead), ...pure.map(({ mean, mass }) => ({ ...mean, mass }))].slice(0, MOST_SWATCHES),
    standing: {
      rival: second ? rankOf(ranks, second) / rankOf(ranks, lead) : 0,
      close: Math.min(1, lead.peak / lead.mass),
      sure: lead.sure / lead.mass,
      whole: regions[lead.index]?.whole ?? 0,
      part: figure && !slot ? lead.mass / total : 1,
      said: terms.length ? fitOf(lead, terms) : null,
    },
    contenders: shades.map((shade) => ({ l: shade.l, a: shade.a, b: shade.b, rank: rankOf(ranks, shade) })),
  };
}

/** The statement colour: read where it is densest, since folds must not pull it, as far as it is dense there. */
function readLead({ l, a, b, mean, peak, mass }: Shade): Chosen {
  const thin = Math.max(0, 1 - peak / mass / DENSE);
  return { l: l + thin * (mean.l - l), a: a + thin * (mean.a - a), b: b + thin * (mean.b - b), mass };
}

const isLikeSkin = ({ l, a, b }: Shade): boolean => skinLikeness(l / 100, a / 100, b / 100) > SKIN;

const rankOf = (ranks: readonly number[], { index }: Shade): number => ranks[index] ?? 0;
