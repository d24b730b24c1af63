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

/** SVG path of an arc at `radius` from one wheel angle clockwise to another, less than a full turn; `back`: drawn the other way round. */
export function arcPath(from: number, to: number, radius: number, back = false): string {
  const span = (((to - from) % 360) + 360) % 360;
  const ends = [onWheel(from, radius), onWheel(from + span, radius)].map(
    ({ x, y }) => `${fixed(x)} ${fixed(y)}`,
  );
  const [start, end] = back ? ends.toReversed() : ends;
  return `M${start}A${radius} ${radius} 0 ${span > 180 ? 1 : 0} ${back ? 0 : 1} ${end}`;
}

function fixed(value: number): string {
  return value.toFixed(2);
}
