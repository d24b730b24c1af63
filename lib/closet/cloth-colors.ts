import { oklabFromRgb8 } from "../color/convert.ts";
import type { Oklab } from "../color/oklab.ts";

/**
 * The colours that a quick start offers. Those marked Centore are sRGB values of the centroids of named fabric
 * samples in P. Centore, "Beige, aqua, fuchsia, etc.", Journal of the International Colour Association 25 (2020); one
 * is a centroid of ISCC-NBS (K. L. Kelly, D. B. Judd, NBS SP 440, 1976);
 * the others are typical cloth of that name (common practice, no source).
 */
export const CLOTH_COLORS = {
  black: rgb(0x1a, 0x1a, 0x1b),
  charcoal: rgb(0x44, 0x45, 0x48),
  grey: rgb(0x93, 0x94, 0x95),
  white: rgb(0xf4, 0xf3, 0xef),
  cream: rgb(0xee, 0xe3, 0xc8),
  beige: rgb(0xc8, 0xad, 0x8d),
  camel: rgb(0xc1, 0x9a, 0x6b), // Kelly & Judd: light yellowish brown
  tan: rgb(0x9d, 0x77, 0x5a), // Centore
  brown: rgb(0x70, 0x4b, 0x3e), // Centore
  navy: rgb(0x25, 0x2c, 0x48),
  denim: rgb(0x3f, 0x5f, 0x8a),
  "light blue": rgb(0xa9, 0xc4, 0xe2),
  cobalt: rgb(0x22, 0x4f, 0xa8),
  teal: rgb(0x07, 0x57, 0x63), // Centore
  green: rgb(0x2f, 0x6b, 0x47),
  olive: rgb(0x64, 0x66, 0x3d),
  mustard: rgb(0xc8, 0x9b, 0x2f),
  yellow: rgb(0xe1, 0xc0, 0x58), // Centore
  orange: rgb(0xde, 0x7c, 0x44), // Centore
  rust: rgb(0x94, 0x47, 0x36), // Centore
  red: rgb(0xb3, 0x2a, 0x33),
  burgundy: rgb(0x5e, 0x24, 0x30),
  pink: rgb(0xe0, 0xa3, 0xab),
  fuchsia: rgb(0xa0, 0x3f, 0x6f), // Centore
  lilac: rgb(0x9d, 0x80, 0x9c), // Centore
  purple: rgb(0x5a, 0x3b, 0x6b), // Centore
} as const satisfies Readonly<Record<string, Oklab>>;

/** Name of a colour that a quick start offers. */
export type ClothColor = keyof typeof CLOTH_COLORS;

function rgb(r: number, g: number, b: number): Oklab {
  return oklabFromRgb8(r, g, b);
}
