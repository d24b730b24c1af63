/** A place on a drawn wheel: red at the top, clockwise, y downwards as SVG has it. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** Where an angle of the artist's wheel (degrees) lies at `radius` from the middle. */
export function onWheel(angle: number, radius: number): Place {
  const turn = (angle * Math.PI) / 180;
  return { x: radius * Math.sin(turn), y: -radius * Math.cos(turn) };
}

/** SVG path of an arc at `radius` from one wheel angle clockwise to another, less than a full turn. */
export function arcPath(from: number, to: number, radius: number): string {
  const span = (((to - from) % 360) + 360) % 360;
  const start = onWheel(from, radius);
  const end = onWheel(from + span, radius);
  const large = span > 180 ? 1 : 0;
  return `M${fixed(start.x)} ${fixed(start.y)}A${radius} ${radius} 0 ${large} 1 ${fixed(end.x)} ${fixed(end.y)}`;
}

function fixed(value: number): string {
  return value.toFixed(2);
}
