import { hueOf } from "./convert.ts";
import { din99oFromLab } from "./din99o.ts";
import { labFromOklab } from "./lab.ts";
import type { Oklab } from "./oklab.ts";
import { angleBetween, wheelFromHue } from "./wheel.ts";

/** The hues towards which a colour is said to lean in the textile trade, in degrees on the artist's wheel. */
const TOWARDS: readonly (readonly [wheel: number, word: string])[] = [
  [0, "the redder"],
  [120, "the yellower"],
  [180, "the greener"],
  [240, "the bluer"],
];

const FULL_TURN = 360;

/** By how many a colour is not the lightest or the strongest. A palette has at most six. */
const ORDINALS = ["", "second ", "third ", "fourth ", "fifth "];

/**
 * What each of two colours is beside the other, by what parts them most in DIN99o: "the lighter" and "the darker", "the stronger" and
 * "the greyer", or a hue towards which each leans ("the redder", "the bluer"). Symmetric.
 */
export function howTheyDiffer(one: Oklab, other: Oklab): readonly [one: string, other: string] {
  const [l1, a1, b1] = din99oOf(one);
  const [l2, a2, b2] = din99oOf(other);
  const lightness = l1 - l2;
  const chroma = Math.hypot(a1, b1) - Math.hypot(a2, b2);
  const hueSquared = (a1 - a2) ** 2 + (b1 - b2) ** 2 - chroma ** 2;
  if (lightness ** 2 >= Math.max(chroma ** 2, hueSquared))
    return lightness > 0 ? ["the lighter", "the darker"] : ["the darker", "the lighter"];
  if (chroma ** 2 >= hueSquared)
    return chroma > 0 ? ["the stronger", "the greyer"] : ["the greyer", "the stronger"];
  return [leaningOf(one, other), leaningOf(other, one)];
}

/** The nearest of those hues to which a colour is nearer than the other is. No half of the wheel is without one of them. */
function leaningOf(color: Oklab, other: Oklab): string {
  const here = wheelFromHue(hueOf(color));
  const there = wheelFromHue(hueOf(other));
  let leaning = "";
  let least = Number.POSITIVE_INFINITY;
  for (const [wheel, word] of TOWARDS) {
    const distance = angleBetween(here, wheel);
    const rank = distance < angleBetween(there, wheel) ? distance : distance + FULL_TURN;
    if (rank < least) {
      least = rank;
      leaning = word;
    }
  }
  return leaning;
}

/**
 * What a colour is among three or more: its place in the order from light to dark or from strong to grey, whichever of the
 * two is the longer way in DIN99o. `others`: those of `all` that it is to be told from.
 */
export function placeAmong(color: Oklab, others: readonly Oklab[], all: readonly Oklab[]): string {
  const byLightness = spanOf(all.map(lightnessOf)) >= spanOf(all.map(strengthOf));
  const [measure, most, least] = byLightness
    ? ([lightnessOf, "lightest", "darkest"] as const)
    : ([strengthOf, "strongest", "greyest"] as const);
  const before = others.filter((other) => measure(other) > measure(color)).length;
  return before === others.length ? `the ${least}` : `the ${ORDINALS[before] ?? ""}${most}`;
}

function din99oOf(color: Oklab) {
  return din99oFromLab(labFromOklab(color));
}

function lightnessOf(color: Oklab): number {
  return din99oOf(color)[0];
}

function strengthOf(color: Oklab): number {
  const [, a, b] = din99oOf(color);
  return Math.hypot(a, b);
}

function spanOf(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
