/** A photo: RGBA, four bytes a pixel, row by row from the top left. */
export interface Photo {
  readonly data: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}
