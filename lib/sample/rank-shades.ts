import type { ColorTerm } from "../words/color-term.ts";
import type { Slot } from "../words/slot.ts";
import type { Shade } from "./find-shades.ts";
import { type InHead, readHeadZone } from "./head-zone.ts";
import type { Raster } from "./raster.ts";
import { CONTACT, contactOf, type Region } from "./shade-regions.ts";
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
 * of chances of 0.33, taken softer: 0.4 to 0.6 measured alike (own measurement).
 */
const LEAVES = 0.5;
/** The same of what lies along the border over more than this part of a side, without a person: a prop, cut off. */
const PROP = 0.28;
const PROP_SIDE = 0.3;
/**
 * 0–1. What a colour loses that is like skin and makes up a figure's head: by how much of the head it is and how much of it
 * is there, each an S-curve's middle and softness. By its colour alone nothing is taken for skin. The form was chosen among
 * eight, the numbers on 44 labelled store pictures in 16 crops each and on the generated ones (own measurement).
 */
const SKIN = 0.65;
const HEAD_SHARE = [0.25, 0.06] as const;
const OF_HEAD = [0.1, 0.025] as const;
/** A strong colour gains this much over a neutral one where no person is seen: soles, shadows and props are neutral. */
const STRONG = 1;
/** OKLab × 100. Chroma that counts as strong. */
const STRONG_CHROMA = 10;
/** What is known about the picture beside its pixels. `figure`: the cloth reaches over it as a person does. */
export interface Scene {
  readonly figure: boolean;
  readonly slot: Slot | null;
  /** Part of the usual share of a picture that the piece takes, 0–1: less where it is small on somebody. */
  readonly part: number;
  readonly terms: readonly ColorTerm[];
  /** How well other photos of the piece back a colour, as a factor of what speaks for it; null without any. */
  readonly backing: Backing | null;
}

/** A factor for a colour of the picture, OKLab × 100. */
export type Backing = (l: number, a: number, b: number) => number;

/** How well a colour fits the words of the page, 0–1. */
export const fitOf = ({ l, a, b }: Shade, terms: readonly ColorTerm[]): number =>
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
export function rankShades(
  sketch: Raster,
  cloth: Float32Array,
  shades: readonly Shade[],
  regions: readonly Region[],
  { figure, slot, part, terms, backing }: Scene,
): number[] {
  const [top, bottom] = figure ? leavingRows(slot, sketch.height) : [0, sketch.height];
  const contact = figure && !slot ? [] : contactOf(sketch, shades.length, top, bottom);
  const heads = figure && slot !== "headwear" ? readHeadZone(sketch, cloth, shades.length) : [];
  return shades.map((shade) => {
    const head = heads[shade.index];
    const skin = head ? 1 - SKIN * faceOf(shade, head) : 1;
    const whole = figure ? (regions[shade.index]?.whole ?? 0) ** WHOLENESS : 1;
    const border = contact[shade.index] ?? 0;
    const prop = !figure && border > PROP_SIDE * Math.max(sketch.width, sketch.height);
    const leaves = prop ? PROP : border > CONTACT ? LEAVES : 1;
    const sureness = UNSURE + (1 - UNSURE) * Math.min(1, shade.sure / shade.mass / SURE);
    const strong = figure ? 1 : 1 + STRONG * Math.min(1, Math.hypot(shade.a, shade.b) / STRONG_CHROMA);
    const named = terms.length ? UNNAMED * part + (1 - UNNAMED) * fitOf(shade, terms) : 1;
    const backed = backing ? backing(shade.l, shade.a, shade.b) : 1;
    return shade.placed * whole * leaves * strong * sureness * skin * named * backed;
  });
}
