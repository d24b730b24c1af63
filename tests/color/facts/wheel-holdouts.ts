/**
 * What further sources call the primaries and secondaries of the artist's circle; none of them placed a knot of the wheel. Corners of the
 * paint cube: N. Gossett, B. Chen, "Paint Inspired Color Mixing and Compositing for Visualization", IEEE InfoVis 2004, section 2.1.
 * Survey on screens: Y. Kim, K. Thayer, G. Silva Gorsky, J. Heer, EuroVis Short Papers 2019 (see uw-names.ts).
 */
export const PAINT_CUBE = {
  red: "#ff0000",
  orange: "#ff8000",
  yellow: "#ffff00",
  green: "#00a833",
  blue: "#2a5f99",
  violet: "#800080",
} as const;
export const SCREEN_SURVEY = {
  red: "#e42833",
  orange: "#f48425",
  yellow: "#efe433",
  green: "#5bc256",
  blue: "#2778e0",
  violet: "#9443c0",
} as const;

/**
 * The other word that a source of wheel-names.ts has for a step: "orange" and "violet" of CSS Color 4, "violet" of XKCD, "strong purple" of
 * ISCC-NBS, "violet" of the fabrics.
 */
export const OTHER_WORDS = {
  css: { orange: "#ffa500", violet: "#ee82ee" },
  xkcd: { violet: "#9a0eea" },
  iscc: { violet: "#875692" },
  caus: { violet: "#734e78" },
} as const;
