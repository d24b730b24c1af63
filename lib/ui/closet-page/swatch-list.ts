import type { Oklab } from "../../color/oklab.ts";
import type { Finish, Swatch } from "../../sample/palette.ts";

/** Most swatches one piece may have. */
export const MOST_SWATCHES = 6;

/** Smallest share a colour can be given by hand. */
export const SMALLEST_SHARE = 0.02;

/** With another colour at one place. The finish goes: it was said of the old colour. */
export function recolour(swatches: readonly Swatch[], at: number, oklab: Oklab): readonly Swatch[] {
  return swatches.map((swatch, index) => (index === at ? { oklab, share: swatch.share } : swatch));
}

/** With a metal said of one place, or taken back. */
export function refinish(swatches: readonly Swatch[], at: number, finish: Finish | null): readonly Swatch[] {
  return swatches.map(({ oklab, share, finish: before }, index) => {
    const kept = index === at ? finish : before;
    return { oklab, share, ...(kept && { finish: kept }) };
  });
}

/** With one share set; the others keep their proportions and all sum to 1. */
export function reshare(swatches: readonly Swatch[], at: number, share: number): readonly Swatch[] {
  const others = swatches.length - 1;
  if (others === 0) return swatches.map((swatch) => ({ ...swatch, share: 1 }));
  const set = Math.min(1 - SMALLEST_SHARE * others, Math.max(SMALLEST_SHARE, share));
  const rest = swatches.reduce((sum, swatch, index) => (index === at ? sum : sum + swatch.share), 0);
  return swatches.map((swatch, index) => {
    if (index === at) return { ...swatch, share: set };
    return { ...swatch, share: (1 - set) * (rest > 0 ? swatch.share / rest : 1 / others) };
  });
}

/** With one more colour, given an equal part. */
export function addColour(swatches: readonly Swatch[], oklab: Oklab): readonly Swatch[] {
  if (swatches.length >= MOST_SWATCHES) return swatches;
  const added = [...swatches, { oklab, share: 0 }];
  return reshare(added, added.length - 1, 1 / added.length);
}

/** Without one colour; the others take its share. */
export function dropColour(swatches: readonly Swatch[], at: number): readonly Swatch[] {
  const left = swatches.filter((_, index) => index !== at);
  const sum = left.reduce((total, swatch) => total + swatch.share, 0);
  return left.map((swatch) => ({ ...swatch, share: sum > 0 ? swatch.share / sum : 1 / left.length }));
}
