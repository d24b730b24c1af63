import { ColorError } from "./color-error.ts";
import { oklabFromRgb8 } from "./convert.ts";
import { ciede2000 } from "./difference.ts";
import { type Lab, labFromOklab } from "./lab.ts";

/** A colour with a name in a published list. */
export interface NamedColor {
  readonly name: string;
  readonly lab: Lab;
}

/** Reads rows of "rrggbb name", parted by "|". */
export function readNames(rows: string): readonly NamedColor[] {
  return rows.split("|").map((row) => {
    const value = Number.parseInt(row.slice(0, 6), 16);
    return {
      name: row.slice(7),
      lab: labFromOklab(oklabFromRgb8(value >> 16, (value >> 8) & 255, value & 255)),
    };
  });
}

/** CIEDE2000 divides a difference in L* by at most this (L* 0 or 100), so that it is never less than the rest of the division. */
const LIGHTNESS_DIVISOR = 1.75;

/** The entry nearest by CIEDE2000; of equally near ones the first. @throws ColorError for an empty list. */
export function nearestName<N extends NamedColor>(names: readonly N[], lab: Lab): N {
  const [l, a, b] = lab;
  let nearest: N | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const entry of names) {
    if (Math.abs(entry.lab[0] - l) > least * LIGHTNESS_DIVISOR) continue;
    const difference = ciede2000(l, a, b, entry.lab[0], entry.lab[1], entry.lab[2]);
    if (difference < least) {
      least = difference;
      nearest = entry;
    }
  }
  if (nearest === undefined) throw new ColorError(`lab ${lab.join(" ")} has no name: it is no colour.`);
  return nearest;
}
