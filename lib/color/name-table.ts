import { ColorError } from "./color-error.ts";
import { oklabFromRgb8 } from "./convert.ts";
import { type Din99o, din99oFromLab } from "./din99o.ts";
import { labFromOklab } from "./lab.ts";
import type { Oklab } from "./oklab.ts";

/** A colour with a name in a published list. */
export interface NamedColor {
  readonly name: string;
  readonly din99o: Din99o;
}

/** Reads rows of "rrggbb name", parted by "|". */
export function readNames(rows: string): readonly NamedColor[] {
  return rows.split("|").map((row) => {
    const value = Number.parseInt(row.slice(0, 6), 16);
    const color = oklabFromRgb8(value >> 16, (value >> 8) & 255, value & 255);
    return { name: row.slice(7), din99o: din99oFromLab(labFromOklab(color)) };
  });
}

/** The entry nearest in DIN99o, where a distance costs next to nothing; of equally near ones the first. @throws ColorError for an empty list. */
export function nearestName<N extends NamedColor>(names: readonly N[], color: Oklab): N {
  const [l, a, b] = din99oFromLab(labFromOklab(color));
  let nearest: N | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const entry of names) {
    const lightness = entry.din99o[0] - l;
    const redness = entry.din99o[1] - a;
    const yellowness = entry.din99o[2] - b;
    const squared = lightness * lightness + redness * redness + yellowness * yellowness;
    if (squared < least) {
      least = squared;
      nearest = entry;
    }
  }
  if (nearest === undefined) throw new ColorError(`oklab ${color.join(" ")} has no name: it is no colour.`);
  return nearest;
}
