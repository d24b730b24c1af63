import type { ColorTerm } from "../words/color-term.ts";
import { type NamedColor, readNames } from "./name-table.ts";

/** The strongest colours of screens, by the word of the XKCD colour survey (R. Munroe, 2010; CC0) or of CSS Color 4. */
const SCREEN: Readonly<Partial<Record<ColorTerm, readonly string[]>>> = {
  red: ["e50000", "ff000d"],
  orange: ["f97306"],
  yellow: ["ffff14"],
  green: ["15b01a", "01ff07", "aaff32", "008000"],
  turquoise: ["00ffff", "06c2ac", "40e0d0"],
  blue: ["0343df", "0203e2"],
  navy: ["000080"],
  purple: ["7e1e9c", "800080"],
  fuchsia: ["ed0dd9", "c20078", "ff028d"],
  burgundy: ["800000"],
};

/**
 * Fabrics that have a name of their own: P. Centore, JAIC 25:24–54, 2020, Table 1 (aqua as turquoise, lilac as lavender,
 * magenta as fuchsia, sand as beige, tan as camel, wine as burgundy, gold as mustard); and the centroid of the
 * fabrics that the trade calls white, which are yellowish.
 */
const FABRIC: Readonly<Partial<Record<ColorTerm, readonly string[]>>> = {
  beige: ["b09076", "b4967b"],
  burgundy: ["6e373d"],
  camel: ["9d775a"],
  coral: ["cf756b"],
  cream: ["dacfba"],
  fuchsia: ["a03f6f", "873064"],
  lavender: ["927c9c", "9d809c"],
  mustard: ["c79549"],
  navy: ["2e314b"],
  peach: ["dea07f"],
  purple: ["734e78"],
  rust: ["944736"],
  teal: ["075763"],
  turquoise: ["70a2a0", "33939f"],
};

/**
 * Fabrics of the same paper whose name goes before a basic term, said of the colours that are nearest to them. Those that the trade calls
 * grey are yellowish, which it calls warm (common practice, no source).
 */
const FABRIC_WORDS: readonly (readonly [hex: string, word: string, term: ColorTerm])[] = [
  ["917386", "mauve", "purple"],
  ["837863", "warm", "grey"],
  ["b3616e", "rose", "pink"],
  ["7f6f68", "taupe", "brown"],
];

/** Undyed camel hair, which lies between the camels and the mustards above. Common practice, no source. */
const FIBRE: Readonly<Partial<Record<ColorTerm, readonly string[]>>> = { camel: ["b48a57"] };

/** Colours that the ISCC-NBS centroids, which are of surfaces and name no fabrics, leave open; by their term, and the fabric's word. */
export const TERM_ANCHORS: readonly (NamedColor & { readonly term: ColorTerm; readonly word?: string })[] = [
  ...[SCREEN, FABRIC, FIBRE].flatMap((source) =>
    Object.entries(source).flatMap(([term, colors]) =>
      readNames(colors.map((hex) => `${hex} ${term}`).join("|")).map((entry) => ({
        ...entry,
        term: term as ColorTerm,
      })),
    ),
  ),
  ...FABRIC_WORDS.flatMap(([hex, word, term]) =>
    readNames(`${hex} ${term}`).map((entry) => ({ ...entry, term, word })),
  ),
];
