import { placeAmong } from "./how-they-differ.ts";
import { type ColorName, lookDifferent, nameColor, tellApart } from "./name-color.ts";
import type { Oklab } from "./oklab.ts";

/** A colour as it is shown; a swatch of a palette is one. `finish`: the metal that a person or the words say it is. */
interface Shown {
  readonly oklab: Oklab;
  readonly finish?: string;
}

/** The names of a swatch; its everyday one is its metal, where it is one. Colour alone is never a metal. @throws ColorError when a part is not finite. */
export function nameSwatch({ oklab, finish }: Shown): ColorName {
  const name = nameColor(oklab);
  return finish === undefined ? name : { ...name, everyday: finish };
}

/** What stands beside a swatch that is shown alone: "deep teal", or its metal. */
export function swatchName({ oklab, finish }: Shown): string {
  return finish ?? nameColor(oklab).everyday;
}

/**
 * What stands beside swatches that are shown together, in their order. Those that share a name and look different are told
 * apart: two as a pair, more by their order.
 */
export function swatchNames(swatches: readonly Shown[]): readonly string[] {
  const names = swatches.map(nameSwatch);
  return names.map((name) => {
    const namesakes = names.filter(({ everyday }) => everyday === name.everyday);
    const rivals = namesakes.filter((other) => lookDifferent(name, other));
    const [rival] = rivals;
    if (rival === undefined) return name.everyday;
    if (namesakes.length === 2) return tellApart(name, rival)[0];
    return `${name.everyday} (${placeAmong(name.oklab, rivals.map(oklabOf), namesakes.map(oklabOf))})`;
  });
}

function oklabOf({ oklab }: ColorName): Oklab {
  return oklab;
}
