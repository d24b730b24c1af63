import type { ColorTerm } from "../words/color-term.ts";
import type { Slot } from "../words/slot.ts";
import { type Shade, shadeOf } from "./find-shades.ts";
import { largestParts } from "./largest-parts.ts";
import type { Picture } from "./picture.ts";
import { at } from "./plane.ts";
import { isAmong, spanOf } from "./span.ts";
import { bestFit } from "./term-region.ts";

/** 0–1. What a colour keeps when its pixels hardly look like cloth, and the sureness that counts as certain. */
const UNSURE = 0.1;
const SURE = 0.6;
/** 0–1. What a colour keeps that none of the page's words names. */
const UNNAMED = 0.1;
/** Power of the share of a colour's largest connected part: cloth hangs together, skin shows in several places. */
const WHOLENESS = 0.5;
/** Smallest share of the cloth that becomes a swatch. */
const SMALLEST_SHARE = 0.05;
/** 0–1. Of a colour's pixels so many must weigh as cloth, or it is the backdrop seen through. */
const OWN = 0.4;
/** 0–1. Of a further colour so much must lie among the first one's pixels: else it is skin or another garment. */
const AMONG = 0.3;
/** Pieces that are photographed alone, so that all that is not backdrop belongs to them. */
const ALONE: readonly Slot[] = ["shoes", "bag", "accessory", "jewellery", "headwear", "legwear"];
/** A palette has at most so many swatches. */
const MOST_SWATCHES = 6;

/** What is known about the picture beside its pixels. `figure`: the cloth reaches over it as a person does. */
export interface Scene {
  readonly figure: boolean;
  readonly slot: Slot | null;
  readonly terms: readonly ColorTerm[];
}

export interface Chosen {
  /** The piece's colours, the statement colour first, then by mass. */
  readonly shades: readonly Shade[];
  /** Standing of the second-best colour against the first, 0–1. */
  readonly rival: number;
  /** Fit of the first colour with the words, 0–1; −1 without words. */
  readonly said: number;
}

/** Which colours are the piece: the statement colour by mass, place and words, then those that lie among it. */
export function chooseSwatches(
  picture: Picture,
  cloth: Float32Array,
  shades: readonly Shade[],
  { figure, slot, terms }: Scene,
): Chosen {
  const total = shades.reduce((sum, shade) => sum + shade.mass, 0);
  const fitOf = (shade: Shade): number => bestFit(terms, shade.l / 100, shade.a / 100, shade.b / 100);
  const parts = largestParts(picture, shadeOf, cloth, shades.length);
  const standing = (shade: Shade): number => {
    const whole = figure ? ((parts[shades.indexOf(shade)] ?? 0) / shade.mass) ** WHOLENESS : 1;
    const sureness = UNSURE + (1 - UNSURE) * Math.min(1, shade.sure / shade.mass / SURE);
    return shade.placed * whole * sureness * (terms.length ? UNNAMED + (1 - UNNAMED) * fitOf(shade) : 1);
  };
  const ranked = [...shades].sort((p, q) => standing(q) - standing(p));
  const lead = ranked[0];
  if (!lead) return { shades: [], rival: 0, said: -1 };
  const among = shareAmong(picture, cloth, shades.indexOf(lead), shades.length);
  const alone = slot !== null && ALONE.includes(slot);
  const rest = ranked.slice(1).filter((shade) => {
    const inside = alone || (among[shades.indexOf(shade)] ?? 0) / shade.mass > AMONG;
    return inside && shade.mass > SMALLEST_SHARE * total && shade.mass > OWN * shade.area;
  });
  rest.sort((p, q) => q.mass - p.mass);
  const second = ranked[1];
  return {
    shades: [lead, ...rest].slice(0, MOST_SWATCHES),
    rival: second ? standing(second) / standing(lead) : 0,
    said: terms.length ? fitOf(lead) : -1,
  };
}

/** Mass of each shade between pixels of the lead, both across and down. */
function shareAmong(picture: Picture, cloth: Float32Array, lead: number, count: number): number[] {
  const span = spanOf(picture, (i) => at(shadeOf, i) === lead && at(cloth, i) > 0.5);
  const sums: number[] = new Array(count).fill(0);
  for (let y = 0, i = 0; y < picture.height; y++) {
    for (let x = 0; x < picture.width; x++, i++) {
      const shade = at(shadeOf, i);
      if (shade >= 0 && isAmong(span, x, y)) sums[shade] = (sums[shade] ?? 0) + at(cloth, i);
    }
  }
  return sums;
}
