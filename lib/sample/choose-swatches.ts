import type { ColorTerm } from "../words/color-term.ts";
import type { Slot } from "../words/slot.ts";
import type { Standing } from "./confidence-of.ts";
import { findParts } from "./find-parts.ts";
import { type Shade, shadeOf } from "./find-shades.ts";
import { meanGround } from "./ground.ts";
import { type InHead, readHeadZone } from "./head-zone.ts";
import { isBlend } from "./is-blend.ts";
import type { Raster } from "./raster.ts";
import { CONTACT, contactOf, type Region, readRegions, shareOwn } from "./shade-regions.ts";
import { skinLikeness } from "./skin-likeness.ts";
import { leavingRows } from "./slot-place.ts";
import { bestFit } from "./term-region.ts";

/** 0–1. What a colour keeps when its pixels hardly look like cloth, and the sureness that counts as certain. */
const UNSURE = 0.1;
const SURE = 0.6;
/** 0–1. What a colour keeps that none of the page's words names. */
const UNNAMED = 0.1;
/** Power of the share of a colour's largest connected part: cloth hangs together, skin shows in several places. */
const WHOLENESS = 0.6;
/**
 * 0–1. What a colour keeps that leaves the picture: where the slot's wearer does, or anywhere without a person. On labelled
 * pictures of people, real and generated, 10 of 73 of a garment's own colours left it there and 35 of 107 others: a ratio
 * of chances of 0.33, taken a little softer (own measurement).
 */
const LEAVES = 0.4;
/**
 * 0–1. What a colour loses that is like skin and makes up a figure's head: by how much of the head it is and how much of it
 * is there, each an S-curve's middle and softness. By its colour alone nothing is taken for skin.
 */
const SKIN = 0.6;
const HEAD_SHARE = [0.25, 0.06] as const;
const OF_HEAD = [0.12, 0.03] as const;
/** A strong colour gains this much over a neutral one where no person is seen: soles, shadows and props are neutral. */
const STRONG = 1;
/** OKLab × 100. Chroma that counts as strong. */
const STRONG_CHROMA = 10;
/** Smallest share of the cloth that becomes a swatch. */
const SMALLEST_SHARE = 0.05;
/** 0–1. Mean weight of a further colour's pixels below which it is the backdrop seen through. */
const OWN = 0.6;
/** Pieces that are photographed alone, so that all that is not backdrop and stays in the picture belongs to them. */
const ALONE: readonly Slot[] = ["shoes", "bag", "accessory", "jewellery", "headwear", "legwear"];
/** 0–1. A colour between two others, or one and the ground, is their blend unless this part of it lies inside itself. */
const CORE = 0.1;
/** A palette has at most so many swatches. */
const MOST_SWATCHES = 6;

/** What is known about the picture beside its pixels. `figure`: the cloth reaches over it as a person does. */
export interface Scene {
  readonly figure: boolean;
  readonly slot: Slot | null;
  readonly terms: readonly ColorTerm[];
  /** How well other photos of the piece back a colour, as a factor of what speaks for it; null without any. */
  readonly backing: Backing | null;
}

/** A factor for a colour of the picture, OKLab × 100. */
export type Backing = (l: number, a: number, b: number) => number;

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
  const { figure, slot, terms } = scene;
  findParts(sketch, shadeOf, cloth);
  const regions = readRegions(sketch, shades.length);
  const ranks = rankShades(sketch, cloth, shades, regions, scene);
  const [lead, second] = [...shades].sort((p, q) => rankOf(ranks, q) - rankOf(ranks, p));
  if (!lead) return null;
  const total = shades.reduce((sum, shade) => sum + shade.mass, 0);
  const ownShare = shareOwn(sketch, cloth, lead.index, !figure || (slot !== null && ALONE.includes(slot)));
  const further = shades
    .filter((shade) => shade !== lead && shade.sure > OWN * shade.mass)
    .map((shade) => ({ ...shade, mass: shade.mass * ownShare(shade.index) }))
    .filter(({ mass }) => mass > SMALLEST_SHARE * total)
    .sort((p, q) => q.mass - p.mass);
  const ground = meanGround(sketch);
  const ends = [lead, ...further, ...(ground ? [{ ...ground, mass: Number.POSITIVE_INFINITY }] : [])];
  const pure = further.filter((shade) => (regions[shade.index]?.core ?? 0) > CORE || !isBlend(shade, ends));
  return {
    // The statement colour is read where it is densest, since folds must not pull it; a further one is small and mixed.
    colors: [lead, ...pure.map(({ mean, mass }) => ({ ...mean, mass }))].slice(0, MOST_SWATCHES),
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

const rankOf = (ranks: readonly number[], { index }: Shade): number => ranks[index] ?? 0;

const fitOf = ({ l, a, b }: Shade, terms: readonly ColorTerm[]): number =>
  bestFit(terms, l / 100, a / 100, b / 100);

/** How much a colour is somebody's face, 0–1. */
const faceOf = ({ l, a, b }: Shade, { of, share }: InHead): number =>
  skinLikeness(l / 100, a / 100, b / 100) * above(share, HEAD_SHARE) * above(of, OF_HEAD);

const above = (value: number, [middle, soft]: readonly [number, number]): number =>
  1 / (1 + Math.exp((middle - value) / soft));

/**
 * How much speaks for each shade being the statement colour: mass by place, sureness, connectedness, border, not being a
 * face, words, other photos.
 */
function rankShades(
  sketch: Raster,
  cloth: Float32Array,
  shades: readonly Shade[],
  regions: readonly Region[],
  { figure, slot, terms, backing }: Scene,
): number[] {
  const [top, bottom] = figure ? leavingRows(slot, sketch.height) : [0, sketch.height];
  const contact = figure && !slot ? [] : contactOf(sketch, shades.length, top, bottom);
  const heads = figure && slot !== "headwear" ? readHeadZone(sketch, cloth, shades.length) : [];
  return shades.map((shade) => {
    const head = heads[shade.index];
    const skin = head ? 1 - SKIN * faceOf(shade, head) : 1;
    const whole = figure ? (regions[shade.index]?.whole ?? 0) ** WHOLENESS : 1;
    const leaves = (contact[shade.index] ?? 0) > CONTACT ? LEAVES : 1;
    const sureness = UNSURE + (1 - UNSURE) * Math.min(1, shade.sure / shade.mass / SURE);
    const strong = figure ? 1 : 1 + STRONG * Math.min(1, Math.hypot(shade.a, shade.b) / STRONG_CHROMA);
    const named = terms.length ? UNNAMED + (1 - UNNAMED) * fitOf(shade, terms) : 1;
    const backed = backing ? backing(shade.l, shade.a, shade.b) : 1;
    return shade.placed * whole * leaves * strong * sureness * skin * named * backed;
  });
}
