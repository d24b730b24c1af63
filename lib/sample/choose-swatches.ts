import type { ColorTerm } from "../words/color-term.ts";
import type { Slot } from "../words/slot.ts";
import type { Standing } from "./confidence-of.ts";
import { type Shade, shadeOf } from "./find-shades.ts";
import { largestParts } from "./largest-parts.ts";
import type { Picture } from "./picture.ts";
import { at, intAt } from "./plane.ts";
import { isAmong, spanOf } from "./span.ts";
import { bestFit } from "./term-region.ts";

/** 0–1. What a colour keeps when its pixels hardly look like cloth, and the sureness that counts as certain. */
const UNSURE = 0.1;
const SURE = 0.6;
/** 0–1. What a colour keeps that none of the page's words names. */
const UNNAMED = 0.1;
/** Power of the share of a colour's largest connected part: cloth hangs together, skin shows in several places. */
const WHOLENESS = 0.6;
/** A strong colour gains this much over a neutral one where no person is seen: soles, shadows and props are neutral. */
const STRONG = 1;
/** OKLab × 100. Chroma that counts as strong. */
const STRONG_CHROMA = 10;
/** Smallest share of the cloth that becomes a swatch. */
const SMALLEST_SHARE = 0.05;
/** 0–1. Of a colour's pixels so many must weigh as cloth, or it is the backdrop seen through. */
const OWN = 0.5;
/** 0–1. Of a further colour so much must lie among the first one's pixels: else it is skin or another garment. */
const AMONG = 0.5;
/** Pieces that are photographed alone, so that all that is not backdrop belongs to them. */
const ALONE: readonly Slot[] = ["shoes", "bag", "accessory", "jewellery", "headwear", "legwear"];
/** 0–1. A colour between two others is their blend unless this part of it lies inside itself. */
const CORE = 0.15;
/** Where on the way from one colour to the other a blend lies, and how far off it (OKLab × 100). */
const BLEND_END = 0.15;
const BLEND_OFF = 6;
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
  readonly standing: Standing;
}

/** Which colours are the piece: the statement colour by mass, place and words, then those that lie among it. */
export function chooseSwatches(
  picture: Picture,
  cloth: Float32Array,
  shades: readonly Shade[],
  { figure, slot, terms }: Scene,
): Chosen | null {
  const total = shades.reduce((sum, shade) => sum + shade.mass, 0);
  const fitOf = (shade: Shade): number => bestFit(terms, shade.l / 100, shade.a / 100, shade.b / 100);
  const parts = largestParts(picture, shadeOf, cloth, shades.length);
  const wholeness = (shade: Shade): number => (parts[shades.indexOf(shade)] ?? 0) / shade.mass;
  const standing = (shade: Shade): number => {
    const whole = figure ? wholeness(shade) ** WHOLENESS : 1;
    const sureness = UNSURE + (1 - UNSURE) * Math.min(1, shade.sure / shade.mass / SURE);
    const strong = figure ? 1 : 1 + STRONG * Math.min(1, Math.hypot(shade.a, shade.b) / STRONG_CHROMA);
    return (
      shade.placed * whole * strong * sureness * (terms.length ? UNNAMED + (1 - UNNAMED) * fitOf(shade) : 1)
    );
  };
  const ranked = [...shades].sort((p, q) => standing(q) - standing(p));
  const lead = ranked[0];
  if (!lead) return null;
  const among = shareAmong(picture, cloth, shades.indexOf(lead), shades.length);
  const alone = slot !== null && ALONE.includes(slot);
  const rest = ranked.slice(1).filter((shade) => {
    const inside = alone || (among[shades.indexOf(shade)] ?? 0) / shade.mass > AMONG;
    return inside && shade.mass > SMALLEST_SHARE * total && shade.mass > OWN * shade.area;
  });
  rest.sort((p, q) => q.mass - p.mass);
  const core = coreOf(picture, shades.length);
  const pure = [lead, ...rest].filter((shade, _, all) => {
    const inner = (core[shades.indexOf(shade)] ?? 0) / shade.area;
    return shade === lead || inner > CORE || !isBetween(shade, all);
  });
  const second = ranked[1];
  return {
    shades: pure.slice(0, MOST_SWATCHES),
    standing: {
      rival: second ? standing(second) / standing(lead) : 0,
      close: Math.min(1, lead.peak / lead.mass),
      sure: lead.sure / lead.mass,
      whole: wholeness(lead),
      part: figure && !slot ? lead.mass / total : 1,
      said: terms.length ? fitOf(lead) : null,
    },
  };
}

/** Whether a colour lies between two others that hold more: the blend along their edges. */
function isBetween(shade: Shade, all: readonly Shade[]): boolean {
  const more = all.filter(({ mass }) => mass > shade.mass);
  return more.some((p) =>
    more.some((q) => {
      const l = q.l - p.l;
      const a = q.a - p.a;
      const b = q.b - p.b;
      const along =
        ((shade.l - p.l) * l + (shade.a - p.a) * a + (shade.b - p.b) * b) / (l * l + a * a + b * b || 1);
      if (along < BLEND_END || along > 1 - BLEND_END) return false;
      const off = Math.hypot(p.l + along * l - shade.l, p.a + along * a - shade.a, p.b + along * b - shade.b);
      return off < BLEND_OFF;
    }),
  );
}

/** Pixels of each shade whose four neighbours are of the same shade. */
function coreOf({ width, count }: Picture, shades: number): number[] {
  const core: number[] = new Array(shades).fill(0);
  for (let i = width; i < count - width; i++) {
    const shade = intAt(shadeOf, i);
    if (shade < 0 || intAt(shadeOf, i - 1) !== shade || intAt(shadeOf, i + 1) !== shade) continue;
    if (intAt(shadeOf, i - width) !== shade || intAt(shadeOf, i + width) !== shade) continue;
    core[shade] = (core[shade] ?? 0) + 1;
  }
  return core;
}

/** Mass of each shade between pixels of the lead, both across and down. */
function shareAmong(picture: Picture, cloth: Float32Array, lead: number, count: number): number[] {
  const span = spanOf(picture, (i) => intAt(shadeOf, i) === lead && at(cloth, i) > 0.5);
  const sums: number[] = new Array(count).fill(0);
  for (let y = 0, i = 0; y < picture.height; y++) {
    for (let x = 0; x < picture.width; x++, i++) {
      const shade = intAt(shadeOf, i);
      if (shade >= 0 && isAmong(span, x, y)) sums[shade] = (sums[shade] ?? 0) + at(cloth, i);
    }
  }
  return sums;
}
