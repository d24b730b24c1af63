/** The twelve steps of the artist's wheel, from red at 0 degrees, 30 degrees each (J. Itten, "The Art of Color", 1961). */
export const WHEEL_STEPS = [
  "red",
  "red-orange",
  "orange",
  "yellow-orange",
  "yellow",
  "yellow-green",
  "green",
  "blue-green",
  "blue",
  "blue-violet",
  "violet",
  "red-violet",
] as const;

/** Degrees from one step to the next. */
export const STEP_DEGREES = 360 / WHEEL_STEPS.length;

/** The nearest step's name for an angle of the wheel in degrees. */
export function stepName(angle: number): string {
  const turned = ((angle % 360) + 360) % 360;
  return WHEEL_STEPS[Math.round(turned / STEP_DEGREES) % WHEEL_STEPS.length] ?? "red";
}
