/** One pass of a box blur over `lines` lines of `length` values that lie `step` apart. */
function pass(
  from: Float32Array,
  to: Float32Array,
  [lines, jump, length, step]: readonly [number, number, number, number],
  radius: number,
): void {
  const weight = 1 / (2 * radius + 1);
  for (let line = 0; line < lines; line++) {
    const start = line * jump;
    const end = start + (length - 1) * step;
    const [first, last] = [from[start] ?? 0, from[end] ?? 0];
    let sum = first * (radius + 1);
    for (let i = 1; i <= radius; i++) sum += from[Math.min(end, start + i * step)] ?? 0;
    for (let i = 0, at = start; i < length; i++, at += step) {
      to[at] = sum * weight;
      sum += i + radius + 1 < length ? (from[at + (radius + 1) * step] ?? 0) : last;
      sum -= i - radius >= 0 ? (from[at - radius * step] ?? 0) : first;
    }
  }
}

/**
 * A near-Gaussian blur: three box blurs along each axis; edges repeat. `radius` in pixels along rows, `upright` along
 * columns, the same unless given.
 */
export function blurred(
  field: Float32Array,
  width: number,
  height: number,
  radius: number,
  upright = radius,
): Float32Array {
  const boxOf = (reach: number): number => Math.max(1, Math.round(reach / 1.7));
  const [from, to] = [Float32Array.from(field), new Float32Array(field.length)];
  for (let i = 0; i < 3; i++) {
    pass(from, to, [height, width, width, 1], boxOf(radius));
    pass(to, from, [width, 1, height, width], boxOf(upright));
  }
  return from;
}
