/**
 * A colour in OKLab (B. Ottosson, "A perceptual color space for image processing", 2020):
 * L 0–1, a and b about −0.4…0.4, D65 white.
 */
export type Oklab = readonly [L: number, a: number, b: number];

/** An sRGB colour as a picture stores it: three integers 0–255, gamma-encoded. */
export type Rgb8 = readonly [r: number, g: number, b: number];
