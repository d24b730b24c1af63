import type { Knot, Point, Rib } from "./outline.ts";

/** The groups of numbers in a drawing's shorthand: `"0,152 28,154 62,171"`. */
const groups = (text: string): number[][] =>
  text.split(" ").map((group) => {
    const numbers = group.replace("!", "").split(",").map(Number);
    if (numbers.length < 2 || numbers.some(Number.isNaN))
      throw new Error(`"${group}" is not a point, in "${text}".`);
    return numbers;
  });

/** Points out of `x,y` groups. */
export const points = (text: string): Point[] => groups(text).map(([x = 0, y = 0]): Point => [x, y]);

/** Knots out of `x,y` groups; `x,y!` makes a corner. */
export function knots(text: string): Knot[] {
  const corners = text.split(" ").map((group) => group.endsWith("!"));
  return points(text).map(([x, y], i): Knot => (corners[i] ? [x, y, 1] : [x, y]));
}

/** Ribs out of `x,y,half-width` groups. */
export const ribs = (text: string): Rib[] => groups(text).map(([x = 0, y = 0, r = 0]): Rib => [x, y, r]);
