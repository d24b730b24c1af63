/**
 * Colour names of fabrics: P. Centore, "Beige, aqua, fuchsia, etc.: Definitions for some non-basic surface colour names",
 * Journal of the International Colour Association 25:24–54, 2020; centroids over about 16,000 measured, named fabric samples of the
 * Color Association of the United States. The 20 non-basic Munsell notations are the paper's Table 1; the 10 basic ones
 * are centroids of its polyhedra, worked out from an open transcription (Apache-2.0). sRGB by npm munsell 1.1.6.
 */
export const CAUS_FABRICS: readonly {
  readonly name: string;
  readonly basic: boolean;
  readonly munsell: string;
  readonly hex: string;
}[] = [
  { name: "aqua", basic: false, munsell: "7.4BG 6.2/3.4", hex: "#70a2a0" },
  { name: "beige", basic: false, munsell: "6.7YR 6.1/3.4", hex: "#b09076" },
  { name: "coral", basic: false, munsell: "6.5R 5.8/8.3", hex: "#cf756b" },
  { name: "fuchsia", basic: false, munsell: "4.8RP 4.1/10.3", hex: "#a03f6f" },
  { name: "gold", basic: false, munsell: "9.8YR 6.4/7.4", hex: "#c79549" },
  { name: "lavender", basic: false, munsell: "5.6P 5.4/4.8", hex: "#927c9c" },
  { name: "lilac", basic: false, munsell: "7.8P 5.6/4.8", hex: "#9d809c" },
  { name: "magenta", basic: false, munsell: "3.8RP 3.4/9.4", hex: "#873064" },
  { name: "mauve", basic: false, munsell: "1.2RP 5.1/3.9", hex: "#917386" },
  { name: "navy", basic: false, munsell: "7.3PB 2.1/3.6", hex: "#2e314b" },
  { name: "peach", basic: false, munsell: "2.9YR 7.0/5.9", hex: "#dea07f" },
  { name: "rose", basic: false, munsell: "0.5R 5.0/7.7", hex: "#b3616e" },
  { name: "rust", basic: false, munsell: "9.4R 3.9/7.4", hex: "#944736" },
  { name: "sand", basic: false, munsell: "7.6YR 6.3/3.2", hex: "#b4967b" },
  { name: "tan", basic: false, munsell: "6.3YR 5.2/4.1", hex: "#9d775a" },
  { name: "taupe", basic: false, munsell: "3.2YR 4.7/1.4", hex: "#7f6f68" },
  { name: "teal", basic: false, munsell: "1.6B 3.3/4.5", hex: "#075763" },
  { name: "turquoise", basic: false, munsell: "1.6B 5.5/5.9", hex: "#33939f" },
  { name: "violet", basic: false, munsell: "7.0P 3.8/6.2", hex: "#734e78" },
  { name: "wine", basic: false, munsell: "2.7R 3.0/4.9", hex: "#6e373d" },
  { name: "blue", basic: true, munsell: "1.8PB 4.8/5.0", hex: "#557895" },
  { name: "brown", basic: true, munsell: "2.2YR 3.5/3.4", hex: "#704b3e" },
  { name: "grey", basic: true, munsell: "3.2Y 5.0/1.9", hex: "#837863" },
  { name: "green", basic: true, munsell: "2.3G 5.0/4.0", hex: "#5a8366" },
  { name: "orange", basic: true, munsell: "2.5YR 6.1/10.3", hex: "#de7c44" },
  { name: "pink", basic: true, munsell: "0.7R 6.1/7.2", hex: "#cc8189" },
  { name: "purple", basic: true, munsell: "4.3P 3.0/6.5", hex: "#5a3b6b" },
  { name: "red", basic: true, munsell: "5.1R 3.9/9.6", hex: "#a13a3e" },
  { name: "white", basic: true, munsell: "2.2Y 8.3/1.6", hex: "#dacfba" },
  { name: "yellow", basic: true, munsell: "3.9Y 7.8/8.0", hex: "#e1c058" },
];
