/**
 * Every number that a colour decision rests on, with unit, range and where it comes from.
 * "Proposal" means ours, made while looking at the named published data; nothing here is a standard unless it says so.
 */

/**
 * OKLCH chroma, 0–0.4. Below it a colour is achromatic: black, grey or white.
 * Proposal from the ISCC-NBS centroids (K. L. Kelly, D. B. Judd, NBS SP 440, 1976): it keeps 30 of the 33 names in
 * grey, white or black and takes 2 of the 234 others.
 */
export const NEUTRAL_CHROMA = 0.02;

/**
 * OKLCH chroma that takes the place of `NEUTRAL_CHROMA` near black and near white, where camera noise and tinted
 * black or white reach further. Proposal, from the ISCC-NBS "-ish black" and "-ish white" blocks.
 */
export const NEUTRAL_CHROMA_AT_ENDS = 0.03;

/** OKLab L, 0–1: darker than this is "near black". Proposal. */
export const NEAR_BLACK_LIGHTNESS = 0.25;

/**
 * OKLab L, 0–1: darker than this everything is black, whatever its chroma. Proposal: a CIELAB lightness of about 1, where no hue
 * can be seen and camera noise makes any.
 */
export const BLACK_WHATEVER_BELOW = 0.14;

/** OKLab L, 0–1: lighter than this is "near white". Proposal. */
export const NEAR_WHITE_LIGHTNESS = 0.93;

/**
 * OKLCH chroma, 0–0.4. Below it the hue is not worth naming: with noise of 0.01 on each OKLab axis the artist's-wheel
 * angle is off by 47° at the 90th percentile (our Monte Carlo over sRGB).
 */
export const HUE_CHROMA = 0.035;

/**
 * Standard deviation of each OKLab axis in a colour read from a good picture (sampler confidence 1). Proposal: it
 * makes a mean CIEDE2000 of 3.2, less than the 5–10 reported for shop photographs and more than sensor noise.
 */
export const AXIS_NOISE_SURE = 0.01;

/** The same for a picture the sampler does not trust at all (confidence 0): mean CIEDE2000 6.3. Proposal. */
export const AXIS_NOISE_UNSURE = 0.02;

/**
 * Degrees on the artist's wheel. No two colours have a smaller uncertainty of their angle, however strong. Proposal: published sources
 * of colour names do not agree on the wheel more closely. Of the nine complements and triads of its primaries and secondaries, 23 of
 * 36 lie within 10° of their place in four sources, and all nine in a fifth. Nine in ten lie within 19°, but so wide a floor would leave
 * one name to 14 % of all angles; 10° leaves it to 44 %.
 */
export const WHEEL_UNCERTAINTY_FLOOR = 10;

/** z of the two-sided 90th percentile of a normal distribution: turns a deviation into a 90th percentile. */
export const Z_OF_90 = 1.6449;

/** Names by hue for one pair, counted: more would say nothing. Proposal. */
export const HUE_NAMES_AT_MOST = 3;

/**
 * Upper edges in degrees (0–180) of the relations of two hues on the artist's wheel. Proposal on a twelve-part wheel (J. Itten, "The Art
 * of Color", 1961: steps of 30°): same hue is half a step; three neighbours span 60° and half a step; a third of the
 * circle is 120° ± 20°; opposite is 180° − 20°; what lies between a third and opposite is split-complementary. 75–100°
 * has no classical name for a pair.
 */
export const SAME_HUE_UP_TO = 15;
export const ANALOGOUS_UP_TO = 75;
export const UNNAMED_UP_TO = 100;
export const TRIADIC_UP_TO = 140;
export const SPLIT_UP_TO = 160;

/** CIEDE2000. No difference that a photo can show: half the median distance of neighbouring ISCC-NBS centroids. Proposal. */
export const NO_VISIBLE_DIFFERENCE = 3;

/**
 * CIEDE2000. Up to here two colours are the same shade for a wearer. Proposal: neighbouring ISCC-NBS centroids are 5.4 apart
 * (median), and a photo is at least 5 off.
 */
export const SAME_SHADE = 6;

/** CIEDE2000. Up to here "the same shade" is still possible, and offered as an alternative. Proposal. */
export const CLOSE_SHADE = 10;

/** CIEDE2000. Above it HyAB is the better figure: CIEDE2000 was fitted to small differences (Abasi et al. 2019). Proposal. */
export const LARGE_DIFFERENCE = 20;

/**
 * OKHWB blackness, 0–1, that the fullest colour of real surfaces has at most hues, and the OKLCH hue (degrees) where it has none, with a
 * cosine between. Least squares over the strongest surface colour of each 10° of hue (M. R. Pointer, "The gamut of real surface
 * colours", Color Res. Appl. 5:145–155, 1980): 0.06 off (root mean square).
 */
export const FULL_SURFACE_BLACK = 0.355;
export const FULL_SURFACE_HUE = 67;

/**
 * Parts of pure colour, white and black, each 0–1, that part the levels. Proposal: chosen on the ISCC-NBS modifiers. They hold for 99 of
 * the 101 rows that allow one reading; chosen without the rows to be judged, for 97 % of them (fifths left out, or whole hues).
 * There is no standard that gives numbers.
 */
export const PURE_COLOR_PART = 0.48;
export const TINT_BLACK_AT_MOST = 0.34;
export const SHADE_WHITE_AT_MOST = 0.15;

/** Parts, 0–1. A level this near in whiteness or blackness is offered as an alternative. Proposal: noise of 0.01–0.02 in OKLab. */
export const LEVEL_HEDGE = 0.04;

/** OKLCH chroma. An achromatic colour this near the neutral limit keeps its other level as an alternative. Proposal. */
export const NEUTRAL_HEDGE = 0.005;

/**
 * Saturation 0–1 (share of the strongest sRGB colour of that hue and lightness). A look whose swatches span at most this
 * has "similar saturation". Common practice says similar saturation belongs together; no source gives a number.
 */
export const SATURATION_AGREES_WITHIN = 0.3;

/** Degrees on the artist's wheel. How far a swatch of a look may be from its arm of a scheme: half a step of twelve. Proposal. */
export const SCHEME_OFF_AT_MOST = 15;

/** OKLab L, 0–1. A neutral darker than this is black: Munsell value 2.5, the edge of the ISCC-NBS block (Kelly & Judd 1976). */
export const BLACK_BELOW = 0.36;

/**
 * OKLab L, 0–1. A neutral lighter than this is white: Munsell value 8. The ISCC-NBS block begins at 8.5, but the fabrics that the
 * trade calls white have their centroid at 8.3 (P. Centore, JAIC 25, 2020), so that the edge must lie below it.
 */
export const WHITE_ABOVE = 0.83;

/** OKLab L, 0–1. A neutral darker than this, and no black, is dark grey: Munsell value 4.5, the edge of the ISCC-NBS block. */
export const DARK_GREY_BELOW = 0.54;

/** OKLab L, 0–1. A neutral lighter than this, and no white, is light grey: Munsell value 6.5, the edge of the ISCC-NBS block. */
export const LIGHT_GREY_ABOVE = 0.71;
