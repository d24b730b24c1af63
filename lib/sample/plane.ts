/**
 * Element of a typed array at an index known to be inside it: the type of a typed array cannot say so itself.
 * One function per kind of array, because engines are slow where one line reads several kinds.
 */
export function at(plane: Float32Array, index: number): number {
  return plane[index] as number;
}

/** The same for sums: in double precision, since adding to a single one twice in a row makes the second wait for two conversions. */
export function sumAt(plane: Float64Array, index: number): number {
  return plane[index] as number;
}

/** The same for whole numbers: bins, labels. */
export function intAt(plane: Int32Array, index: number): number {
  return plane[index] as number;
}

/** The same for numbers of bins. */
export function shortAt(plane: Int16Array, index: number): number {
  return plane[index] as number;
}

/** The same for small whole numbers: flags. */
export function byteAt(plane: Uint8Array, index: number): number {
  return plane[index] as number;
}
