import { LARGE_MAIN } from "./picture-sizes.ts";

/** How much of the page a picture covers, in CSS pixels. */
export const areaOf = (picture: Element): number => {
  const { width, height } = picture.getBoundingClientRect();
  return width * height;
};

/** Whether it is as wide as a product page shows its own. */
export const isLarge = (picture: Element): boolean => picture.getBoundingClientRect().width >= LARGE_MAIN;
