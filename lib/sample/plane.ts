/** One number per pixel or per bin. */
export type Plane = Float32Array | Int32Array | Uint8Array;

/** Element of a plane at an index known to be inside it: the type of a typed array cannot say so itself. */
export function at(plane: Plane, index: number): number {
  return plane[index] as number;
}
