import { LARGE_MAIN } from "./picture-sizes.ts";

/** How much of the page a picture covers, in CSS pixels. */
export const areaOf = (picture: Element): number => {
  const { width, height } = picture.getBoundingClientRect();
  return width * height;
};

/** So many times as long as wide, or as wide as long, a picture is a strip: a banner, a seal, a line of signs. Layout choice. */
const STRIP = 4;

/** Whether a picture is drawn too long or too wide for a garment. */
export const isStrip = (picture: Element): boolean => {
  const { width, height } = picture.getBoundingClientRect();
  return width > 0 && height > 0 && (width > STRIP * height || height > STRIP * width);
};

/** Whether it is as wide as a product page shows its own. */
export const isLarge = (picture: Element): boolean => picture.getBoundingClientRect().width >= LARGE_MAIN;
