import type { Lab } from "./lab.ts";

/**
 * Steps of the grey scale for assessing change in colour, ISO 105-A02:1993 clause 2.4: rating and its CIELAB difference.
 * Read from a public preview of EN 20105-A02:1994 with damaged print; the decimal points were put back from memory.
 */
export const GREY_SCALE = [
  ["5", 0],
  ["4-5", 0.8],
  ["4", 1.7],
  ["3-4", 2.5],
  ["3", 3.4],
  ["2-3", 4.8],
  ["2", 6.8],
  ["1-2", 9.6],
  ["1", 13.6],
] as const;

export type GreyGrade = (typeof GREY_SCALE)[number][0];

/** CIELAB difference (CIE 1976), the unit of the grey scale. */
export function deltaE76(a: { readonly lab: Lab }, b: { readonly lab: Lab }): number {
  return Math.hypot(a.lab[0] - b.lab[0], a.lab[1] - b.lab[1], a.lab[2] - b.lab[2]);
}

/** The step of the grey scale nearest to a CIELAB difference: 5 is none, 1 is large. The larger change wins a tie. */
export function greyGradeOf(difference: number): GreyGrade {
  let nearest: (typeof GREY_SCALE)[number] = GREY_SCALE[0];
  for (const step of GREY_SCALE) {
    if (Math.abs(step[1] - difference) <= Math.abs(nearest[1] - difference)) nearest = step;
  }
  return nearest[0];
}
