declare module "quantize" {
  type Color = readonly [red: number, green: number, blue: number];
  /** A box of the median cut. */
  interface Box {
    avg(): Color;
    /** Pixels in it. */
    count(): number;
  }
  /** The boxes of a picture; false where there are no pixels. */
  export default function quantize(
    pixels: readonly Color[],
    colors: number,
  ): { readonly vboxes: { map<Value>(read: (entry: { readonly vbox: Box }) => Value): Value[] } } | false;
}
